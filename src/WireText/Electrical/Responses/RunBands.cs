using System.Collections.Immutable;
using WireText.Electrical.Studies;
using WireText.Electrical.Tolerances;

namespace WireText.Electrical.Responses;

/// <summary>Puts around each curve of a study the band that a run of instruments makes of it.</summary>
public static class RunBands
{
    /// <summary>The percentiles between which a band lies, at each frequency by itself: nine of ten instruments. Chosen.</summary>
    private const double Lower = 5;
    private const double Upper = 95;

    /// <summary>Frequencies that are held in memory at once, for each instrument. Chosen.</summary>
    private const int Slice = 40;

    /// <summary>The study with bands; curves of silent states have none.</summary>
    /// <param name="response">Without other values: each curve is of the circuit as it is wired.</param>
    public static ResponseStudy Around(
        ResponseStudy response,
        Study study,
        RunOptions options,
        CancellationToken cancellation = default
    )
    {
        var factors = RunFactors.Of(study.Circuit, options.IsOneBatch);
        return response with
        {
            Run = options,
            Curves =
            [
                .. response.Curves.Select(curve =>
                    curve.Decibels is null
                        ? curve
                        : Around(
                            curve,
                            new LooseNetwork(study.Network, curve.State, factors),
                            factors,
                            options,
                            cancellation
                        )
                ),
            ],
        };
    }

    private static ResponseCurve Around(
        ResponseCurve curve,
        LooseNetwork loose,
        RunFactors factors,
        RunOptions options,
        CancellationToken cancellation
    )
    {
        var least = ImmutableArray.CreateBuilder<double>(ResponseStudy.Hertz.Length);
        var most = ImmutableArray.CreateBuilder<double>(ResponseStudy.Hertz.Length);
        foreach (var hertz in ResponseStudy.Hertz.Chunk(Slice))
        {
            var levels = Levels(loose, factors, options, hertz, cancellation);
            for (var i = 0; i < hertz.Length; i++)
            {
                double[] sorted = [.. levels.Select(instrument => instrument[i]).Order()];
                least.Add(Percentile.Of(sorted, Lower));
                most.Add(Percentile.Of(sorted, Upper));
            }
        }

        return curve with
        {
            Least = least.MoveToImmutable(),
            Most = most.MoveToImmutable(),
        };
    }

    private static ImmutableArray<double>[] Levels(
        LooseNetwork loose,
        RunFactors factors,
        RunOptions options,
        double[] hertz,
        CancellationToken cancellation
    )
    {
        var random = new SplitMix(options.Seed);
        var levels = new ImmutableArray<double>[options.Count];
        Parallel.For(
            0,
            options.Count,
            new ParallelOptions { CancellationToken = cancellation },
            () => new double[factors.Count],
            (instrument, _, deviations) =>
            {
                factors.Draw(random, instrument, deviations);
                levels[instrument] =
                    loose.ResponseAt(deviations)?.DecibelsAt(hertz) ?? [.. hertz.Select(_ => Sound.Decibels.Floor)];
                return deviations;
            },
            _ => { }
        );
        return levels;
    }
}
