using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>Reasons from what was found to what is wrong, and to what should be measured next.</summary>
public sealed class Diagnostician
{
    /// <summary>Networks that are solved before nothing more is weighed. Chosen: some tenths of a second.</summary>
    public const int MostNetworks = 20_000;

    /// <summary>Findings that are taken in.</summary>
    public const int MostFindings = 200;

    /// <summary>Explanations that are told apart and weighed.</summary>
    internal const int MostLooked = 90;

    /// <summary>Explanations of which it is told what speaks against them.</summary>
    private const int MostExplained = 8;

    /// <summary>Those that are looked at hold this together.</summary>
    private const double HeldTogether = 0.995;

    /// <summary>Where what the list does not have reaches this, two faults at once are tried.</summary>
    private const double PairsFrom = 0.30;

    private readonly Circuit circuit;
    private readonly Instrument instrument;
    private readonly Nuisances nuisances;
    private readonly Meter meter;
    private readonly Ear ear;
    private readonly Odds odds;
    private readonly ImmutableArray<Fault> faults;
    private readonly FaultWeights weights;
    private readonly ImmutableArray<Measurement> without;
    private readonly CancellationToken cancellation;

    private Diagnostician(
        Circuit circuit,
        FaultWeights weights,
        ImmutableArray<Measurement> without,
        CancellationToken cancellation
    )
    {
        (this.circuit, this.weights, this.without, this.cancellation) = (circuit, weights, without, cancellation);
        instrument = Instrument.Of(circuit);
        nuisances = new Nuisances(instrument.Right);
        meter = new Meter(instrument, nuisances);
        ear = new Ear(instrument);
        odds = new Odds(instrument, meter, ear);
        faults = FaultList.Of(instrument);
    }

    private int Work => meter.Networks + ear.Solved;

    /// <param name="circuit">With an output jack.</param>
    /// <param name="found">What was found: in any order, it comes to the same.</param>
    /// <param name="without">Measurements that nobody can make.</param>
    public static Diagnosis Of(
        Circuit circuit,
        ImmutableArray<Found> found,
        FaultWeights? weights = null,
        ImmutableArray<Measurement>? without = null,
        CancellationToken cancellation = default
    ) => new Diagnostician(circuit, weights ?? FaultWeights.Usual, without ?? [], cancellation).Reason(found);

    private Diagnosis Reason(ImmutableArray<Found> found)
    {
        var worked = found.Select(one => one.At).OfType<FoundPast>().FirstOrDefault()?.Worked;
        ImmutableArray<(Found Line, FoundFact Fact)> facts =
        [
            .. found.SelectMany(line => line.What, (line, fact) => (line, fact)).Take(MostFindings),
        ];
        var suspects = SuspectList.Of(instrument, nuisances, faults, weights, worked);
        foreach (var (line, fact) in facts)
        {
            cancellation.ThrowIfCancellationRequested();
            foreach (var suspect in suspects)
            {
                odds.Take(suspect, line.At, fact);
            }

            SuspectList.Settle(suspects);
        }

        if (facts.IsEmpty)
        {
            return Start();
        }

        var looked = Looked(suspects);
        var measurements = Allowed(looked, found);
        var outlooks = OutlooksOf(looked, measurements);
        var groupOf = Groups(looked, outlooks);
        var explanations = Explain(looked, groupOf, facts);
        var (end, next) = End(looked, groupOf, explanations, measurements, outlooks, found);
        var pairs = ImmutableArray<Explanation>.Empty;
        if (IsUnexplained(suspects, explanations))
        {
            pairs = new PairSearch(instrument, nuisances, odds, weights, worked).Find(faults, facts, MisfitsOf);
            end = pairs.IsEmpty || end == DiagnosisEnd.Outside ? end : DiagnosisEnd.Pairs;
        }

        return new Diagnosis(circuit, facts.Length, faults.Length, end, explanations, next, pairs, Assumed(), Work);
    }

