using WireText.Measuring;

namespace WireText.Tests.Measuring;

/// <summary>Short ways to name what on a drawing is at fault.</summary>
internal static class Things
{
    public static DrawnThing Wire(string id) => new(ThingKind.Wire, id);

    public static DrawnThing Part(string id) => new(ThingKind.Part, id);

    public static DrawnThing Lug(string id) => new(ThingKind.Lug, id);

    public static DrawnThing Hop(string wire) => new(ThingKind.Hop, wire);

    public static DrawnThing Joint(string id) => new(ThingKind.Joint, id);

    public static DrawnThing Tag(string wire) => new(ThingKind.Tag, wire);

    public static DrawnThing PartName(string part) => new(ThingKind.PartName, part);

    public static DrawnThing PartValue(string part) => new(ThingKind.PartValue, part);

    public static DrawnThing LugLabel(string lug) => new(ThingKind.LugLabel, lug);

    public static DrawnThing Words(string words) => new(ThingKind.Text, words);
}
