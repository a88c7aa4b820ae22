using WireText.Parts;

namespace WireText.Drawing.Faces;

/// <summary>How large bodies are and how their lugs stand where a definition does not say, in millimetres.</summary>
internal static class FaceSizes
{
    /// <summary>No definition makes a drawing larger or smaller than this.</summary>
    public const double LargestSide = 200;

    /// <summary>In millimetres: a lug with its joint still lies inside.</summary>
    public const double SmallestSide = 3;

    /// <summary>Between neighbouring lugs whose place the definition does not give.</summary>
    public const double LugPitch = 6;

    /// <summary>From the body's edge to such a lug.</summary>
    public const double LugReach = 3;

    /// <summary>A box that holds the given points, or is wide enough for lugs along its lower edge.</summary>
    public static BodyShape Around(PartDefinition definition, int lugCount)
    {
        var (halfWidth, halfHeight) = (Math.Max(8, lugCount * LugPitch / 2), 6.0);
        foreach (var terminal in definition.Terminals)
        {
            if (terminal.At is { } at)
            {
                halfWidth = Math.Max(halfWidth, Math.Abs(at.X) + 2);
                halfHeight = Math.Max(halfHeight, Math.Abs(at.Y) - LugReach);
            }
        }

        return new BodyShape.Box(2 * halfWidth, 2 * halfHeight);
    }

    /// <summary>A side of a body, so long as a drawing has.</summary>
    public static double Clamp(double side) =>
        double.IsFinite(side) ? Math.Clamp(side, SmallestSide, LargestSide) : SmallestSide;
}