    /// <summary>With nothing found the first position at the plug is measured.</summary>
    private Diagnosis Start()
    {
        var jack = circuit.Outputs[0].Part;
        var state =
            MeasurementList
                .Positions(circuit)
                .FirstOrDefault(one =>
                    !without.Contains(new Measurement(new FoundAtPlug(jack, one, null), IsByEar: false))
                )
            ?? State.Rest(circuit);
        var place = new FoundAtPlug(jack, state, Turning: null);
        return new Diagnosis(
            circuit,
            0,
            faults.Length,
            DiagnosisEnd.NothingFound,
            [],
            new NextMeasurement(place, IsByEar: false, FoundLines.Where(circuit, place), IsInside: false, []),
            [],
            Assumed(),
            Work
        );
    }

    private ImmutableArray<string> Assumed() =>
        [
            .. circuit
                .Elements.OfType<Coil>()
                .Where(coil => coil.Origins.Ohms == ValueOrigin.Assumed)
                .Select(coil => coil.Name),
        ];

    /// <summary>Those that hold nearly all of the share together, the likeliest first.</summary>
    private static ImmutableArray<Suspect> Looked(List<Suspect> suspects)
    {
        var held = 0.0;
        var looked = ImmutableArray.CreateBuilder<Suspect>();
        foreach (var suspect in suspects.OrderByDescending(suspect => suspect.LogShare).Take(MostLooked))
        {
            if (held >= HeldTogether)
            {
                break;
            }

            held += Math.Exp(suspect.LogShare);
            looked.Add(suspect);
        }

        return looked.ToImmutable();
    }

    private ImmutableArray<Measurement> Allowed(ImmutableArray<Suspect> looked, ImmutableArray<Found> found)
    {
        var done = found
            .SelectMany(line => line.What, (line, fact) => (line.At, IsByEar: IsByEar(line.At, fact)))
            .ToHashSet();
        return
        [
            .. MeasurementList
                .Of(instrument, looked.SelectMany(suspect => suspect.Faults).Select(one => one.Fault))
                .Where(one => !done.Contains((one.Place, one.IsByEar)) && !without.Contains(one)),
        ];
    }

    private static bool IsByEar(FoundPlace place, FoundFact fact) => place is FoundAtPlug && fact is not FoundReading;

    /// <summary>For each measurement what it would show under each suspect; past the bound nothing more is worked out.</summary>
    private Outlook[][] OutlooksOf(ImmutableArray<Suspect> looked, ImmutableArray<Measurement> measurements)
    {
        var nothing = new Outlook(null, 0, 0, null, null);
        var all = new Outlook[measurements.Length][];
        for (var at = 0; at < all.Length; at++)
        {
            cancellation.ThrowIfCancellationRequested();
            all[at] =
            [
                .. looked.Select(suspect =>
                    Work > MostNetworks ? nothing : Outlook.Of(suspect, measurements[at], meter, odds)
                ),
            ];
        }

        return all;
    }

    /// <summary>Suspects that nothing tells apart, and sizes of one fault, are in one group.</summary>
    private static ImmutableArray<int> Groups(ImmutableArray<Suspect> looked, Outlook[][] outlooks)
    {
        var sets = new DisjointSets(looked.Length);
        for (var one = 0; one < looked.Length; one++)
        {
            for (var other = 0; other < one; other++)
            {
                if (
                    !looked[one].IsOutside
                    && !looked[other].IsOutside
                    && (
                        AreOneFault(looked[one], looked[other])
                        || Array.TrueForAll(outlooks, shown => shown[one].IsLike(shown[other]))
                    )
                )
                {
                    sets.Unite(one, other);
                }
            }
        }

        return sets.Number();
    }

    private static bool AreOneFault(Suspect one, Suspect other) =>
        one.Faults is [var a] && other.Faults is [var b] && a.Fault.Index == b.Fault.Index;

