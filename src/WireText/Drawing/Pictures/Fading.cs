using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;

namespace WireText.Drawing.Pictures;

/// <summary>Lets everything that does not stand out step back towards the paper.</summary>
internal sealed class Fading(Scene scene, Emphasis emphasis)
{
    public PictureItem Apply(PictureItem item)
    {
        if (IsFollowed(item) is { } isFollowed)
        {
            return isFollowed ? item : Faded(item);
        }

        return item is PictureGroup group ? group with { Items = [.. group.Items.Select(Apply)] } : item;
    }

    /// <summary>Null for what shows neither wire, lug nor part.</summary>
    private bool? IsFollowed(PictureItem item)
    {
        var circuit = scene.Circuit;
        if (ShownBy(item, "lug") is { } lug)
        {
            return circuit.FindLug(lug) is { } found && emphasis.Lugs[found.Index];
        }

        if (ShownBy(item, "wire") is { } wire)
        {
            return circuit.Wires.FirstOrDefault(other => other.Id == wire) is { } found && emphasis.Wires[found.Index];
        }

        return ShownBy(item, "part") is { } part
            ? circuit.FindPart(part) is { } held && emphasis.Parts[held.Index]
            : null;
    }

    private static string? ShownBy(PictureItem item, string name) =>
        item.Shows.Where(shown => shown.Name == name).Select(shown => shown.Value).FirstOrDefault();

    private PictureItem Faded(PictureItem item) =>
        item switch
        {
            PictureGroup group => group with { Items = [.. group.Items.Select(Faded)] },
            TextItem text => text with { Colour = Faded(text.Colour) },
            PictureShape shape => shape with { Paint = Faded(shape.Paint) },
            _ => item,
        };

    private Paint Faded(Paint paint) =>
        paint with
        {
            Fill = paint.Fill is { } fill ? Faded(fill) : null,
            Line = paint.Line is { } line ? Faded(line) : null,
        };

    private Colour Faded(Colour colour)
    {
        var paper = scene.Theme.Paper;
        return new Colour(
            Mixed(colour.Red, paper.Red),
            Mixed(colour.Green, paper.Green),
            Mixed(colour.Blue, paper.Blue)
        );
    }

    private byte Mixed(byte own, byte paper) =>
        (byte)(((own * emphasis.Kept) + (paper * (100 - emphasis.Kept)) + 50) / 100);
}
