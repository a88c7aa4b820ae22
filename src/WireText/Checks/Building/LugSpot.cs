using WireText.Circuits;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Checks.Building;

/// <summary>Where a lug is, as far as the author placed its part. Millimetres, from behind.</summary>
/// <param name="At">The lug, or the middle of the metal that it is.</param>
/// <param name="Radius">How far from there the joint may lie: 0 for a lug, half the body for a case.</param>
internal readonly record struct LugSpot(Point At, double Radius)
{
    /// <summary>Null for a lug whose part has no given place, or whose definition does not say where it sits.</summary>
    public static LugSpot? Of(Circuit circuit, int lug)
    {
        if (lug < 0)
        {
            return null;
        }

        var (terminal, part) = (circuit.Lugs[lug].Terminal, circuit.PartOf(circuit.Lugs[lug]));
        if (circuit.Places.FirstOrDefault(place => place.Part == part.Index) is not { At: { } hole } given)
        {
            return null;
        }

        return Conductors.TakesManyJoints(circuit.Lugs[lug]) ? new LugSpot(hole, Reach(part.Definition.Body))
            : terminal.At is { } own ? new LugSpot(new Pose(hole, (int)given.Turn).OnPage(own), 0)
            : null;
    }

    /// <summary>The least that a wire from one to the other can measure.</summary>
    public static double Distance(LugSpot one, LugSpot other) =>
        Math.Max(0, Point.Distance(one.At, other.At) - one.Radius - other.Radius);

    /// <summary>From the hole to the farthest point of the body.</summary>
    private static double Reach(BodyShape? body) =>
        body switch
        {
            BodyShape.Round round => round.Diameter / 2,
            BodyShape.Box box => Math.Sqrt((box.Width * box.Width) + (box.Height * box.Height)) / 2,
            _ => 0,
        };
}
