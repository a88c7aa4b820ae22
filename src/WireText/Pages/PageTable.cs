using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Drawing.Pictures;
using WireText.Electrical.Positions;
using WireText.Electrical.Studies;
using WireText.Electrical.Traces;

namespace WireText.Pages;

/// <summary>All that a page can show of a circuit, worked out beforehand: what each of its states does, and what is live there.</summary>
public sealed class PageTable
{
    private readonly Numbered<ContactBar> bars = new();
    private readonly Numbered<Told> told = new();

    private PageTable(Circuit circuit, PageStates states, ImmutableArray<Study> jacks)
    {
        (Circuit, States, Jacks) = (circuit, states, jacks);
        Closed =
        [
            .. states.Controls.Select(control =>
                control
                    .Positions.Select(position =>
                        position.Closed.SelectMany(group => LiveParts.BarsOf(group, bars)).ToImmutableArray()
                    )
                    .ToImmutableArray()
            ),
        ];
    }

    public Circuit Circuit { get; }

    public PageStates States { get; }

    /// <summary>Each contact that is closed in some state, in the order of their numbers on the page.</summary>
    public ImmutableArray<ContactBar> Bars => bars.Items;

    /// <summary>The studies of the jacks that are listened at.</summary>
    internal ImmutableArray<Study> Jacks { get; }

    /// <summary>For each control of the page and each of its positions, the bars that are closed.</summary>
    internal ImmutableArray<ImmutableArray<ImmutableArray<int>>> Closed { get; }

    /// <summary>Everything that is told of some state, each once.</summary>
    internal ImmutableArray<Told> Told => told.Items;

    /// <summary>Every set of live things, each once.</summary>
    internal ImmutableArray<LiveParts> Live { get; private set; } = [];

    /// <summary>For each jack and each state, the place of what is told.</summary>
    internal ImmutableArray<int> Now { get; private set; } = [];

    /// <summary>For each jack and each state, the place of what is live.</summary>
    internal ImmutableArray<int> LiveAt { get; private set; } = [];

    /// <summary>As <see cref="Now"/>, of the circuit that a mod stands on; -1 at a jack that it lacks. Empty where there is none.</summary>
    internal ImmutableArray<int> Stock { get; private set; } = [];

    /// <summary>How the circuit differs from the one that it stands on; null for one that stands alone.</summary>
    internal CircuitComparison? Change { get; private set; }

    /// <summary>What every position does, knobs at rest.</summary>
    internal PositionTable Positions => Jacks[0].PositionsAtJacks;

    /// <summary>The lowest and the highest level of each curve, in dB.</summary>
    internal IEnumerable<double> Levels =>
        told
            .Items.SelectMany(one => new[] { one.Curve, one.Least, one.Most })
            .OfType<ToldCurve>()
            .SelectMany(curve => new[] { curve.Lowest, curve.Highest });

    /// <summary>Null for a circuit with more states than a page has.</summary>
    /// <param name="study">Of that circuit or a twin of it.</param>
    /// <param name="stock">The circuit that it stands on; null for one that stands alone.</param>
    public static PageTable? Of(Circuit circuit, Study study, Circuit? stock, CancellationToken cancellation = default)
    {
        var jacks = study.Jacks;
        var variants = Math.Max(study.Doubted.Length, stock is null ? 0 : DoubtVariants.Of(stock).Length);
        if (PageStates.Of(circuit, jacks.Length * (1 + variants)) is not { } states)
        {
            return null;
        }

        var table = new PageTable(circuit, states, jacks);
        var all = states.Of(circuit);
        var loudest = LoudestOf(table.Positions);
        table.Now =
        [
            .. jacks
                .SelectMany(jack => new StateTeller(jack, loudest).Tell(all, cancellation))
                .Select(table.told.PlaceOf),
        ];
        table.FollowSignals(all);
        if (stock is not null)
        {
            table.Change = CircuitComparison.Of(stock, circuit);
            table.Stock = table.AskStock(table.Change, all, loudest, cancellation);
        }

        return table;
    }

    /// <summary>The level that the table of positions calls 0 dB.</summary>
    private static double LoudestOf(PositionTable positions) =>
        positions
            .Rows.Where(row => row.LevelDecibels is not null)
            .Select(row => row.Analysis.Sound.LevelDecibels - row.LevelDecibels!.Value)
            .FirstOrDefault();

    private void FollowSignals(ImmutableArray<State> all)
    {
        var live = new List<LiveParts>();
        var places = new Dictionary<(int Jack, int Position, string Setting), int>();
        var sets = new Dictionary<string, int>(StringComparer.Ordinal);
        var at = ImmutableArray.CreateBuilder<int>(Jacks.Length * all.Length);
        for (var jack = 0; jack < Jacks.Length; jack++)
        {
            var (network, seen) = (Jacks[jack].Network, Circuit.SeenFrom(OutputOf(Jacks[jack])));
            for (var state = 0; state < all.Length; state++)
            {
                var key = (jack, (int)(state / States.Settings), LiveParts.SettingOf(network, all[state]));
                if (!places.TryGetValue(key, out var place))
                {
                    var parts = LiveParts.Of(seen, Trace.OfState(seen, network, all[state]), bars);
                    if (sets.TryAdd(parts.Printed, live.Count))
                    {
                        live.Add(parts);
                    }

                    places.Add(key, place = sets[parts.Printed]);
                }

                at.Add(place);
            }
        }

        (Live, LiveAt) = ([.. live], at.MoveToImmutable());
    }

    private ImmutableArray<int> AskStock(
        CircuitComparison circuits,
        ImmutableArray<State> all,
        double loudest,
        CancellationToken cancellation
    ) =>
        StockTable.Of(circuits) is { } stock
            ?
            [
                .. Jacks.SelectMany(jack =>
                    stock.Tell(OutputOf(jack), all, loudest, cancellation) is { } was
                        ? was.Select(told.PlaceOf)
                        : all.Select(_ => -1)
                ),
            ]
            : [];

    private static OutputJack OutputOf(Study jack) => jack.Circuit.Outputs[0];
}
