using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Diagnosing;
using WireText.Electrical.Faults;
using WireText.Testing;

namespace WireText.Tests.Diagnosing;

/// <summary>
/// Measures diagnoses on a technician who is simulated and writes <c>docs/diagnoses.md</c>. The page is measured where files are
/// accepted; every run injects three faults into each example.
/// </summary>
public class DiagnosesPageTests
{
    private const string Page = "docs/diagnoses.md";

    /// <summary>Of the faults of a circuit every so many is injected: counted over all circuits, so that each kind comes in.</summary>
    private const int Step = 13;

    /// <summary>Faults that the baselines are measured with.</summary>
    private const int Baselines = 36;

    private const int Injected = 3;

    /// <summary>The share of answers that must hold the fault which was injected, where it shows at a position.</summary>
    private const double LeastRight = 0.9;

    private static readonly string[] RowWords =
    [
        "a position at the plug",
        "a dial at the plug, outside metal, the lead",
        "the ear",
        "a probe inside only",
    ];

    /// <summary>Three faults in each example that show at a position of the plug, the same in every run.</summary>
    [Fact]
    public void InjectedFaults_OfEveryExample_AreFound()
    {
        var walks = Every
            .Of(DiagnosisCase.Examples)
            .SelectMany(one => Injectable(one).Select(fault => (Case: one, Fault: fault, Repair: one.Diagnose(fault))))
            .ToList();

        Assert.Equal(Injected * DiagnosisCase.Examples.Length, walks.Count);
        var wrong = walks.Where(walk => walk.Repair.IsWrongAndSure).ToList();
        Assert.True(wrong.Count <= 1, string.Join('\n', wrong.Select(walk => $"{walk.Case.Name}: {walk.Fault.Words}")));
        var right = walks.Count(walk => walk.Repair.Leads);
        Assert.True(right >= LeastRight * walks.Count, $"{right} of {walks.Count}");
    }

    /// <summary>The page says what was measured; nothing is measured where it is only read.</summary>
    [Fact]
    public void Page_OfDiagnoses_IsThere()
    {
        if (AcceptedFile.IsAccepting)
        {
            AcceptedFile.Check(Page, Measure());
        }

        Assert.Contains(
            "| a position at the plug |",
            File.ReadAllText(Repository.PathOf(Page)),
            StringComparison.Ordinal
        );
    }

    private static IEnumerable<Fault> Injectable(DiagnosisCase one)
    {
        var draw = new Draw($"injected into {one.Name}");
        var faults = one.Faults.OrderBy(_ => draw.Uniform()).Where(fault => one.WhereShown(fault) == ShowsAt.Position);
        return faults.Take(Injected);
    }

    private static string Measure()
    {
        ImmutableArray<DiagnosisCase> cases = [.. DiagnosisCase.Examples, .. DiagnosisCase.Generated];
        var walks = Walked(cases);
        var text = new StringBuilder(Head(cases, walks.Count));
        AppendTable(text, walks);
        AppendSure(text, walks);
        AppendBaselines(text, [.. walks.Where(walk => walk.Row != ShowsAt.Nowhere)]);
        AppendRight(text, cases);
        AppendOutside(text, cases);
        AppendPairs(text, cases);
        return text.ToString();
    }

    private static string Head(ImmutableArray<DiagnosisCase> cases, int count) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            # How well faults are found

            `wiretext diagnose` on a technician who is simulated: an instrument is drawn within its tolerances, a fault is put into it, each position is
            read at the plug, and then what is advised is measured until there is an answer, {Repair.MostMore} times at most. The meter has an
            error, the hand sets a dial by eye, the ear errs half as often as is assumed. What the meter shows comes from the ohmmeter of the table
            of positions and not from what diagnoses. It is no bench: the faults come from the same list.

            {cases.Length} circuits: the nine examples, and {cases.Length
                - 9} generated ones that no weight or threshold was chosen by. Every {Step}th
            fault of all was injected, {count} in all, each once, however rare it is at a bench. `DiagnosesPageTests` writes this page where files are
            accepted; every run of the tests injects three faults into each example.

            *Leads*: the explanation on top holds the fault. *Alike at the plug*: it holds one that shows the same at every position. *More* are
            measurements behind the positions; the cost is of all, 1 for a reading at the plug.


