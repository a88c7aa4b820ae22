using System.Collections.Immutable;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>All that may explain what is found, with its share before anything is.</summary>
internal static class SuspectList
{
    /// <param name="worked">Null where nothing is known of the past.</param>
    public static List<Suspect> Of(
        Instrument instrument,
        Nuisances nuisances,
        ImmutableArray<Fault> faults,
        FaultWeights weights,
        bool? worked
    )
    {
        var total = faults.Sum(fault => weights[fault.Kind].After(worked));
        var suspects = new List<Suspect>
        {
            new(instrument, nuisances, BenchOdds.RightShare, []),
            new(instrument, nuisances, BenchOdds.OutsideShare, []) { IsOutside = true },
        };
        foreach (var fault in faults)
        {
            var share = BenchOdds.FaultShare * weights[fault.Kind].After(worked) / total;
            if (share > 0)
            {
                suspects.AddRange(
                    fault.Sizes.Select(size => new Suspect(
                        instrument,
                        nuisances,
                        share / fault.Sizes.Length,
                        [(fault, size)]
                    ))
                );
            }
        }

        return suspects;
    }

    /// <summary>Takes those out that are too far below the best to come back, and makes the shares sum to 1.</summary>
    public static void Settle(List<Suspect> suspects)
    {
        var best = suspects.Max(suspect => suspect.LogShare);
        suspects.RemoveAll(suspect => suspect.LogShare < best - BenchOdds.Dropped && suspect.Faults.Length > 0);
        var total = best + Math.Log(suspects.Sum(suspect => Math.Exp(suspect.LogShare - best)));
        foreach (var suspect in suspects)
        {
            suspect.LogShare -= total;
        }
    }
}
