using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Tolerances;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes for people what tolerances do to a run: a table with a line for each figure of each state.</summary>
public static class SpreadText
{
    /// <summary>Shares of the variance below this are not told in the table. Chosen.</summary>
    private const double LeastShare = 0.05;

    /// <summary>Shares that are told of one figure. Chosen.</summary>
    private const int MostShares = 3;

    private const string Nothing = "-";

    /// <summary>Behind an end that no instrument within its tolerances passes.</summary>
    private const string ExactMark = "!";

    private static readonly ImmutableArray<string> Heading =
    [
        "at",
        "figure",
        "written",
        "least",
        .. RunSpread.Percents.Select(percent => $"{percent} %"),
        "most",
        "what moves it",
    ];

    public static string Write(SpreadTable table)
    {
        var text = new StringBuilder();
        if (table.Circuit.Title is { } title)
        {
            text.Append(VisibleText.Line(title)).Append("\n\n");
        }

        TextTable.Write(
            text,
            Heading,
            [.. table.States.SelectMany(state => RowsOf(table.Circuit, state))],
            broken: Heading.Length - 1,
            below: []
        );
        TextTable.WriteRemarks(text, [.. RemarksOf(table)]);
        return text.ToString();
    }

    /// <summary>The name of a figure in tables and data.</summary>
    internal static string WordFor(RunFigure figure) =>
        figure switch
        {
            RunFigure.Reading => "meter",
            RunFigure.Level => "level",
            RunFigure.Peak => "peak",
            _ => "height",
        };

    private static IEnumerable<ImmutableArray<string>> RowsOf(Circuit circuit, RunSpread state)
    {
        var name = StateText.AsSaid(state.Analysis.State);
        if (state.Figures.IsEmpty)
        {
            var heard = new PositionRow(state.Analysis.State, state.Analysis, LevelDecibels: null).WhatIsHeard(circuit);
            yield return [name, .. Enumerable.Repeat(Nothing, Heading.Length - 2), heard];
        }

        foreach (var spread in state.Figures)
        {
            var mark = spread.IsExact ? ExactMark : "";
            var values = InOneUnit([
                TextOf(spread.Figure, spread.AsWritten),
                TextOf(spread.Figure, spread.Least) + mark,
                .. spread.Percentiles.Select(value => TextOf(spread.Figure, value)),
                TextOf(spread.Figure, spread.Most) + mark,
            ]);
            yield return [spread == state.Figures[0] ? name : "", WordFor(spread.Figure), .. values, SharesOf(spread)];
        }
    }

    /// <summary>The unit with the first value alone, where it is the same for all.</summary>
    private static ImmutableArray<string> InOneUnit(ImmutableArray<string> values)
    {
        var units = values.Select(value => value.TrimEnd(ExactMark[0]).Split(' ')[^1]).Distinct(StringComparer.Ordinal);
        return units.Count() > 1
            ? values
            :
            [
                values[0],
                .. values
                    .Skip(1)
                    .Select(value =>
                        value.Split(' ')[0] + (value.EndsWith(ExactMark, StringComparison.Ordinal) ? ExactMark : "")
                    ),
            ];
    }

    private static string TextOf(RunFigure figure, double value) =>
        !double.IsFinite(value)
            ? Nothing
            : figure switch
            {
                RunFigure.Reading => ValueText.Figure(value, Unit.Ohm),
                RunFigure.Peak => ValueText.Figure(value, Unit.Hertz),
                RunFigure.Level => $"{PositionSheet.Signed(value, "0.00")} dB",
                _ => $"{PositionSheet.Signed(value, "+0.0")} dB",
            };

    private static string SharesOf(FigureSpread spread)
    {
        var told = spread.Shares.Where(share => share.Share >= LeastShare).Take(MostShares).ToList();
        return told.Count == 0
            ? Nothing
            : (spread.AreSharesGood ? "" : "roughly ")
                + string.Join(", ", told.Select(share => $"{share.Factor.Name}\u00a0{Percent(share.Share)}"));
    }

    private static string Percent(double share) =>
        (100 * share).ToString("0", CultureInfo.InvariantCulture) + "\u00a0%";

    private static IEnumerable<string> RemarksOf(SpreadTable table)
    {
        var (circuit, options) = (table.Circuit, table.Options);
        yield return $"{Count(options.Count)} instruments, seed {options.Seed.ToString(CultureInfo.InvariantCulture)}: each value anywhere within its tolerance, as likely here as there; "
            + (options.IsOneBatch ? "parts of one kind and value off alike" : "each part by itself");
        if (table.States.SelectMany(state => state.Figures).Any(spread => spread.IsExact))
        {
            yield return "least and most are what the run showed; with ! they are what no instrument within tolerance passes";
        }

        foreach (var state in table.States)
        {
            foreach (var spread in state.Figures.Where(one => one is { Without: > 0, Figure: RunFigure.Peak }))
            {
                yield return $"{StateText.AsSaid(state.Analysis.State)}: {Count(spread.Without)} of {Count(options.Count)} have no peak";
            }
        }

        yield return "what moves it: its share of the variance, each value moved alone by one standard deviation"
            + (
                table.States.SelectMany(state => state.Figures).Any(IsRough)
                    ? "; roughly, where that does not make up what the run shows"
                    : ""
            );
        yield return UsualRemark(circuit);
        yield return $"level over what the strings induce in one coil; height of the peak over 100 Hz, into {ValueText.Figure(circuit.Surroundings.CableFarads, Unit.Farad)} of cable and {ValueText.Figure(circuit.Surroundings.InputOhms, Unit.Ohm)}";
        var day = circuit.Surroundings;
        yield return day.CoolestCelsius < day.WarmestCelsius
            ? $"copper at {Degrees(day.CoolestCelsius)} to {Degrees(day.WarmestCelsius)} °C, all of an instrument alike"
            : $"copper at {Degrees(day.CoolestCelsius)} °C; a range, such as load temperature=15..25, is spread over";
        if (DoubtText.Remark(table.States.SelectMany(state => state.Analysis.InDoubt)) is { } unknown)
        {
            yield return unknown;
        }
    }

    private static bool IsRough(FigureSpread spread) => !spread.Shares.IsEmpty && !spread.AreSharesGood;

    private static string UsualRemark(Circuit circuit)
    {
        var usual = new List<string>();
        AddFor<Coil>(
            $"coils {Limit(Ohmmeter.CoilTolerance)} (their capacitance {Limit(ValueTolerance.CoilCapacitance)})"
        );
        AddFor<Track>($"pots {Limit(Ohmmeter.PotTolerance)}");
        AddFor<Resistor>($"resistors {Limit(Ohmmeter.ResistorTolerance)}");
        AddFor<Capacitor>($"capacitors {Limit(ValueTolerance.Capacitor)}");
        AddFor<Inductor>($"chokes {Limit(ValueTolerance.Inductor)} (their resistance {Limit(Ohmmeter.CoilTolerance)})");
        return usual.Count == 0
            ? "every tolerance is given by the text"
            : $"where the text has no tol=: {string.Join(", ", usual)}";

        void AddFor<T>(string words)
            where T : Element
        {
            if (circuit.Elements.OfType<T>().Any(element => element.Tolerance is null))
            {
                usual.Add(words);
            }
        }
    }

    private static string Limit(double tolerance) =>
        $"±{(100 * tolerance).ToString("0.#", CultureInfo.InvariantCulture)} %";

    private static string Degrees(double celsius) => PositionSheet.Signed(celsius, "0.#");

    internal static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
