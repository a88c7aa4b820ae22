using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Electrical.Studies;

namespace WireText.Pages;

/// <summary>What the circuit that a mod stands on does, asked in the states of the mod.</summary>
internal sealed class StockTable
{
    private readonly CircuitComparison circuits;
    private readonly Study study;

    private StockTable(CircuitComparison circuits, Study study) => (this.circuits, this.study) = (circuits, study);

    /// <summary>Null where it has no jack to listen at.</summary>
    public static StockTable? Of(CircuitComparison circuits) =>
        Study.Of(AlikeNames.Of(circuits)) is { } study ? new StockTable(circuits, study) : null;

    /// <summary>For each state of the mod; null for a jack that the stock wiring lacks.</summary>
    /// <param name="jack">A jack of the mod.</param>
    /// <param name="loudest">The level that is 0 dB.</param>
    public Told[]? Tell(
        OutputJack jack,
        ImmutableArray<State> states,
        double loudest,
        CancellationToken cancellation
    ) =>
        circuits.Parts.BeforeOf(circuits.After.Parts[jack.Part]) is { } was
        && study.Circuit.Outputs.Any(output => output.Part == was.Index)
            ? new StateTeller(study.At(was.Index), loudest).Tell(
                [.. states.Select(state => EarlierState.Of(circuits, state))],
                cancellation
            )
            : null;
}
