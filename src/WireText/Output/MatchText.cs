using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Matching;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes for people which part of a bin goes where.</summary>
public static class MatchText
{
    private const string Nothing = "-";

    public static string Write(Circuit circuit, MatchPlan plan)
    {
        var text = new StringBuilder();
        if (circuit.Title is { } title)
        {
            text.Append(VisibleText.Line(title)).Append("\n\n");
        }

        TextTable.Write(
            text,
            HeadingOf(plan),
            [.. plan.Instruments.Select((one, i) => RowOf(plan, one, i))],
            0,
            below: []
        );
        TextTable.WriteRemarks(text, [.. RemarksOf(plan)]);
        return text.ToString();
    }

    /// <summary>A part's value with the unit of its kind: <c>6.05 kΩ</c>.</summary>
    internal static string ValueOf(MatchSlot slot, double value) => ValueText.Figure(value, UnitOf(slot));

    /// <summary>A figure in the unit of its goal; a pair's as a ratio in percent.</summary>
    internal static string FigureOf(MatchGoal goal, double figure) =>
        !double.IsFinite(figure)
            ? Nothing
            : goal.Claim switch
            {
                ReadsClaim => ValueText.Figure(figure, Unit.Ohm),
                ResonatesClaim => ValueText.Figure(figure, Unit.Hertz),
                LevelClaim or LevelAtClaim => $"{PositionSheet.Signed(figure, "0.00")} dB",
                _ => figure.ToString("G3", CultureInfo.InvariantCulture),
            };

    private static Unit UnitOf(MatchSlot slot) =>
        slot.Part.Kind switch
        {
            Parts.PartKinds.Cap => Unit.Farad,
            Parts.PartKinds.Inductor => Unit.Henry,
            _ => Unit.Ohm,
        };

    private static ImmutableArray<string> HeadingOf(MatchPlan plan) =>
        [
            "no",
            .. plan.Slots.Select(slot => slot.Part.Name),
            .. ClaimsOf(plan).Select(goal => VisibleText.Line(plan.Goals[goal].Words)),
            "holds",
        ];

    private static ImmutableArray<string> RowOf(MatchPlan plan, MatchedInstrument one, int place) =>
        [
            Number(place + 1),
            .. plan.Slots.Select(
                (slot, i) => $"{VisibleText.Line(one.Parts[i].Name)} ({ValueOf(slot, one.Parts[i].Value)})"
            ),
            .. ClaimsOf(plan)
                .Select(goal =>
                    FigureOf(plan.Goals[goal], one.Figures[goal])
                    + (plan.Goals[goal].IsClaimed && one.Deviations[goal] > 1 ? " !" : "")
                ),
            one.Holds ? "yes" : "no",
        ];

    /// <summary>The goals that have a column: what is a part's own value stands with the part.</summary>
    private static IEnumerable<int> ClaimsOf(MatchPlan plan) =>
        Enumerable.Range(0, plan.Goals.Length).Where(goal => plan.Goals[goal].HasColumn);

    private static IEnumerable<string> RemarksOf(MatchPlan plan)
    {
        yield return $"{Number(plan.Instruments.Length)} of {Number(plan.Count)} instruments have all parts; in {Number(plan.Holding)} every claim of a value holds"
            + (plan.Instruments.Any(one => !one.Holds) ? " (! where one does not)" : "");
        yield return plan.IsExact
            ? $"proven: no other choice has more that hold, and of those none is nearer ({Sum(plan.Cost)})"
            : $"searched: nearer by at most {Sum(plan.Cost - plan.LeastCost)} of {Sum(plan.Cost)}, and {(plan.Holding == plan.Count ? "all hold" : "more may hold")}";
        yield return "nearness: the squares of what each figure is away from what is wanted, in tolerances, summed over figures and instruments";
        yield return plan.LeftOver.IsEmpty
            ? "nothing is left over"
            : $"left over: {string.Join(", ", plan.LeftOver.Select(part => VisibleText.Line(part.Name)))}";
        foreach (var wanted in plan.Wanted)
        {
            yield return "to buy: " + Wish(wanted);
        }
    }

    private static string Wish(WantedPart wanted)
    {
        var range = $"{ValueOf(wanted.Slot, wanted.Least)} to {ValueOf(wanted.Slot, wanted.Most)}";
        return wanted.Instrument is { } instrument
            ? $"a {wanted.Slot.Part.Name} of {range} for instrument {Number(instrument + 1)}: then it holds"
            : $"{Number(wanted.Count)} for {wanted.Slot.Part.Name} ({wanted.Slot.Part.Kind}, {range})";
    }

    private static string Sum(double cost) => cost.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
