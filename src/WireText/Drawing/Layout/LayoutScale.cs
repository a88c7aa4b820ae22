using WireText.Drawing.Lettering;

namespace WireText.Drawing.Layout;

/// <summary>The sizes that layout works with, in millimetres.</summary>
internal static class LayoutScale
{
    /// <summary>The distance of two lanes: a wire's core and casing, and as much paper again.</summary>
    public const double Pitch = 2;

    /// <summary>Air between a body and the middle of a wire that passes it.</summary>
    public const double BodyClearance = 0.6 * Pitch;

    /// <summary>Nearer than this to a lug, a passing wire would look joined to it.</summary>
    public const double LugClearance = 0.8 * Pitch;

    /// <summary>Half of a solder joint on a lug or a surface.</summary>
    public const double JointRadius = 0.95;

    /// <summary>Half of a solder joint on a surface.</summary>
    public const double SurfaceJointRadius = Tokens.SurfaceJointDiameter / 2;

    /// <summary>Half of the drawn width of a wire, casing included.</summary>
    public const double WireRadius = 0.7;

    /// <summary>A hop with a corner nearer than this does not fit.</summary>
    public const double HopRoom = 1.3 * Pitch;

    /// <summary>How much of a covered wire is stripped at each end; of a short one at most the share below of its length.</summary>
    public const double StrippedEnd = Tokens.StrippedEnd;

    public const double StrippedShare = Tokens.StrippedShare;

    /// <summary>How far from the rim of a surface a joint may sit.</summary>
    public const double RimDepth = 6.6;

    /// <summary>The least distance of two solder joints on one surface.</summary>
    public const double LandingDistance = 3;

    /// <summary>Air around a label.</summary>
    public const double LabelClearance = 0.3;
}
