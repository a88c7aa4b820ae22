using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>Looks for two faults at once, where no single one explains what was found.</summary>
internal sealed class PairSearch(
    Instrument instrument,
    Nuisances nuisances,
    Odds odds,
    FaultWeights weights,
    bool? worked
)
{
    /// <summary>Single faults that are combined. Chosen: they make 780 pairs.</summary>
    internal const int MostSingles = 40;

    /// <summary>Pairs that are told.</summary>
    private const int MostTold = 3;

    /// <summary>A pair this far below the best, in nats, is not told.</summary>
    private const double Told = 4;

    /// <param name="misfits">What speaks against a suspect.</param>
    public ImmutableArray<Explanation> Find(
        ImmutableArray<Fault> faults,
        ImmutableArray<(Found Line, FoundFact Fact)> facts,
        Func<Suspect, ImmutableArray<(Found Line, FoundFact Fact)>, ImmutableArray<Misfit>> misfits
    )
    {
        var singles = Singles(faults, facts);
        var pairs = new List<Suspect>();
        for (var one = 0; one < singles.Count; one++)
        {
            for (var other = 0; other < one; other++)
            {
                var (a, b) = (singles[one], singles[other]);
                if (a.Fault.Index == b.Fault.Index)
                {
                    continue;
                }

                var prior = 0.1 * WeightOf(a.Fault) * WeightOf(b.Fault);
                var pair = new Suspect(instrument, nuisances, prior, [b, a]);
                Take(pair, facts);
                pairs.Add(pair);
            }
        }

        var ranked = pairs.OrderByDescending(pair => pair.LogShare).ToList();
        if (ranked.Count == 0)
        {
            return [];
        }

        var total = ranked.Sum(pair => Math.Exp(pair.LogShare - ranked[0].LogShare));
        return
        [
            .. ranked
                .Take(MostTold)
                .Where(pair => pair.LogShare > ranked[0].LogShare - Told)
                .Select(pair => new Explanation(
                    ExplanationKind.Fault,
                    Math.Exp(pair.LogShare - ranked[0].LogShare) / total,
                    [.. pair.Faults.Select(one => Diagnostician.WordsOf(one.Fault, [pair]))],
                    [.. pair.Faults.Select(one => one.Fault)],
                    misfits(pair, facts)
                ))
                .Where(pair => pair.Misfits.IsEmpty),
        ];
    }

    private double WeightOf(Fault fault) => weights[fault.Kind].After(worked) / fault.Sizes.Length;

    private bool[] Take(Suspect suspect, ImmutableArray<(Found Line, FoundFact Fact)> facts) =>
        [.. facts.Select(one => odds.Take(suspect, one.Line.At, one.Fact))];

    /// <summary>Those that explain what a right instrument does not, the likeliest first, each set of facts by a few.</summary>
    private List<(Fault Fault, FaultSize Size)> Singles(
        ImmutableArray<Fault> faults,
        ImmutableArray<(Found Line, FoundFact Fact)> facts
    )
    {
        var right = Take(new Suspect(instrument, nuisances, 1, []), facts);
        var all = new List<((Fault Fault, FaultSize Size) One, double Share, string Explained)>();
        foreach (var fault in faults)
        {
            foreach (var size in fault.Sizes)
            {
                var suspect = new Suspect(instrument, nuisances, WeightOf(fault), [(fault, size)]);
                var against = Take(suspect, facts);
                var explained = string.Concat(against.Select((isAgainst, i) => right[i] && !isAgainst ? '1' : '0'));
                all.Add(((fault, size), suspect.LogShare, explained));
            }
        }

        return
        [
            .. all.Where(one => one.Explained.Contains('1', StringComparison.Ordinal))
                .GroupBy(one => one.Explained)
                .SelectMany(same =>
                    same.OrderByDescending(one => one.Share).Select((one, place) => (one.One, one.Share, Place: place))
                )
                .OrderBy(one => one.Place)
                .ThenByDescending(one => one.Share)
                .Take(MostSingles)
                .Select(one => one.One),
        ];
    }
}
