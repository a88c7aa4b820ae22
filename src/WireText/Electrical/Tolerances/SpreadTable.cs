using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;

namespace WireText.Electrical.Tolerances;

/// <summary>What tolerances do to a run of instruments, position by position.</summary>
/// <param name="Circuit">As it is written.</param>
/// <param name="States">In the order asked for, or that of the table of positions.</param>
public sealed record SpreadTable(
    Circuit Circuit,
    RunOptions Options,
    ImmutableArray<RunFactor> Factors,
    ImmutableArray<RunSpread> States
)
{
    /// <summary>Instruments by states of one table: each is solved at some 200 frequencies. Chosen: a minute or two.</summary>
    public const int MostSolved = 1_000_000;

    /// <summary>The states of a table of positions, each saying where the controls stand that matter in it.</summary>
    public static ImmutableArray<State> StatesOf(PositionTable positions) =>
        [
            .. positions
                .Rows.Concat(positions.Local.SelectMany(local => local.Rows))
                .Select(row => row.State)
                .Select(state =>
                    state.Saying([
                        .. StateText
                            .Stated(positions.Circuit, state)
                            .Select(control => $"{control.Name}={StateText.PositionOf(control, state)}"),
                    ])
                ),
        ];

    /// <summary>The table of some states.</summary>
    /// <param name="analyst">Of the circuit.</param>
    /// <exception cref="ArgumentException">They and the run are more than <see cref="MostSolved"/> together.</exception>
    public static SpreadTable Of(
        Analyst analyst,
        IReadOnlyList<State> states,
        RunOptions options,
        CancellationToken cancellation = default
    )
    {
        if ((long)states.Count * options.Count > MostSolved)
        {
            throw new ArgumentException("there are too many states and instruments", nameof(states));
        }

        var network = analyst.Network;
        var factors = RunFactors.Of(network.Circuit, options.IsOneBatch);
        return new SpreadTable(
            network.Circuit,
            options,
            factors.All,
            [.. states.Select(state => RunSpread.Of(network, analyst.Analyse(state), factors, options, cancellation))]
        );
    }
}
