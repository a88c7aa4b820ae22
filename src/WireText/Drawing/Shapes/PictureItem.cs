using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Shapes;

/// <summary>Something on a picture.</summary>
/// <param name="Class">What it is, such as <c>casing</c>.</param>
public abstract record PictureItem(string Class)
{
    /// <summary>Unique in the picture, or null.</summary>
    public string? Id { get; init; }

    /// <summary>What it shows: the part, lug, wire or net, as names and values. What a group shows, its items show too.</summary>
    public ImmutableArray<(string Name, string Value)> Shows { get; init; } = [];

    /// <summary>The part, lug, wire or net that it shows, by the word for it; null for none.</summary>
    internal string? ShownAs(string name) =>
        Shows.Where(shown => shown.Name == name).Select(shown => shown.Value).FirstOrDefault();
}

public sealed record PictureGroup(string Class, ImmutableArray<PictureItem> Items) : PictureItem(Class);

/// <summary>A picture within a picture: its items, made smaller and moved. It shows what stands elsewhere in full and has no ids.</summary>
/// <param name="At">Where the items' origin goes.</param>
/// <param name="Scale">Millimetres of the page for a millimetre of an item.</param>
public sealed record PictureView(string Class, Point At, double Scale, ImmutableArray<PictureItem> Items)
    : PictureItem(Class);
