using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Checks.Batteries;

/// <summary>An amplifier that needs a supply, and what it gets.</summary>
/// <param name="Volts">For each situation, from its supply lug to its common; null where that loop is open.</param>
internal sealed record SuppliedAmplifier(Amplifier Amplifier, ImmutableArray<double?> Volts)
{
    /// <summary>Situations looked at. Chosen.</summary>
    internal const int SituationLimit = 4_096;

    /// <summary>Those that have their supply lug wired, in order of declaration.</summary>
    public static IEnumerable<SuppliedAmplifier> Of(StudyContext context) =>
        context.Study is { Network: var network, Situations: { IsComplete: true } tree }
            ? from amplifier in context.Circuit.Elements.OfType<Amplifier>()
            where amplifier.Supply is { } supply && context.IsJointed(supply)
            select new SuppliedAmplifier(
                amplifier,
                [
                    .. tree
                        .Situations.Take(SituationLimit)
                        .Select(situation => Supply.VoltsOf(network, network.InContact(situation.State), amplifier)),
                ]
            )
            : [];
}
