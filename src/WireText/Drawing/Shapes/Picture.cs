using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Shapes;

/// <summary>A finished drawing: shapes, texts and paths in millimetres on the page, in the order in which they are painted.</summary>
/// <param name="Page">The size of the paper; nothing lies outside it.</param>
/// <param name="Description">One sentence for who cannot see it.</param>
public sealed record Picture(
    Size Page,
    string Title,
    string Description,
    Theme Theme,
    ImmutableArray<PictureItem> Items
);
