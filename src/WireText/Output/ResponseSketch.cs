using System.Collections.Immutable;
using System.Text;
using WireText.Drawing.Charts;
using WireText.Electrical.Positions;
using WireText.Electrical.Responses;

namespace WireText.Output;

/// <summary>Draws a study in letters, for a glance at a terminal: each curve in its own letter, the first before the others.</summary>
public static class ResponseSketch
{
    /// <summary>With the figures beside it, the sketch fits in the 80 columns that every terminal has.</summary>
    private const int Columns = 66;

    private const int MostRows = 16;

    /// <summary>What lies further below the highest level is left out, in dB: nobody hears it beside the rest.</summary>
    private const double Depth = 60;

    /// <summary>What a row may stand for, in dB.</summary>
    private static readonly ImmutableArray<int> Steps = [1, 2, 3, 5, 10];

    private static readonly ImmutableArray<double> Ticks = [20, 50, 100, 200, 500, 1e3, 2e3, 5e3, 10e3, 20e3];

    /// <summary>The sketch and a line a curve, ending with a line break. A curve that is silent is not in it.</summary>
    public static string Draw(ResponseStudy study)
    {
        var text = new StringBuilder();
        List<(ResponseCurve Curve, ImmutableArray<double> Levels)> heard =
        [
            .. study.Curves.Where(curve => curve.Decibels is not null).Select(curve => (curve, curve.Decibels ?? [])),
        ];
        if (heard.Count > 0)
        {
            text.Append("dB over the EMF of one coil\n");
            AppendCurves(text, [.. heard.Select(one => HighestIn(one.Levels))]);
            AppendFrequencies(text);
        }

        for (var i = 0; i < heard.Count; i++)
        {
            var peak = heard[i].Curve.Peak is { } found
                ? $"peak {ChartText.Hertz(found.Hertz)}, {ChartText.Decibels(found.HeightDecibels)}"
                : "no peak";
            var mark = heard[i].Curve.IsAssumed ? AssumedValues.Mark : "";
            text.Append($"{LetterOf(i)}  {heard[i].Curve.Label}: {peak}{mark}\n");
        }

        if (study.Unknown is { } unknown)
        {
            text.Append(unknown).Append('\n');
        }

        if (study.Assumption is { } assumption)
        {
            text.Append(assumption).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The highest level in each column.</summary>
    private static double[] HighestIn(ImmutableArray<double> levels)
    {
        var highest = new double[Columns];
        Array.Fill(highest, double.NegativeInfinity);
        for (var i = 0; i < levels.Length; i++)
        {
            var column = i * Columns / levels.Length;
            highest[column] = Math.Max(highest[column], levels[i]);
        }

        return highest;
    }

    private static void AppendCurves(StringBuilder text, List<double[]> curves)
    {
        var most = curves.Max(curve => curve.Max());
        var least = Math.Max(curves.Min(curve => curve.Min()), most - Depth);
        var step = Steps.First(step => RowOf(most, step) - RowOf(least, step) < MostRows);
        for (var row = RowOf(most, step); row >= RowOf(least, step); row--)
        {
            var line = new StringBuilder();
            for (var column = 0; column < Columns; column++)
            {
                var curve = curves.FindIndex(levels => RowOf(levels[column], step) == row);
                line.Append(curve < 0 ? ' ' : LetterOf(curve));
            }

            text.Append($"{ChartText.Level(row * step), 5} |{line.ToString().TrimEnd()}\n");
        }
    }

    private static int RowOf(double decibels, int step) => (int)Math.Round(decibels / step);

    private static void AppendFrequencies(StringBuilder text)
    {
        var labels = new StringBuilder();
        foreach (var hertz in Ticks)
        {
            labels.Append(' ', ColumnOf(hertz) - labels.Length).Append(ChartText.Tick(hertz));
        }

        text.Append($"      +{new string('-', Columns)}\n       {labels} Hz\n");
    }

    private static int ColumnOf(double hertz)
    {
        var (lowest, highest) = (ResponseStudy.Hertz[0], ResponseStudy.Hertz[^1]);
        return (int)Math.Round(Math.Log(hertz / lowest) / Math.Log(highest / lowest) * (Columns - 1));
    }

    private static char LetterOf(int curve) => (char)('a' + curve);
}
