namespace WireText.Measuring;

/// <summary>The distances that the definitions of the faults name, in millimetres.</summary>
internal static class Pitch
{
    /// <summary>The distance between the middles of two neighbouring lanes.</summary>
    public const double One = 2;

    /// <summary>Two wires are excused this near to a lug on which both end.</summary>
    public const double SharedEnd = 1.4 * One;

    /// <summary>Parallel wires nearer than this lie on one another.</summary>
    public const double Overlap = 0.15 * One;

    /// <summary>Wires nearer than this crowd each other.</summary>
    public const double Crowding = 0.5 * One;

    /// <summary>The length from which an overlap or crowding counts.</summary>
    public const double Together = 0.6 * One;

    /// <summary>At a crossing two wires are near each other and must be; this far from it they may not.</summary>
    public const double Crossing = One;

    /// <summary>The length inside a foreign outline from which it counts.</summary>
    public const double InsideBody = 0.4 * One;

    /// <summary>Lug radius and half a wire: a wire nearer than this to a lug looks soldered to it.</summary>
    public const double FalseJoint = 0.7 * One;

    /// <summary>A hop needs this much straight wire on both sides of its middle.</summary>
    public const double Hop = 1.3 * One;

    /// <summary>How far a braid's tail may start from the middle of its core: inside the drawn braid.</summary>
    public const double BraidRoot = 0.5 * One;
}
