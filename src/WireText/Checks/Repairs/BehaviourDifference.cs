using WireText.Circuits;

namespace WireText.Checks.Repairs;

/// <summary>By what two circuits can be told apart in a state.</summary>
public enum DifferenceKind
{
    /// <summary>Some bare metal comes to the sleeve in another way, or not.</summary>
    Grounding,

    /// <summary>Another amplifier works, or another battery is drawn from.</summary>
    Supply,

    /// <summary>Some coil is live, shorted or hanging in one alone, or hangs on something else.</summary>
    CoilPlace,

    /// <summary>What the jack gives, or its impedance.</summary>
    Sound,
}

/// <summary>A state in which two circuits can be told apart.</summary>
public sealed record BehaviourDifference(State State, DifferenceKind Kind);
