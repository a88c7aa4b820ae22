using WireText.Drawing.Shapes;

namespace WireText.Drawing.Pictures;

/// <summary>Lets everything that does not stand out step back towards the paper.</summary>
internal sealed class Fading(Scene scene, Emphasis emphasis)
{
    public PictureItem Apply(PictureItem item)
    {
        if (IsFollowed(item) is { } isFollowed)
        {
            return isFollowed ? item : Faint.Of(item, scene.Theme.Paper, emphasis.Kept);
        }

        return item is PictureGroup group ? group with { Items = [.. group.Items.Select(Apply)] } : item;
    }

    /// <summary>Null for what shows neither wire, lug nor part.</summary>
    private bool? IsFollowed(PictureItem item)
    {
        var circuit = scene.Circuit;
        if (item.ShownAs("lug") is { } lug)
        {
            return circuit.FindLug(lug) is { } found && emphasis.Lugs[found.Index];
        }

        if (item.ShownAs("wire") is { } wire)
        {
            return circuit.Wires.FirstOrDefault(other => other.Id == wire) is { } found && emphasis.Wires[found.Index];
        }

        return item.ShownAs("part") is { } part
            ? circuit.FindPart(part) is { } held && emphasis.Parts[held.Index]
            : null;
    }
}
