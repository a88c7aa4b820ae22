using System.Collections.Immutable;
using System.Globalization;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Responses;
using WireText.Electrical.Sound;
using WireText.Geometry;
using WireText.Quantities;

namespace WireText.Drawing.Charts;

/// <summary>Draws a study as a chart: level over frequency, every curve labelled where it ends, its peak marked.</summary>
public sealed class ResponseChart
{
    /// <summary>The open strings that a chart is read by, with the names of ISO 16's scale on A4 = 440 Hz.</summary>
    private static readonly string[] StringNames = ["E2", "A2", "D3", "G3", "B3", "E4"];

    private static readonly double[] LabelledHertz = [20, 50, 100, 200, 500, 1e3, 2e3, 5e3, 10e3, 20e3];

    /// <summary>How much of the colour of its curve a band has, in percent. Chosen by eye.</summary>
    private const int BandInk = 16;

    private readonly ResponseStudy study;
    private readonly Theme theme;
    private readonly string? fileName;
    private readonly List<PictureItem> items = [];
    private readonly ImmutableArray<Paint> paints;
    private readonly TextColumn column;

    private ResponseChart(ResponseStudy study, Theme theme, string? fileName)
    {
        this.study = study;
        this.theme = theme;
        this.fileName = fileName;
        paints = CurveStyles.Of(study, theme);
        column = new TextColumn(items, Tokens.PageMargin, Tokens.ChartWidth - Tokens.PageMargin, Tokens.PageMargin);
    }

    private string Title => DrawnText.Clean(study.Circuit.Title ?? "Untitled wiring");

    /// <param name="fileName">The name of the source file; null for none.</param>
    public static Picture Build(ResponseStudy study, Theme theme, string? fileName) =>
        new ResponseChart(study, theme, fileName).Build();

    private Picture Build()
    {
        Heading();
        var labels = new CurveLabels(study, theme, paints, HasWords, hasPeaks: false);
        var scales = PlotScales.For(PlotBeside(labels), study);
        var places = study.IsOrdered ? null : new PeakMarks(scales, Lines(scales)).Place(Peaks(scales));
        if (places is null)
        {
            // No room for all of them in the plot: they are told behind the labels.
            labels = new CurveLabels(study, theme, paints, HasWords, hasPeaks: true);
            scales = PlotScales.For(PlotBeside(labels), study);
        }

        Bands(scales);
        Landmarks(scales);
        Grid(scales);
        Curves(scales);
        PaintPeaks(Peaks(scales), places);
        items.AddRange(labels.Paint(scales));
        column.MoveTo(scales.Plot.Bottom + Tokens.BlockGap + Tokens.NoteSize);
        Notes();

        var page = new Size(Tokens.ChartWidth, column.Y + Tokens.PageMargin - (Tokens.NoteSize / 2));
        var paper = new RectangleShape("paper", new Box(0, 0, page.Width, page.Height), 0, Paint.Filled(theme.Paper));
        return new Picture(page, Title, Describe(), theme, [paper, .. items]);
    }

    /// <summary>True when the labels need not say what is heard: it is the same everywhere.</summary>
    private bool IsHeardAlike =>
        study.Curves.All(curve => curve.Decibels is not null && curve.Heard == study.Curves[0].Heard);

    /// <summary>As one dial turns, what is heard says little that the curves do not.</summary>
    private bool HasWords => !IsHeardAlike && !study.IsOrdered;

    private Box PlotBeside(CurveLabels labels) =>
        new(
            Tokens.PageMargin + Tokens.PlotIndent,
            column.Y + (Tokens.LugLabelSize * Tokens.LineHeight),
            Tokens.ChartWidth - (2 * Tokens.PageMargin) - Tokens.PlotIndent - labels.Width,
            Math.Max(Tokens.PlotHeight, labels.Height)
        );

    private void Heading()
    {
        var title = TextStyle.Title(theme.Ink);
        column.Line("title", title.Fit(Title, column.Width), title);
        column.Paragraph("subtitle", Subtitle(), TextStyle.Note(theme.QuietInk));
        column.Skip(Tokens.BlockGap / 2);
    }

    private string Subtitle()
    {
        var state = study.Common.IsEmpty
            ? "what is not named stands at rest"
            : $"{string.Join(' ', study.Common)}, what is not named stands at rest";
        var heard = IsHeardAlike ? $" · heard: {study.Curves[0].Heard}" : "";
        return $"Level at the jack · {state}{heard}";
    }

