using WireText.Measuring;

namespace WireText.Tests.Drawing;

/// <summary>The kinds of doubt in words, for the heads of tables.</summary>
internal static class DoubtWords
{
    public static string Of(DoubtKind kind) =>
        kind switch
        {
            DoubtKind.UnnamedLug => "wired lugs without a name",
            DoubtKind.NameNearAnother => "names as near to another joint",
            DoubtKind.NameBehindAWire => "names behind a wire",
            DoubtKind.NameOutOfRow => "names on another side than their row",
            DoubtKind.PartNameApart => "parts whose name a wire cuts off",
            DoubtKind.JointNearName => "joints on a case within 3 mm of a name",
            DoubtKind.ShortEnd => "ends crossed within 3 mm",
            DoubtKind.LongLead => "own leads over 35 mm",
            DoubtKind.CutText => "words cut",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no words"),
        };
}
