using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Positions;
using WireText.Electrical.Responses;
using WireText.Geometry;

namespace WireText.Drawing.Charts;

/// <summary>The labels at the right of the plot: one for each curve where it ends, and under them the states without one.</summary>
internal sealed class CurveLabels
{
    /// <summary>With few curves there is room to say what is heard in each.</summary>
    private const int MostWithWords = 6;

    /// <summary>Air between two columns of a label, in millimetres. Chosen by eye.</summary>
    private const double Gap = 2;

    /// <summary>So that a text fits where its own width was kept for it, however sums are rounded.</summary>
    private const double Slack = 0.1;

    private readonly ResponseStudy study;
    private readonly Theme theme;
    private readonly ImmutableArray<Paint> paints;
    private readonly bool hasWords;
    private readonly double nameWidth;
    private readonly double peakWidth;

    /// <param name="hasWords">True when what is heard differs from curve to curve.</param>
    /// <param name="hasPeaks">True when the peaks are told here and not in the plot.</param>
    public CurveLabels(ResponseStudy study, Theme theme, ImmutableArray<Paint> paints, bool hasWords, bool hasPeaks)
    {
        this.study = study;
        this.theme = theme;
        this.paints = paints;
        this.hasWords = hasWords && study.Curves.Length <= MostWithWords;
        peakWidth = hasPeaks ? study.Curves.Max(curve => WidthOf(PeakText(curve), TextWeight.Regular)) : 0;
        var names = study.Curves.Max(curve => WidthOf(NameOf(curve), TextWeight.Medium));
        var words = study
            .Curves.Select(curve => WordsOf(curve) is { } text ? WidthOf(text, TextWeight.Regular) : 0)
            .Max();
        var room = Tokens.WidestChartLabels - Start - Gap - peakWidth;
        nameWidth = Math.Min(Math.Max(names, words - Gap - peakWidth), room);
    }

    /// <summary>What the labels take of the page's width.</summary>
    public double Width => Start + nameWidth + Gap + peakWidth;

    /// <summary>The height that all rows need one under the other.</summary>
    public double Height => study.Curves.Sum(HeightOf);

    private static double Start => Tokens.LeaderWidth + Tokens.LegendSample + Gap;

    private static double RowHeight => Tokens.NoteSize * Tokens.ChartRowHeight;

    /// <summary><c>3.99 kHz +4.6 dB</c>, with a star where it rests on assumed values.</summary>
    public static string PeakText(ResponseCurve curve) =>
        curve.Peak is { } peak
            ? $"{ChartText.Hertz(peak.Hertz)} {ChartText.Decibels(peak.HeightDecibels)}{MarkOf(curve)}"
            : "";

    /// <summary>A curve in one sentence.</summary>
    public static string InWords(ResponseCurve curve) =>
        curve.Decibels is null ? curve.Heard
        : curve.Peak is null ? $"{curve.Heard}, no resonance"
        : $"{curve.Heard}, resonance {PeakText(curve)}";

    public IEnumerable<PictureItem> Paint(PlotScales scales)
    {
        var rows = Enumerable
            .Range(0, study.Curves.Length)
            .Select(i => (Index: i, Curve: study.Curves[i], End: EndOf(scales, study.Curves[i])))
            .OrderBy(row => row.Curve.Decibels is null)
            .ThenBy(row => row.End)
            .ThenBy(row => row.Index)
            .ToList();
        var tops = LabelRows.Place(
            [.. rows.Select(row => row.End)],
            [.. rows.Select(row => HeightOf(row.Curve))],
            scales.Plot.Y,
            scales.Plot.Bottom
        );
        return rows.Select(
            (row, i) =>
                new PictureGroup("label", [.. Row(scales, row.Index, row.End, tops[i])])
                {
                    Shows = [("curve", row.Curve.Label)],
                }
        );
    }

    private IEnumerable<PictureItem> Row(PlotScales scales, int index, double end, double top)
    {
        var curve = study.Curves[index];
        var middle = top + (RowHeight / 2);
        var left = scales.Plot.Right + Tokens.LeaderWidth;
        if (curve.Decibels is not null)
        {
            var leader = Shapes.Paint.Stroked(paints[index].Line!.Value, Tokens.GridLine);
            yield return PathShape.Through(
                "leader",
                leader,
                new Point(scales.Plot.Right, end),
                new Point(left, middle)
            );
            yield return PathShape.Through(
                "sample",
                paints[index],
                new Point(left, middle),
                new Point(left + Tokens.LegendSample, middle)
            );
        }

        var x = scales.Plot.Right + Start;
        var baseline = middle + (Tokens.NoteSize * DrawnText.CapHeight / 2);
        yield return Text("label-name", NameOf(curve), new Point(x, baseline), nameWidth, TextWeight.Medium, theme.Ink);
        var right = Tokens.ChartWidth - Tokens.PageMargin;
        if (peakWidth > 0 && PeakText(curve) is { Length: > 0 } peak)
        {
            var width = WidthOf(peak, TextWeight.Regular);
            yield return Text(
                "label-peak",
                peak,
                new Point(right - width, baseline),
                width,
                TextWeight.Regular,
                theme.QuietInk
            );
        }

        if (WordsOf(curve) is { } words)
        {
            var below = new Point(x, baseline + (Tokens.NoteSize * Tokens.LineHeight));
            yield return Text("label-words", words, below, right - x, TextWeight.Regular, theme.QuietInk);
        }
    }

    /// <summary>Where a curve leaves the plot on the right; at the bottom when it has left there, or there is none.</summary>
    private static double EndOf(PlotScales scales, ResponseCurve curve) =>
        curve.Decibels is { } levels ? Math.Min(scales.Y(levels[^1]), scales.Plot.Bottom) : scales.Plot.Bottom;

    private double HeightOf(ResponseCurve curve) =>
        RowHeight + (WordsOf(curve) is null ? 0 : Tokens.NoteSize * Tokens.LineHeight);

    /// <summary>What is heard, where there is room and it tells more than the label; always why nothing is.</summary>
    private string? WordsOf(ResponseCurve curve) => curve.Decibels is null || hasWords ? curve.Heard : null;

    /// <summary>The label of a curve; with the mark where no peak has it.</summary>
    private static string NameOf(ResponseCurve curve) => curve.Label + (curve.Peak is null ? MarkOf(curve) : "");

    private static string MarkOf(ResponseCurve curve) => curve.IsAssumed ? AssumedValues.Mark : "";

    private static double WidthOf(string text, TextWeight weight) =>
        text.Length == 0 ? 0 : DrawnText.Width(text, weight, Tokens.NoteSize) + Slack;

    private static TextItem Text(string name, string text, Point at, double width, TextWeight weight, Colour colour) =>
        TextItem.Start(name, DrawnText.Fit(text, weight, Tokens.NoteSize, width), at, weight, Tokens.NoteSize, colour);
}
