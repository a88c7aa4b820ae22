using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Positions;

/// <summary>What an ohmmeter shows when its probes touch the lugs of a jack without a plug.</summary>
/// <param name="Positions">For each control the index of its position, or <see cref="Situation.Any"/>; plugs as they stand.</param>
public sealed record BareReading(ImmutableArray<int> Positions, Reading Reading);

/// <summary>Finds where a reading at the bare jack is not the one on the plug.</summary>
public static class BareJack
{
    /// <summary>The position of a jack that holds no plug.</summary>
    private const string NoPlug = "no-plug";

    /// <summary>The readings that differ from those of the rows, in the order of the table; empty when all agree.</summary>
    public static ImmutableArray<BareReading> ReadingsBeside(Network network, ImmutableArray<PositionRow> rows)
    {
        var circuit = network.Circuit;
        var start = network.PlugsOnly();
        foreach (var plug in circuit.Controls.Where(control => control.IsPlug))
        {
            var bare = plug.Positions.Select(position => position.Name).ToList().IndexOf(NoPlug);
            start[plug.Index] = bare < 0 ? plug.Rest : bare;
        }

        if (start.AsSpan().SequenceEqual(network.PlugsOnly()))
        {
            return [];
        }

        var search = new ContactSearch(network, network.Branches, (network.Tip, network.Sleeve), SituationTree.Limit);
        var dials = DialSetting.Rest(network);
        var readings = new List<BareReading>();
        foreach (var leaf in search.Run(start) ?? [])
        {
            if (
                Ohmmeter.Read(network, leaf.Positions.AsSpan(), dials) is { } reading
                && rows.Any(row => Meets(circuit, row, leaf.Positions) && Differs(row.State.Reading, reading))
            )
            {
                readings.Add(new BareReading(leaf.Positions, reading));
            }
        }

        return RowMerger.Merge(
            circuit,
            readings,
            one => one.Positions,
            (one, positions) => one with { Positions = positions },
            one => Said(one.Reading)
        );
    }

    private static bool Meets(Circuit circuit, PositionRow row, ImmutableArray<int> positions) =>
        circuit.Controls.All(control =>
            control.IsPlug
            || row.Positions[control.Index] == Situation.Any
            || positions[control.Index] == Situation.Any
            || row.Positions[control.Index] == positions[control.Index]
        );

    private static bool Differs(Reading? plugged, Reading bare) =>
        plugged is { } reading && !string.Equals(Said(reading), Said(bare), StringComparison.Ordinal);

    private static string Said(Reading reading) =>
        $"{reading.Kind} {reading.Ohms.ToString("E2", CultureInfo.InvariantCulture)}";
}
