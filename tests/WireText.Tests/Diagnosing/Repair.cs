using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Diagnosing;

namespace WireText.Tests.Diagnosing;

/// <summary>How the true fault stands after some findings.</summary>
/// <param name="Leads">The first explanation holds it.</param>
/// <param name="IsAnswered">The diagnosis has ended.</param>
internal sealed record RepairStep(bool Leads, double TopShare, bool IsAnswered, int GroupSize);

/// <summary>A walk at the bench: every position at the plug, then what is advised, until an answer or too many readings.</summary>
/// <param name="PlugReadings">Positions read first.</param>
/// <param name="Steps">After the positions, then after each further measurement.</param>
/// <param name="Cost">Of all measurements.</param>
/// <param name="First">What was said after the positions.</param>
internal sealed record Repair(
    int PlugReadings,
    ImmutableArray<RepairStep> Steps,
    double Cost,
    Diagnosis First,
    Diagnosis Last,
    ImmutableArray<Found> Found
)
{
    /// <summary>Measurements behind the positions before nobody goes on.</summary>
    public const int MostMore = 25;

    public bool Leads => Steps[^1].Leads;

    /// <summary>Sure of something else.</summary>
    public bool IsWrongAndSure => !Leads && Steps[^1].TopShare >= BenchOdds.Sure;

    public int More => Steps.Length - 1;

    /// <summary>True when the fault was on top after so many further readings, or when it ended before.</summary>
    public bool LeadsAfter(int more) => Steps[Math.Min(more, More)].Leads;

    /// <summary>True when the right answer stood after so many further readings, and stayed.</summary>
    public bool IsRightWithin(int more) =>
        Leads && Steps[^1] is { IsAnswered: true, TopShare: >= BenchOdds.Sure } && More <= more;

    /// <param name="isTrue">Whether an explanation holds what is really wrong.</param>
    /// <param name="advise">What to measure next; null where it is what the diagnosis says.</param>
    public static Repair Of(
        Circuit circuit,
        BrokenInstrument broken,
        Func<Explanation, bool> isTrue,
        Func<Diagnosis, ImmutableArray<Found>, Measurement?>? advise = null,
        int mostMore = MostMore
    )
    {
        var jack = circuit.Outputs[0].Part;
        var found = MeasurementList
            .Positions(circuit)
            .Select(state => broken.Find(new FoundAtPlug(jack, state, null), isByEar: false))
            .ToImmutableArray();
        var (cost, isOpen, plugReadings) = (found.Length * Measurement.PlugCost, false, found.Length);
        var steps = ImmutableArray.CreateBuilder<RepairStep>();
        Diagnosis? first = null;
        while (true)
        {
            var diagnosis = Diagnostician.Of(circuit, found);
            first ??= diagnosis;
            var top = diagnosis.Explanations[0];
            var isEnd = diagnosis.Next is null;
            steps.Add(new RepairStep(isTrue(top), top.Share, isEnd, top.Faults.Length));
            var next =
                advise is not null && !isEnd ? advise(diagnosis, found)
                : diagnosis.Next is { } advised ? new Measurement(advised.Place, advised.IsByEar)
                : null;
            if (next is null || steps.Count > mostMore)
            {
                return new Repair(plugReadings, steps.ToImmutable(), cost, first, diagnosis, found);
            }

            cost += next.Cost(isOpen);
            isOpen |= next.IsInside;
            found = found.Add(broken.Find(next.Place, next.IsByEar));
        }
    }
}
