using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;

namespace WireText.Electrical.BenchPlans;

/// <summary>A reading that is wrong for certain.</summary>
/// <param name="Reading">Its place in <see cref="BenchPlan.Readings"/>.</param>
/// <param name="Band">All that the faults of its group may make the meter show.</param>
public readonly record struct WrongReading(int Reading, MeterBand Band);

/// <summary>Faults that the readings of the plan cannot tell from each other for certain.</summary>
/// <param name="Wrong">In the order of the plan; never empty.</param>
/// <param name="Faults">In the order in which they were tried.</param>
public sealed record FaultGroup(ImmutableArray<WrongReading> Wrong, ImmutableArray<Fault> Faults);

/// <summary>Which single faults a set of wrong readings points to.</summary>
/// <param name="Groups">In the order of their first wrong readings.</param>
/// <param name="Unseen">Faults with which every reading may be what it should: the meter does not show them.</param>
/// <param name="IsComplete">False where there were more faults than are tried.</param>
/// <remarks>
/// Two faults are in one group where at every reading some value fits both, or where others lead from the one to the other in
/// such steps: members of different groups differ in some reading whatever their tolerances make of it.
/// </remarks>
public sealed record FaultTable(ImmutableArray<FaultGroup> Groups, ImmutableArray<Fault> Unseen, bool IsComplete)
{
    /// <summary>Faults that are tried. Chosen: a harness of forty wires has some three hundred.</summary>
    internal const int MostFaults = 1_000;

    /// <summary>Nets and elements looked at, over all faults and readings. Chosen: some seconds.</summary>
    internal const long WorkLimit = 20_000_000;

    /// <param name="readings">Of the circuit without a fault.</param>
    internal static FaultTable Of(
        Circuit circuit,
        ImmutableArray<BenchReading> readings,
        CancellationToken cancellation
    )
    {
        ImmutableArray<MeterBand> right = [.. readings.Select(reading => reading.Band)];
        var work = (long)readings.Length * (circuit.Nets.Count + circuit.Elements.Length);
        var most = (int)Math.Min(MostFaults, WorkLimit / Math.Max(1, work));
        var faults = FaultList.Of(circuit).Take(most + 1).ToList();
        var isComplete = faults.Count <= most;
        var seen = new List<ShownFault>();
        var unseen = ImmutableArray.CreateBuilder<Fault>();
        foreach (var fault in isComplete ? faults : faults[..most])
        {
            cancellation.ThrowIfCancellationRequested();
            var faulty = fault.In(circuit);
            if (fault is WireOnNeighbour && HaveSameNets(circuit, faulty))
            {
                continue;
            }

            var shown = new ShownFault(fault, BandsOf(faulty, readings));
            if (shown.MayBe(right))
            {
                unseen.Add(fault);
            }
            else
            {
                seen.Add(shown);
            }
        }

        return new FaultTable(
            [
                .. ShownFault
                    .Groups(seen)
                    .Select(group => GroupOf(group, right))
                    .OrderBy(group => group, Comparer<FaultGroup>.Create(Compare)),
            ],
            unseen.ToImmutable(),
            isComplete
        );
    }

    /// <summary>True when a wire on another lug leaves all as it was: then nothing is wrong.</summary>
    private static bool HaveSameNets(Circuit right, Circuit faulty) =>
        right.Nets.OneNet.AsSpan().SequenceEqual(faulty.Nets.OneNet.AsSpan());

    private static ImmutableArray<MeterBand> BandsOf(Circuit faulty, ImmutableArray<BenchReading> readings)
    {
        var networks = readings
            .Select(reading => reading.Points)
            .Distinct()
            .ToDictionary(points => points, points => Network.Of(points.SeenIn(faulty))!);
        return [.. readings.Select(reading => MeterBand.Of(Ohmmeter.Read(networks[reading.Points], reading.State)))];
    }

    private static FaultGroup GroupOf(List<ShownFault> members, ImmutableArray<MeterBand> right) =>
        new(
            [
                .. from reading in Enumerable.Range(0, right.Length)
                where members.Exists(shown => !shown.Bands[reading].Meets(right[reading]))
                select new WrongReading(
                    reading,
                    members.Select(shown => shown.Bands[reading]).Aggregate((one, other) => one.With(other))
                ),
            ],
            [.. members.Select(shown => shown.Fault)]
        );

    /// <summary>By the wrong readings, the first of them first; groups wrong in the same stay in the order of their faults.</summary>
    private static int Compare(FaultGroup one, FaultGroup other)
    {
        foreach (var (a, b) in one.Wrong.Zip(other.Wrong))
        {
            if (a.Reading != b.Reading)
            {
                return a.Reading.CompareTo(b.Reading);
            }
        }

        return one.Wrong.Length.CompareTo(other.Wrong.Length);
    }
}