    private void Landmarks(PlotScales scales)
    {
        var size = Tokens.LugLabelSize;
        var baseline = scales.Plot.Y - (size * 0.45);
        var paint = Paint.Stroked(theme.HasFills ? theme.Wafer : theme.Detail, Tokens.LandmarkLine);
        var marks = new List<PictureItem>();
        for (var i = 0; i < StringNames.Length; i++)
        {
            var x = scales.X(FixedFrequencies.OpenStrings[i]);
            marks.Add(
                PathShape.Through("landmark", paint, new Point(x, scales.Plot.Y), new Point(x, scales.Plot.Bottom))
            );
            marks.Add(Text("landmark-name", StringNames[i], new Point(x, baseline), TextAlign.Middle, size));
        }

        var left = scales.X(FixedFrequencies.OpenStrings[0]) - (size * 1.6);
        marks.Add(Text("landmark-name", "open strings", new Point(left, baseline), TextAlign.End, size));
        items.Add(new PictureGroup("landmarks", [.. marks]));
    }

    private void Grid(PlotScales scales)
    {
        var grid = new List<PictureItem>();
        var thin = Paint.Stroked(theme.HasFills ? theme.Shell : theme.Detail, Tokens.GridLine);
        var strong = Paint.Stroked(theme.Detail, Tokens.StrongGridLine);
        var (plot, size) = (scales.Plot, Tokens.ValueSize);
        foreach (var hertz in DecadeSteps(scales))
        {
            var x = scales.X(hertz);
            var isDecade = Math.Abs(Math.Log10(hertz) - Math.Round(Math.Log10(hertz))) < 1e-9;
            grid.Add(
                PathShape.Through("grid", isDecade ? strong : thin, new Point(x, plot.Y), new Point(x, plot.Bottom))
            );
        }

        foreach (var level in scales.Levels())
        {
            var at = scales.Y(level);
            grid.Add(
                PathShape.Through("grid", level == 0 ? strong : thin, new Point(plot.X, at), new Point(plot.Right, at))
            );
            var text = level == scales.Top ? $"{ChartText.Level(level)} dB" : ChartText.Level(level);
            var middle = at + (size * DrawnText.CapHeight / 2);
            grid.Add(Text("tick", text, new Point(plot.X - 1.5, middle), TextAlign.End, size));
        }

        foreach (var hertz in LabelledHertz)
        {
            var text = hertz == LabelledHertz[0] ? $"{ChartText.Tick(hertz)} Hz" : ChartText.Tick(hertz);
            var below = new Point(scales.X(hertz), plot.Bottom + (size * 1.35));
            grid.Add(Text("tick", text, below, TextAlign.Middle, size));
        }

        grid.Add(new RectangleShape("frame", plot, 0, Paint.Stroked(theme.PartLine, Tokens.PlotLine)));
        items.Add(new PictureGroup("axes", [.. grid]));
    }

    private static IEnumerable<double> DecadeSteps(PlotScales scales)
    {
        for (var decade = 10.0; decade < scales.HighestHertz; decade *= 10)
        {
            for (var i = 1; i < 10; i++)
            {
                if (i * decade > scales.LowestHertz && i * decade < scales.HighestHertz)
                {
                    yield return i * decade;
                }
            }
        }
    }

    private List<List<Point>> Lines(PlotScales scales) =>
        [
            .. study
                .Curves.Where(curve => curve.Decibels is not null)
                .SelectMany(curve => scales.Inside(curve.Decibels!.Value))
                .Where(line => line.Count > 1),
        ];

    /// <summary>Under all curves: all that a curve may be whose values are not all known.</summary>
    private void Bands(PlotScales scales)
    {
        for (var i = 0; i < study.Curves.Length; i++)
        {
            if (study.Curves[i] is { Least: { } least, Most: { } most })
            {
                var corners = scales.Between(least, most);
                var colour = paints[i].Line!.Value.Over(theme.Paper, BandInk);
                ImmutableArray<PathStep> steps =
                [
                    new PathStep.Move(corners[0]),
                    .. corners.Skip(1).Select(corner => new PathStep.Line(corner)),
                    new PathStep.Close(corners[0]),
                ];
                items.Add(new PathShape("band", steps, Paint.Filled(colour)));
            }
        }
    }

