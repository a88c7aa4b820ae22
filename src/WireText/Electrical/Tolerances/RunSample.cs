namespace WireText.Electrical.Tolerances;

/// <summary>Asks of instruments of a run whether something is true of them, until it is known for how many.</summary>
internal static class RunSample
{
    /// <summary>After so many instruments it is looked whether more are needed. Chosen: the last takes seconds.</summary>
    private static readonly int[] Looks = [1_024, 4_096, RunJudge.MostInstruments];

    /// <summary>The share of instruments for which it is true, with as many drawn as tell it from another share, or as there may be.</summary>
    /// <param name="isTrue">Of an instrument, by its deviations; asked from several threads.</param>
    /// <param name="claimed">The share that it is to be told from.</param>
    public static RunShare Ask(
        RunFactors factors,
        Func<double[], bool> isTrue,
        double claimed,
        CancellationToken cancellation
    )
    {
        var random = new SplitMix(RunOptions.UsualSeed);
        var (hits, done, found) = (0, 0, RunShare.None);
        foreach (var count in Looks)
        {
            Parallel.For(
                done,
                count,
                new ParallelOptions { CancellationToken = cancellation },
                () => (Deviations: new double[factors.Count], Hits: 0),
                (instrument, _, mine) =>
                {
                    factors.Draw(random, instrument, mine.Deviations);
                    return isTrue(mine.Deviations) ? mine with { Hits = mine.Hits + 1 } : mine;
                },
                mine => Interlocked.Add(ref hits, mine.Hits)
            );
            done = count;
            found = RunShare.Of(hits, count);
            if (claimed < found.Low || claimed > found.High)
            {
                break;
            }
        }

        return found;
    }
}
