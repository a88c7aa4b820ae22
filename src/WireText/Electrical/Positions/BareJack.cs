using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Positions;

/// <summary>What an ohmmeter shows when its probes touch the lugs of a jack without a plug.</summary>
/// <param name="State">Plugs as they stand.</param>
public sealed record BareReading(State State, Reading Reading)
{
    /// <summary>The part of the jack that is probed; null in a table of one jack.</summary>
    public int? Jack { get; init; }
}

/// <summary>Finds where a reading at the bare jack is not the one on the plug.</summary>
public static class BareJack
{
    /// <summary>The position of a jack that holds no plug.</summary>
    internal const string NoPlug = "no-plug";

    /// <summary>The readings that differ from those of the rows, in the order of the table; empty when all agree.</summary>
    public static ImmutableArray<BareReading> ReadingsBeside(
        Network network,
        ImmutableArray<PositionRow> rows,
        CancellationToken cancellation = default
    )
    {
        var circuit = network.Circuit;
        var start = WithoutPlugs(circuit, State.Open(circuit));
        if (start.Equals(State.Open(circuit)))
        {
            return [];
        }

        var search = new ContactSearch(network, network.Branches, (network.Tip, network.Sleeve), SituationTree.Limit);
        var readings = new List<BareReading>();
        foreach (var leaf in search.Run(start, cancellation) ?? [])
        {
            if (
                Ohmmeter.Read(network, leaf.State) is { } reading
                && rows.Any(row => Meets(circuit, row, leaf.State) && Differs(row.Analysis.Reading, reading))
            )
            {
                readings.Add(new BareReading(leaf.State, reading));
            }
        }

        return RowMerger.Merge(
            circuit,
            readings,
            one => one.State,
            (one, state) => one with { State = state },
            one => Said(one.Reading)
        );
    }

    /// <summary>The same with no plug in any jack; one that has no such position stays as it rests.</summary>
    internal static State WithoutPlugs(Circuit circuit, State state)
    {
        foreach (var plug in circuit.Controls.Where(control => control.IsPlug))
        {
            var bare = plug.Positions.Select(position => position.Name).ToList().IndexOf(NoPlug);
            state = state.At(plug.Index, bare < 0 ? plug.Rest : bare);
        }

        return state;
    }

    /// <summary>True when some state belongs to both, plugs not looked at.</summary>
    private static bool Meets(Circuit circuit, PositionRow row, State bare) =>
        row.State.Meets(
            circuit
                .Controls.Where(control => control.IsPlug)
                .Aggregate(bare, (state, plug) => state.At(plug.Index, row.State[plug.Index]))
        );

    private static bool Differs(Reading? plugged, Reading bare) =>
        plugged is { } reading && !string.Equals(Said(reading), Said(bare), StringComparison.Ordinal);

    private static string Said(Reading reading) =>
        $"{reading.Kind} {reading.Ohms.ToString("E2", CultureInfo.InvariantCulture)}";
}