    private void Curves(PlotScales scales)
    {
        // The fullest lines first: through the gaps of the later ones they are seen where two lie on each other.
        foreach (
            var i in Enumerable.Range(0, study.Curves.Length).OrderByDescending(i => CurveStyles.Fullness(paints[i]))
        )
        {
            if (study.Curves[i].Decibels is { } levels)
            {
                var shapes = scales
                    .Inside(levels)
                    .Where(line => line.Count > 1)
                    .Select(PictureItem (line) => PathShape.Through("curve", paints[i], [.. line]));
                items.Add(new PictureGroup("response", [.. shapes]) { Shows = [("curve", study.Curves[i].Label)] });
            }
        }

        if (study.Curves.All(curve => curve.Decibels is null))
        {
            var text = TextItem.Centred(
                "nothing",
                "nothing sounds here; why stands on the right",
                scales.Plot.Centre,
                TextWeight.Regular,
                Tokens.NameSize,
                theme.QuietInk
            );
            var ground = text.Bounds.Grown(Tokens.NameSize / 2);
            items.Add(new RectangleShape("ground", ground, 0, Paint.Filled(theme.Paper)));
            items.Add(text);
        }
    }

    private List<ChartPeak> Peaks(PlotScales scales) =>
        [
            .. study
                .Curves.Select((curve, i) => (Curve: curve, Colour: paints[i].Line!.Value))
                .Where(one => one.Curve.Peak is not null)
                .Select(one => new ChartPeak(
                    scales.At(one.Curve.Peak!.Hertz, one.Curve.Peak.Decibels),
                    CurveLabels.PeakText(one.Curve),
                    one.Colour
                ))
                .Where(peak => peak.At.Y <= scales.Plot.Bottom),
        ];

    private void PaintPeaks(List<ChartPeak> peaks, List<Point>? places)
    {
        var marks = new List<PictureItem>();
        foreach (var peak in peaks)
        {
            // All grounds before all dots: peaks that crowd together would wipe each other out.
            var ground = Paint.Filled(theme.Paper);
            marks.Add(new CircleShape("peak-ground", peak.At, Tokens.PeakDot + Tokens.PeakDotLine, ground));
        }

        for (var i = 0; i < peaks.Count; i++)
        {
            marks.Add(new CircleShape("peak", peaks[i].At, Tokens.PeakDot, Paint.Filled(peaks[i].Colour)));
            if (places is not null)
            {
                marks.Add(
                    TextItem.Centred(
                        "peak-text",
                        peaks[i].Text,
                        places[i],
                        TextWeight.Medium,
                        Tokens.ValueSize,
                        peaks[i].Colour
                    )
                );
            }
        }

        items.Add(new PictureGroup("peaks", [.. marks]));
    }

    private void Notes()
    {
        var (load, note) = (study.Circuit.Surroundings, TextStyle.Note(theme.QuietInk));
        const string Zero =
            "0 dB: the voltage that the strings induce in one coil, in the model the same in each coil and at every frequency.";
        column.Line("note", Zero, note);
        if (study.RunRemark is { } run)
        {
            column.Paragraph("note", run, note);
        }

        if (study.Unknown is { } unknown)
        {
            column.Paragraph("note", DrawnText.Clean(unknown), note);
        }

        if (study.Assumption is { } assumption)
        {
            column.Paragraph("note", DrawnText.Clean(assumption), note);
        }

        var cable = ValueText.Label(load.CableFarads, Unit.Farad);
        var input = ValueText.Label(load.InputOhms, Unit.Ohm);
        var below =
            $"Load on the jack: cable={cable} input={input}. The dB at a peak are its height over the level at 100 Hz.";
        var baseline = column.Y + (note.Size * DrawnText.CapHeight);
        column.Line("note", below, note);
        if (fileName is not null)
        {
            var room = column.Width - note.WidthOf(below) - Tokens.ColumnGap;
            column.EndOn(baseline, "file", note.Fit(fileName, room), note);
        }
    }

    private TextItem Text(string name, string text, Point at, TextAlign align, double size) =>
        TextItem.Aligned(name, text, at, align, new TextStyle(TextWeight.Regular, size, theme.QuietInk));

    private string Describe()
    {
        var curves = string.Join("; ", study.Curves.Select(curve => $"{curve.Label}: {CurveLabels.InWords(curve)}"));
        return DrawnText.Clean(
            string.Create(CultureInfo.InvariantCulture, $"Level at the jack over frequency. {curves}.")
        );
    }
}
