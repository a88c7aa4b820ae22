using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Tolerances;

/// <summary>What a run makes of one state: each figure from its least to its most, and what moves it.</summary>
/// <param name="Analysis">With every value as written.</param>
/// <param name="Figures">In the order of <see cref="RunFigure"/>, those that the state has.</param>
public sealed record RunSpread(StateAnalysis Analysis, ImmutableArray<FigureSpread> Figures)
{
    /// <summary>The percentiles that are told. Chosen: nine of ten instruments lie between the outer two.</summary>
    public static readonly ImmutableArray<int> Percents = [5, 50, 95];

    /// <summary>How far the shares together may be from the variance of the run, as a fraction of it. Chosen.</summary>
    private const double MostAside = 0.1;

    private static readonly ImmutableArray<RunFigure> Sounding = [RunFigure.Level, RunFigure.Peak, RunFigure.Height];

    /// <param name="analysis">Of a state of the network, a control at any left open.</param>
    public static RunSpread Of(
        Network network,
        StateAnalysis analysis,
        RunFactors factors,
        RunOptions options,
        CancellationToken cancellation = default
    )
    {
        var loose = new LooseNetwork(network, analysis.State, factors);
        var isSound = analysis.Outcome == Outcome.Sound;
        var met = Draw(loose, factors, options, isSound, cancellation);
        var steps = Steps(loose, factors, isSound);
        var written = FiguresOf(loose, factors.AsWritten(), isSound);
        RunFigure[] there =
        [
            .. analysis.Reading is { Kind: ReadingKind.Value } ? [RunFigure.Reading] : Array.Empty<RunFigure>(),
            // Where the low strings cancel, a height over them means nothing.
            .. isSound ? Sounding.Where(figure => figure != RunFigure.Height || !analysis.Sound.IsThin) : [],
        ];
        return new RunSpread(
            analysis,
            [
                .. there
                    .Select(figure => Summed(figure, written[(int)figure], met[(int)figure], steps, factors, analysis))
                    .OfType<FigureSpread>(),
            ]
        );
    }

    /// <summary>For each figure what each instrument has.</summary>
    private static double[][] Draw(
        LooseNetwork loose,
        RunFactors factors,
        RunOptions options,
        bool isSound,
        CancellationToken cancellation
    )
    {
        var random = new SplitMix(options.Seed);
        double[][] met = [.. Enum.GetValues<RunFigure>().Select(_ => new double[options.Count])];
        Parallel.For(
            0,
            options.Count,
            new ParallelOptions { CancellationToken = cancellation },
            () => new double[factors.Count],
            (instrument, _, deviations) =>
            {
                factors.Draw(random, instrument, deviations);
                var figures = FiguresOf(loose, deviations, isSound);
                for (var figure = 0; figure < met.Length; figure++)
                {
                    met[figure][instrument] = figures[figure];
                }

                return deviations;
            },
            _ => { }
        );
        return met;
    }

    private static double[] FiguresOf(LooseNetwork loose, ReadOnlySpan<double> deviations, bool isSound)
    {
        var level = isSound ? loose.LevelAt(deviations) : double.NaN;
        var peak = isSound && loose.ResponseAt(deviations) is { } response ? Resonance.Find(response) : null;
        return [loose.OhmsAt(deviations), level, peak?.Hertz ?? double.NaN, peak?.HeightDecibels ?? double.NaN];
    }

    /// <summary>
    /// For each factor half of what each figure moves as that factor alone goes from one standard deviation below to one above: the
    /// numerical way of the law of propagation of uncertainty, JCGM 100:2008, 5.1.3 note 2 (from memory). A uniform value has its limit over √3.
    /// </summary>
    private static ImmutableArray<double[]> Steps(LooseNetwork loose, RunFactors factors, bool isSound)
    {
        var followed = loose.Followed.ToHashSet();
        var none = new double[Enum.GetValues<RunFigure>().Length];
        return
        [
            .. Enumerable.Range(0, factors.Count).Select(factor => followed.Contains(factor) ? StepOf(factor) : none),
        ];

        double[] StepOf(int factor)
        {
            var deviations = factors.AsWritten();
            var middle = factors.All[factor].IsByRatio ? 0 : deviations[factor];
            deviations[factor] = middle + (1 / Math.Sqrt(3));
            var above = FiguresOf(loose, deviations, isSound);
            deviations[factor] = middle - (1 / Math.Sqrt(3));
            var below = FiguresOf(loose, deviations, isSound);
            return [.. above.Zip(below, (high, low) => (high - low) / 2)];
        }
    }

    /// <summary>Null where no instrument has the figure.</summary>
    private static FigureSpread? Summed(
        RunFigure figure,
        double written,
        double[] met,
        ImmutableArray<double[]> steps,
        RunFactors factors,
        StateAnalysis analysis
    )
    {
        double[] sorted = [.. met.Where(double.IsFinite).Order()];
        if (sorted.Length == 0)
        {
            return null;
        }

        var squares = steps.Select(step => step[(int)figure] * step[(int)figure]).ToList();
        var sum = squares.Sum();
        var variance = Variance(sorted);
        var reading = figure == RunFigure.Reading ? analysis.Reading : null;
        return new FigureSpread(
            figure,
            written,
            reading?.Least ?? sorted[0],
            reading?.Most ?? sorted[^1],
            reading is not null && !analysis.InDoubt.OfType<Track>().Any(track => track.IsTaperUnknown),
            [.. Percents.Select(percent => Percentile.Of(sorted, percent))],
            met.Length - sorted.Length,
            sum > 0
                ?
                [
                    .. factors
                        .All.Select((factor, i) => new VarianceShare(factor, squares[i] / sum))
                        .OrderByDescending(share => share.Share),
                ]
                : [],
            variance > 0 ? sum / variance : double.NaN
        )
        {
            AreSharesGood = Math.Abs((sum / variance) - 1) <= MostAside + (2 * Math.Sqrt(2.0 / sorted.Length)),
        };
    }

    private static double Variance(double[] values)
    {
        if (values.Length < 2)
        {
            return 0;
        }

        var mean = values.Sum() / values.Length;
        return values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1);
    }
}