    private ImmutableArray<Explanation> Explain(
        ImmutableArray<Suspect> looked,
        ImmutableArray<int> groupOf,
        ImmutableArray<(Found Line, FoundFact Fact)> facts
    )
    {
        var explanations = new Explanation[groupOf.Max() + 1];
        var firsts = new Dictionary<Explanation, Suspect>(ReferenceEqualityComparer.Instance);
        for (var group = 0; group < explanations.Length; group++)
        {
            var members = looked.Where((_, i) => groupOf[i] == group).ToList();
            var first = members[0];
            var kind =
                members.Exists(one => one.IsRight) ? ExplanationKind.NothingWrong
                : first.IsOutside ? ExplanationKind.Outside
                : ExplanationKind.Fault;
            ImmutableArray<Fault> faultsIn =
            [
                .. members.SelectMany(one => one.Faults).Select(one => one.Fault).DistinctBy(fault => fault.Index),
            ];
            explanations[group] = new Explanation(
                kind,
                members.Sum(one => Math.Exp(one.LogShare)),
                [.. kind == ExplanationKind.Fault ? faultsIn.Select(fault => WordsOf(fault, members)) : []],
                faultsIn,
                []
            );
            firsts.Add(explanations[group], first);
        }

        // Groups are numbered by their first member, and that is the likeliest: the sums may stand otherwise.
        return
        [
            .. explanations
                .OrderByDescending(one => one.Share)
                .Select(
                    (one, place) =>
                        place < MostExplained && one.Kind != ExplanationKind.Outside
                            ? one with
                            {
                                Misfits = MisfitsOf(firsts[one], facts),
                            }
                            : one
                ),
        ];
    }

    /// <summary>The fault, with its size where one size has most of its share.</summary>
    internal static string WordsOf(Fault fault, List<Suspect> members)
    {
        var sizes = members.Where(one => one.Faults.Any(other => other.Fault.Index == fault.Index)).ToList();
        var best = sizes.MaxBy(one => one.LogShare);
        var words = best?.Faults.First(one => one.Fault.Index == fault.Index).Size.Words;
        return words is null ? fault.Words : $"{fault.Words}: {words}";
    }

    /// <summary>What of the facts a slip explains better than the suspect.</summary>
    private ImmutableArray<Misfit> MisfitsOf(Suspect suspect, ImmutableArray<(Found Line, FoundFact Fact)> facts)
    {
        var again = suspect.Anew(nuisances);
        var misfits = ImmutableArray.CreateBuilder<Misfit>();
        foreach (var (line, fact) in facts)
        {
            var would = WouldShow(again, line.At, fact);
            if (odds.Take(again, line.At, fact))
            {
                misfits.Add(new Misfit(line.Where, would, Short(fact)));
            }
        }

        return misfits.ToImmutable();
    }

    private string WouldShow(Suspect suspect, FoundPlace place, FoundFact fact)
    {
        var outlook = Outlook.Of(suspect, new Measurement(place, IsByEar(place, fact)), meter, odds);
        return OutcomeWords.Of(circuit, outlook, place);
    }

    private static string Short(FoundFact fact) =>
        fact is FoundReading reading ? FoundLines.Reading(reading.Ohms, 4) : fact.Text;

    private (DiagnosisEnd End, NextMeasurement? Next) End(
        ImmutableArray<Suspect> looked,
        ImmutableArray<int> groupOf,
        ImmutableArray<Explanation> explanations,
        ImmutableArray<Measurement> measurements,
        Outlook[][] outlooks,
        ImmutableArray<Found> found
    )
    {
        var best = explanations[0];
        if (best.Share >= BenchOdds.Sure)
        {
            return (
                best.Kind switch
                {
                    ExplanationKind.NothingWrong => DiagnosisEnd.NothingWrong,
                    ExplanationKind.Outside => DiagnosisEnd.Outside,
                    _ => best.Faults.Length == 1 ? DiagnosisEnd.OneFault : DiagnosisEnd.OneGroup,
                },
                null
            );
        }

        if (explanations.Length == 1)
        {
            return (DiagnosisEnd.Several, null);
        }

        var isOpen = found.Any(line => new Measurement(line.At, IsByEar: false).IsInside);
        var advice = new Advice(looked, groupOf, odds);
        if (advice.Best(measurements, outlooks, isOpen) is not { } at)
        {
            return (DiagnosisEnd.Several, null);
        }

        var measurement = measurements[at];
        return (
            DiagnosisEnd.GoOn,
            new NextMeasurement(
                measurement.Place,
                measurement.IsByEar,
                FoundLines.Where(circuit, measurement.Place),
                measurement.IsInside,
                OutcomeWords.All(circuit, measurement, looked, outlooks[at], explanations)
            )
        );
    }

    private static bool IsUnexplained(List<Suspect> suspects, ImmutableArray<Explanation> explanations) =>
        suspects.Where(one => one.IsOutside).Sum(one => Math.Exp(one.LogShare)) >= PairsFrom
        || explanations.FirstOrDefault(one => one.Kind != ExplanationKind.Outside) is { Misfits.IsEmpty: false };
}
