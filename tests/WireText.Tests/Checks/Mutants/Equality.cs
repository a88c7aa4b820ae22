using WireText.Checks.Repairs;
using WireText.Circuits;

namespace WireText.Tests.Checks.Mutants;

/// <summary>The rule that proves a mutant to be electrically the same as the right circuit.</summary>
internal enum EqualityRule
{
    /// <summary>The same lugs are joined, by solder and by metal that touches: it is the same circuit.</summary>
    Nets,

    /// <summary>
    /// In every state the same metal is grounded in the same way, the same supplies work, the same coils hang, and the jack
    /// gives the same at every setting of the dials that is compared.
    /// </summary>
    Behaviour,

    /// <summary>As <see cref="Behaviour"/>, but for the sign of all that is heard in a state.</summary>
    Sign,
}

/// <summary>How a mutant compares with the right circuit.</summary>
/// <param name="Rule">What proves it equal; null when it is not.</param>
/// <param name="Difference">The first state in which it is not; null when it is equal.</param>
internal sealed record Equality(EqualityRule? Rule, BehaviourDifference? Difference)
{
    public static Equality Of(Circuit right, Circuit mutant)
    {
        if (
            right.Nets.OneNet.SequenceEqual(mutant.Nets.OneNet)
            && right.Nets.Soldered.SequenceEqual(mutant.Nets.Soldered)
        )
        {
            return new Equality(EqualityRule.Nets, null);
        }

        if (Behaviour.IsEqual(right, mutant))
        {
            return new Equality(EqualityRule.Behaviour, null);
        }

        return Behaviour.FirstDifference(right, mutant, dropsSign: true) is { } difference
            ? new Equality(null, difference)
            : new Equality(EqualityRule.Sign, null);
    }
}