            """
        );

    private static List<Walk> Walked(ImmutableArray<DiagnosisCase> cases)
    {
        var picked = cases
            .SelectMany(one => one.Faults.Select(fault => (Case: one, Fault: fault)))
            .Where((_, at) => at % Step == 0)
            .ToList();
        var walks = new ConcurrentDictionary<int, Walk>();
        Parallel.For(
            0,
            picked.Count,
            at =>
            {
                var (one, fault) = picked[at];
                var row = one.WhereShown(fault);
                walks[at] = new Walk(one, fault, row, row == ShowsAt.Nowhere ? null : one.Diagnose(fault));
            }
        );
        return [.. walks.OrderBy(pair => pair.Key).Select(pair => pair.Value)];
    }

    private static void AppendTable(StringBuilder text, List<Walk> walks)
    {
        text.Append(
            "| the fault first shows at | n | alike at the plug leads at once, % | leads after 0 / 1 / 2 / 3 / 5 more, % | answered right after 0 / 1 / 2 / 3 / 5 more, % | leads in the end, % | wrong at ≥ 95 %, % | more readings; cost in all |\n"
        );
        text.Append("| --- | ---: | ---: | --- | --- | ---: | ---: | --- |\n");
        for (var row = ShowsAt.Position; row < ShowsAt.Nowhere; row++)
        {
            var of = walks.Where(walk => walk.Row == row).ToList();
            if (of.Count == 0)
            {
                continue;
            }

            int[] after = [0, 1, 2, 3, 5];
            text.Append(
                CultureInfo.InvariantCulture,
                $"| {RowWords[(int)row]} | {of.Count} | {Share(of, walk => walk.IsAlikeAtOnce):0} | {string.Join(" / ", after.Select(k => Rounded(Share(of, walk => walk.Repair!.LeadsAfter(k)))))} | {string.Join(" / ", after.Select(k => Rounded(Share(of, walk => walk.Repair!.IsRightWithin(k)))))} | {Share(of, walk => walk.Repair!.Leads):0.0} | {Share(of, walk => walk.Repair!.IsWrongAndSure):0.0} | {of.Average(walk => walk.Repair!.More):0.0}; {of.Average(walk => walk.Repair!.Cost):0} |\n"
            );
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $"\n{walks.Count(walk => walk.Row == ShowsAt.Nowhere)} show nowhere and are left out.\n\n"
        );
    }

    private static void AppendSure(StringBuilder text, List<Walk> walks)
    {
        var sure = walks
            .Where(walk => walk.Repair is { } repair && repair.Steps[^1].TopShare >= BenchOdds.Sure)
            .ToList();
        var wrong = sure.Where(walk => !walk.Repair!.Leads).ToList();
        var nothing = wrong.Count(walk => walk.Repair!.Last.Explanations[0].Kind == ExplanationKind.NothingWrong);
        text.Append(
            CultureInfo.InvariantCulture,
            $"Of {sure.Count} answers at 95 % or more {100.0 * (sure.Count - wrong.Count) / sure.Count:0.0} % were right. Of the {wrong.Count} wrong ones {nothing} say that nothing is wrong.\n\n"
        );
    }

    private static void AppendBaselines(StringBuilder text, List<Walk> walks)
    {
        var step = Math.Max(1, walks.Count / Baselines);
        var some = walks.Where((_, at) => at % step == 0).Take(Baselines).ToList();
        text.Append(
            CultureInfo.InvariantCulture,
            $"## Beside other ways of going on\n\n{some.Count} of these faults, with what is advised, with a fixed checklist (each position by ear, outside metal, the ends of every wire, contacts, parts), and with\nwhat is drawn at random of all that concerns the explanations that remain; 40 measurements at most.\n\n| goes on by | leads in the end, % | more readings | cost in all |\n| --- | ---: | ---: | ---: |\n"
        );
        Append(text, "advice", [.. some.Select(walk => walk.Repair!)]);
        Append(text, "checklist", Walked(some, Checklist));
        Append(text, "random", Walked(some, AtRandom));
        text.Append('\n');
    }

    private static void Append(StringBuilder text, string name, List<Repair> repairs) =>
        text.Append(
            CultureInfo.InvariantCulture,
            $"| {name} | {100.0 * repairs.Count(one => one.Leads) / repairs.Count:0} | {repairs.Average(one => one.More):0.0} | {repairs.Average(one => one.Cost):0} |\n"
        );

    private static List<Repair> Walked(
        List<Walk> walks,
        Func<Walk, Func<Diagnosis, ImmutableArray<Found>, Measurement?>> by
    )
    {
        var repairs = new Repair[walks.Count];
        Parallel.For(
            0,
            walks.Count,
            at =>
            {
                var walk = walks[at];
                repairs[at] = Repair.Of(
                    walk.Case.Circuit,
                    walk.Case.Break(walk.Fault),
                    explanation => explanation.Faults.Any(one => one.Index == walk.Fault.Index),
                    by(walk),
                    mostMore: 40
                );
            }
        );
        return [.. repairs];
    }

    private static Func<Diagnosis, ImmutableArray<Found>, Measurement?> Checklist(Walk walk)
    {
        var all = MeasurementList.Of(walk.Case.Instrument, walk.Case.Faults);
        var positions = MeasurementList.Positions(walk.Case.Circuit);
        var list = all.Where(one => one.IsByEar && one.Place is FoundAtPlug plug && positions.Contains(plug.State))
            .Concat(all.Where(one => one.Place is FoundAtMetal or FoundAtLead or FoundAtCell))
            .Concat(all.Where(one => one.Place is FoundBetween))
            .Concat(all.Where(one => one.Place is FoundAlone))
            .ToImmutableArray();
        return (_, found) => list.FirstOrDefault(one => !IsDone(one, found));
    }

    private static Func<Diagnosis, ImmutableArray<Found>, Measurement?> AtRandom(Walk walk)
    {
        var draw = new Draw($"at random: {walk.Case.Name} {walk.Fault.Words}");
        return (diagnosis, found) =>
        {
            var left = MeasurementList
                .Of(walk.Case.Instrument, diagnosis.Explanations.SelectMany(one => one.Faults))
                .Where(one => !IsDone(one, found))
                .ToList();
            return left.Count == 0 ? null : left[draw.Below(left.Count)];
        };
    }

    private static bool IsDone(Measurement one, ImmutableArray<Found> found) =>
        found.Any(line =>
            Equals(line.At, one.Place) && one.IsByEar == (line.At is FoundAtPlug && line.What[0] is not FoundReading)
        );

    private static void AppendRight(StringBuilder text, ImmutableArray<DiagnosisCase> cases)
    {
        const int Draws = 3;
        var ends = Ends(
            [.. cases.SelectMany(one => Enumerable.Range(0, Draws).Select(draw => (one, $"right {draw}")))],
            one => new BrokenInstrument(one.Case.Instrument, [], $"{one.Case.Name}: {one.Seed}")
        );
        var sureOfNothing = ends.Count(one => one is { End: DiagnosisEnd.NothingWrong });
        var sureOfFault = ends.Count(one =>
            one.Explanations[0] is { Kind: ExplanationKind.Fault, Share: >= BenchOdds.Sure }
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"## Right instruments\n\n{ends.Count} instruments with nothing wrong, three draws of each circuit: {ends.Count(one => one.Explanations[0].Kind == ExplanationKind.NothingWrong)} end with nothing wrong on top, {sureOfNothing} at 95 % or more; {sureOfFault} end sure of a fault.\n\n"
        );
    }

    /// <summary>A coil of another pickup, and a joint of some kilohms: neither is in the list.</summary>
    private static void AppendOutside(StringBuilder text, ImmutableArray<DiagnosisCase> cases)
    {
        var coils = Ends(
            [.. cases.Select(one => (one, "another coil"))],
            one => new BrokenInstrument(
                one.Case.Instrument,
                [],
                $"{one.Case.Name}: {one.Seed}",
                circuit =>
                {
                    var coil = circuit.Elements.OfType<Coil>().First();
                    return circuit with
                    {
                        Elements = circuit.Elements.SetItem(coil.Index, coil with { Ohms = coil.Ohms * 1.9 }),
                    };
                }
            )
        );
        text.Append("## What the list does not have\n\n");
        text.Append(
            CultureInfo.InvariantCulture,
            $"A first coil of 1.9 times its resistance, one in each circuit: {Told(coils)}\n\n"
        );
        var joints = Ends(
            [.. cases.Select(one => (one, "joint of kilohms"))],
            one =>
            {
                var draw = new Draw($"{one.Case.Name}: {one.Seed}");
                var joint = one.Case.Instrument.Joints[draw.Below(one.Case.Instrument.Joints.Length)];
                var ohms = Math.Exp(draw.Between(Math.Log(300), Math.Log(10e3)));
                FaultSize bad = new([
                    new FaultEdit.LeaveOut(joint.Join),
                    new FaultEdit.Bridge(one.Case.Instrument.Runs[joint.Run].Node, joint.Lug, ohms),
                ]);
                return new BrokenInstrument(
                    one.Case.Instrument,
                    [(new Fault(-1, FaultKind.Joint, "joint of kilohms", [bad]), bad)],
                    $"{one.Case.Name}: {one.Seed}"
                );
            }
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"A joint of 300 Ω to 10 kΩ, one in each circuit: {Told(joints)}\n\n"
        );
    }

    private static string Told(List<Diagnosis> ends)
    {
        var outside = ends.Count(one => one.Explanations[0].Kind == ExplanationKind.Outside);
        var within = ends.Count(one => one.Explanations[0].Kind == ExplanationKind.NothingWrong);
        var sure = ends.Count(one => one.Explanations[0] is { Kind: ExplanationKind.Fault, Share: >= BenchOdds.Sure });
        return string.Create(
            CultureInfo.InvariantCulture,
            $"of {ends.Count}, {outside} end outside the list, {within} with nothing wrong within tolerance, {sure} sure of a fault of the list, the others unsure."
        );
    }

    private static void AppendPairs(StringBuilder text, ImmutableArray<DiagnosisCase> cases)
    {
        var (all, hidden, first, told) = (0, 0, 0, 0);
        foreach (var one in cases)
        {
            var draw = new Draw($"two at once: {one.Name}");
            var shown = one
                .Faults.Where(fault => fault.Sizes.Length == 1 && one.WhereShown(fault) == ShowsAt.Position)
                .ToList();
            var (a, b) = (shown[draw.Below(shown.Count)], shown[draw.Below(shown.Count)]);
            if (a.Index == b.Index)
            {
                continue;
            }

            all++;
            var broken = new BrokenInstrument(
                one.Instrument,
                [(a, a.Sizes[0]), (b, b.Sizes[0])],
                $"{one.Name}: two at once"
            );
            var jack = one.Circuit.Outputs[0].Part;
            var states = MeasurementList.Positions(one.Circuit);
            ImmutableArray<Found> found =
            [
                .. states.Select(state => broken.Find(new FoundAtPlug(jack, state, null), isByEar: false)),
                .. one.Circuit.Dials.Select(dial =>
                    broken.Find(new FoundAtPlug(jack, states[0].At(dial, 0), null), isByEar: false)
                ),
                broken.Find(new FoundAtPlug(jack, states[0], null), isByEar: true),
            ];
            var diagnosis = Diagnostician.Of(one.Circuit, found);
            bool IsPair(Explanation pair) =>
                pair.Faults.Select(fault => fault.Index).Order().SequenceEqual(new[] { a.Index, b.Index }.Order());
            hidden += diagnosis.Pairs.IsEmpty ? 1 : 0;
            first += diagnosis.Pairs.Take(1).Any(IsPair) ? 1 : 0;
            told += diagnosis.Pairs.Any(IsPair) ? 1 : 0;
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $"## Two at once\n\n{all} pairs of faults, each of which shows at a position, with the positions, every dial at 0 and the ear found at once: in {hidden} one fault contradicts nothing, and no pair is told; of the other {all - hidden} the true pair comes first in {first} and among three in {told}.\n"
        );
    }

    private static List<Diagnosis> Ends(
        ImmutableArray<(DiagnosisCase Case, string Seed)> all,
        Func<(DiagnosisCase Case, string Seed), BrokenInstrument> make
    )
    {
        var ends = new Diagnosis[all.Length];
        Parallel.For(0, all.Length, at => ends[at] = Repair.Of(all[at].Case.Circuit, make(all[at]), _ => false).Last);
        return [.. ends];
    }

    private static double Share(List<Walk> walks, Func<Walk, bool> holds) => 100.0 * walks.Count(holds) / walks.Count;

    private static string Rounded(double share) => share.ToString("0", CultureInfo.InvariantCulture);

    /// <param name="Repair">Null where the fault shows nowhere.</param>
    private sealed record Walk(DiagnosisCase Case, Fault Fault, ShowsAt Row, Repair? Repair)
    {
        public bool IsAlikeAtOnce => Case.IsAlikeAtThePlug(Repair!.First.Explanations[0], Fault);
    }
}
