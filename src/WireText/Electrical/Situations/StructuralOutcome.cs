using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Situations;

/// <summary>What the jack gets, as far as the structure of the network tells: no values looked at.</summary>
public enum StructuralOutcome
{
    /// <summary>Tip and sleeve are one node.</summary>
    Short,

    /// <summary>No element path from tip to sleeve: the jack floats.</summary>
    Open,

    /// <summary>Something lies across the jack, but no coil that hears strings.</summary>
    Unheard,

    /// <summary>A coil that hears strings is live; behind an amplifier, one that gets its supply.</summary>
    Sounding,
}

/// <summary>The outcome of a state or a situation at a dial setting.</summary>
public static class StructuralOutcomes
{
    /// <param name="state">A control at any stays open.</param>
    public static StructuralOutcome Of(Network network, State state)
    {
        var nodeOf = network.AtTheDials(state);
        if (nodeOf[network.Tip] == nodeOf[network.Sleeve])
        {
            return StructuralOutcome.Short;
        }

        var live = LivePart.WithSupplies(network, state);
        return live.Count == 0 ? StructuralOutcome.Open
            : live.Exists(branch => HearsStrings(network, branch)) ? StructuralOutcome.Sounding
            : StructuralOutcome.Unheard;
    }

    private static bool HearsStrings(Network network, Branch branch) =>
        network.Circuit.Elements[branch.Element] is Coil { HearsStrings: true };
}
