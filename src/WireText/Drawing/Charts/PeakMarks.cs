using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Charts;

/// <summary>A peak as a chart shows it.</summary>
internal sealed record ChartPeak(Point At, string Text, Colour Colour);

/// <summary>Finds room for what is written at the peaks, clear of every curve, line of words and other peak.</summary>
internal sealed class PeakMarks
{
    /// <summary>More labels than this would hide what they speak of. Chosen.</summary>
    private const int MostLabels = 3;

    /// <summary>Air between a label and a curve, in millimetres. Chosen by eye.</summary>
    private const double Clearance = 0.7;

    private readonly PlotScales scales;
    private readonly IReadOnlyList<List<Point>> lines;
    private readonly List<Box> taken = [];

    /// <param name="lines">Every stretch of every curve.</param>
    public PeakMarks(PlotScales scales, IReadOnlyList<List<Point>> lines)
    {
        this.scales = scales;
        this.lines = lines;
    }

    /// <summary>A place for each label, centred on what is returned; null when not all of them find one.</summary>
    public List<Point>? Place(IReadOnlyList<ChartPeak> labels)
    {
        if (labels.Count > MostLabels)
        {
            return null;
        }

        taken.AddRange(labels.Select(label => Box.Around(label.At, 2 * Tokens.PeakDot, 2 * Tokens.PeakDot)));
        var places = new List<Point>();
        foreach (var (peak, text, _) in labels)
        {
            var width = DrawnText.Width(text, TextWeight.Medium, Tokens.ValueSize);
            var found = Candidates(peak, width).Cast<Point?>().FirstOrDefault(at => IsFree(BoxAt(at!.Value, width)));
            if (found is not { } place)
            {
                return null;
            }

            taken.Add(BoxAt(place, width));
            places.Add(place);
        }

        return places;
    }

    private static Box BoxAt(Point centre, double width) => Box.Around(centre, width, Tokens.ValueSize);

    /// <summary>Above first, then to a side, each a little further off; never so far that another peak is nearer.</summary>
    private static IEnumerable<Point> Candidates(Point peak, double width)
    {
        for (var away = 2.8; away <= 5.5; away += 0.9)
        {
            var beside = (width / 2) + away - 0.9;
            yield return new Point(peak.X, peak.Y - away);
            yield return new Point(peak.X + beside, peak.Y - 1);
            yield return new Point(peak.X - beside, peak.Y - 1);
            yield return new Point(peak.X + beside, peak.Y - away);
            yield return new Point(peak.X - beside, peak.Y - away);
        }
    }

    private bool IsFree(Box box)
    {
        var roomy = box.Grown(Clearance);
        return roomy.X >= scales.Plot.X
            && roomy.Y >= scales.Plot.Y
            && roomy.Right <= scales.Plot.Right
            && roomy.Bottom <= scales.Plot.Bottom
            && !taken.Exists(other => other.Overlaps(roomy))
            && !lines.Any(line =>
                Enumerable.Range(1, line.Count - 1).Any(i => new Segment(line[i - 1], line[i]).Meets(roomy))
            );
    }
}
