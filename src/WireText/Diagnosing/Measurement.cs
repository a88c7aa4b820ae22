using WireText.Circuits;

namespace WireText.Diagnosing;

/// <summary>What can be measured or listened to at the bench.</summary>
/// <param name="IsByEar">True where an amplifier is plugged in and somebody listens.</param>
public sealed record Measurement(FoundPlace Place, bool IsByEar)
{
    /// <summary>What it takes at the plug.</summary>
    public const double PlugCost = 1;

    /// <summary>What it takes to plug an amplifier in and listen.</summary>
    public const double EarCost = 1.5;

    /// <summary>What it takes to open the cavity, once.</summary>
    public const double OpeningCost = 5;

    /// <summary>What it takes to lift an end with the iron.</summary>
    public const double LiftingCost = 15;

    /// <summary>True where the cavity must be open.</summary>
    public bool IsInside => Place is FoundBetween or FoundAtJoint or FoundAlone;

    /// <param name="isOpen">True where the cavity is open already.</param>
    public double Cost(bool isOpen) =>
        (
            Place is FoundAlone ? LiftingCost
            : IsByEar ? EarCost
            : PlugCost
        ) + (IsInside && !isOpen ? OpeningCost : 0);
}
