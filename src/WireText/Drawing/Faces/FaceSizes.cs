using WireText.Circuits;
using WireText.Parts;

namespace WireText.Drawing.Faces;

/// <summary>Outlines for parts whose definition gives none, in millimetres; usual sizes, not of one make.</summary>
internal static class FaceSizes
{
    /// <summary>No definition makes a drawing larger or smaller than this.</summary>
    public const double LargestSide = 200;

    public const double SmallestSide = 3;

    /// <summary>Between neighbouring lugs whose place the definition does not give.</summary>
    public const double LugPitch = 6;

    /// <summary>From the body's edge to such a lug.</summary>
    public const double LugReach = 3;

    public static FaceBody Of(Part part, int lugCount, int wireCount) =>
        part.Definition.Body switch
        {
            BodyShape.Round round => new FaceBody.Round(Clamp(round.Diameter) / 2),
            BodyShape.Box box => new FaceBody.Rectangle(Clamp(box.Width), Clamp(box.Height)),
            _ => Usual(part, lugCount, wireCount),
        };

    public static bool IsTwoLead(Part part) =>
        part.Kind is "cap" or "resistor" or "inductor" && part.Definition.Body is null && part.Lugs.Length == 2;

    private static FaceBody Usual(Part part, int lugCount, int wireCount) =>
        part.Kind switch
        {
            "cap" => new FaceBody.Rectangle(10, 7),
            "resistor" => new FaceBody.Rectangle(10, 3.6),
            "inductor" => new FaceBody.Rectangle(10, 5),
            "metal" => new FaceBody.Rectangle(22, 10),
            "splice" => new FaceBody.Rectangle(8 + (4 * Math.Clamp(wireCount, 2, 12)), 6),
            _ => Around(part, lugCount),
        };

    /// <summary>A box that holds the given points, or is wide enough for lugs along its lower edge.</summary>
    private static FaceBody Around(Part part, int lugCount)
    {
        var (halfWidth, halfHeight) = (Math.Max(8, lugCount * LugPitch / 2), 6.0);
        foreach (var terminal in part.Definition.Terminals)
        {
            if (terminal.At is { } at)
            {
                halfWidth = Math.Max(halfWidth, Math.Abs(at.X) + 2);
                halfHeight = Math.Max(halfHeight, Math.Abs(at.Y) - LugReach);
            }
        }

        return new FaceBody.Rectangle(Clamp(2 * halfWidth), Clamp(2 * halfHeight));
    }

    private static double Clamp(double side) =>
        double.IsFinite(side) ? Math.Clamp(side, SmallestSide, LargestSide) : SmallestSide;
}
