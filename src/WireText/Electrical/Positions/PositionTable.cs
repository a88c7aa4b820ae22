using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>What every position really does, dials at rest.</summary>
/// <param name="Circuit">The circuit it is about.</param>
/// <param name="Rows">In the order of the controls as declared and of their positions.</param>
/// <param name="Local">
/// Where there were too many rows: for each control that changes one pickup alone, what its other positions do while the
/// other controls stand as in the first row. The rows show such a control at its first position.
/// </param>
/// <param name="Crowding">The controls that make too many situations to list; empty when all are there.</param>
public sealed record PositionTable(
    Circuit Circuit,
    ImmutableArray<PositionRow> Rows,
    ImmutableArray<LocalControl> Local,
    ImmutableArray<Control> Crowding
)
{
    /// <summary>What a meter shows at the jack without a plug, where that differs from the rows.</summary>
    public ImmutableArray<BareReading> BareReadings { get; init; } = [];

    /// <summary>What the levels of all rows are told against.</summary>
    public LevelReference Reference { get; private init; }

    /// <summary>Rows beyond which local controls get lines of their own. Chosen.</summary>
    private const int ManyRows = 64;

    /// <summary>True when the rows are about several jacks, and each names its own.</summary>
    public bool HasJacks => Rows.Any(row => row.Jack is not null);

    /// <summary>The controls that a table has a column for: those that make a difference in some row.</summary>
    public IEnumerable<Control> Columns =>
        Circuit.Controls.Where(control => !control.IsPlug && Rows.Any(row => row.State[control.Index] is not null));

    /// <summary>The same table with its levels told against the EMF of one coil.</summary>
    public PositionTable AgainstOneCoil()
    {
        return this with
        {
            Reference = LevelReference.OneCoil,
            Rows = [.. Rows.Select(Told)],
            Local = [.. Local.Select(local => local with { Rows = [.. local.Rows.Select(Told)] })],
        };

        static PositionRow Told(PositionRow row) =>
            row with
            {
                LevelDecibels = row.Analysis.Outcome == Outcome.Sound ? row.Analysis.Sound.LevelDecibels : null,
            };
    }

    /// <summary>One table of those of several jacks, its levels told against the loudest row of all; the table itself where there is one.</summary>
    /// <param name="jacks">Each of the same circuit, seen from another jack.</param>
    public static PositionTable Of(ImmutableArray<PositionTable> jacks)
    {
        if (jacks is [var only])
        {
            return only;
        }

        var loudest =
            jacks.SelectMany(table => table.AgainstOneCoil().Rows).Select(row => row.LevelDecibels).Max() ?? 0;
        return new PositionTable(
            jacks[0].Circuit,
            [.. jacks.SelectMany(table => table.Rows.Select(row => AtJack(table, row)))],
            [
                .. jacks.SelectMany(table =>
                    table.Local.Select(local => local with { Rows = [.. local.Rows.Select(row => AtJack(table, row))] })
                ),
            ],
            [.. jacks.SelectMany(table => table.Crowding).Distinct()]
        )
        {
            BareReadings =
            [
                .. jacks.SelectMany(table => table.BareReadings.Select(bare => bare with { Jack = JackOf(table) })),
            ],
        };

        PositionRow AtJack(PositionTable table, PositionRow row) =>
            row with
            {
                Jack = JackOf(table),
                LevelDecibels =
                    row.Analysis.Outcome == Outcome.Sound ? row.Analysis.Sound.LevelDecibels - loudest : null,
            };
    }

    private static int JackOf(PositionTable table) => table.Circuit.Outputs[0].Part;

    /// <summary>The table of a circuit whose states may be known already.</summary>
    /// <param name="tree">Its situations.</param>
    /// <param name="doubted">Of the same circuit with values in place of those that nobody knows; empty where all are known.</param>
    public static PositionTable Of(
        Analyst analyst,
        SituationTree tree,
        ImmutableArray<Analyst> doubted,
        CancellationToken cancellation = default
    )
    {
        var network = analyst.Network;
        var states = tree
            .Situations.Select(situation =>
            {
                cancellation.ThrowIfCancellationRequested();
                return (situation.State, Analysis: analyst.Analyse(situation.State));
            })
            .ToList();
        var loudest = states
            .Where(state => state.Analysis.Outcome == Outcome.Sound)
            .Select(state => state.Analysis.Sound.LevelDecibels)
            .DefaultIfEmpty(0)
            .Max();
        var rows = states.ConvertAll(state => new PositionRow(
            state.State,
            state.Analysis,
            state.Analysis.Outcome == Outcome.Sound ? state.Analysis.Sound.LevelDecibels - loudest : null
        )
        {
            Doubt = RowDoubt.Of(network.Circuit, state.Analysis, doubted),
        });
        var merged = RowMerger.Merge(network.Circuit, rows);
        var local = merged.Length > ManyRows ? LocalControls.Find(network.Circuit, rows) : [];
        if (!local.IsEmpty)
        {
            merged = RowMerger.Merge(network.Circuit, LocalControls.WithoutLocal(network.Circuit, rows, local));
        }

        return new PositionTable(network.Circuit, merged, local, tree.Crowding)
        {
            BareReadings = BareJack.ReadingsBeside(network, merged, cancellation),
        };
    }
}
