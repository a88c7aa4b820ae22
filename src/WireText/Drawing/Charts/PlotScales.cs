using System.Collections.Immutable;
using WireText.Electrical.Responses;
using WireText.Geometry;

namespace WireText.Drawing.Charts;

/// <summary>Where a frequency and a level lie on the plot: frequency in equal steps for equal ratios, level in dB.</summary>
/// <param name="Plot">The frame of the plot on the page.</param>
internal sealed record PlotScales(Box Plot, double LowestHertz, double HighestHertz, double Bottom, double Top)
{
    /// <summary>Between two lines of the level axis, in dB: half and double to the ear of a technician's meter.</summary>
    public const double Step = 6;

    /// <summary>The smallest range worth drawing, in dB. Chosen.</summary>
    private const double LeastRange = 30;

    /// <summary>How far below the loudest point the plot reaches; what lies lower is cut off. Chosen.</summary>
    private const double MostRange = 72;

    /// <summary>Scales that hold every curve, in whole steps.</summary>
    public static PlotScales For(Box plot, ResponseStudy study) =>
        For(
            plot,
            study
                .Curves.Where(curve => curve.Decibels is not null)
                .SelectMany(curve => curve.Decibels!.Value.Concat(curve.Least ?? []).Concat(curve.Most ?? []))
        );

    /// <summary>Scales that hold levels, in dB, in whole steps.</summary>
    public static PlotScales For(Box plot, IEnumerable<double> levels)
    {
        var (lowest, highest) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var level in levels)
        {
            lowest = Math.Min(lowest, level);
            highest = Math.Max(highest, level);
        }

        if (lowest > highest)
        {
            (lowest, highest) = (-LeastRange, 0);
        }

        // Room for a peak's label above the highest point.
        var top = Step * Math.Ceiling((highest + (Step / 2)) / Step);
        var bottom = Step * Math.Floor(Math.Max(lowest, top - MostRange) / Step);
        var hertz = ResponseStudy.Hertz;
        return new PlotScales(plot, hertz[0], hertz[^1], Math.Min(bottom, top - LeastRange), top);
    }

    public double X(double hertz) =>
        Plot.X + (Plot.Width * Math.Log(hertz / LowestHertz) / Math.Log(HighestHertz / LowestHertz));

    /// <summary>Below the plot for a level under its bottom.</summary>
    public double Y(double decibels) => Plot.Y + (Plot.Height * (Top - decibels) / (Top - Bottom));

    public Point At(double hertz, double decibels) => new(X(hertz), Y(decibels));

    /// <summary>The level of every line of the axis, from the top.</summary>
    public IEnumerable<double> Levels()
    {
        for (var level = Top; level > Bottom - (Step / 2); level -= Step)
        {
            yield return level;
        }
    }

    /// <summary>The stretches of a curve that lie inside the plot, cut where it leaves at the bottom.</summary>
    public IEnumerable<List<Point>> Inside(IReadOnlyList<double> decibels)
    {
        var stretch = new List<Point>();
        for (var i = 0; i < decibels.Count; i++)
        {
            var at = At(ResponseStudy.Hertz[i], decibels[i]);
            var before = i > 0 ? At(ResponseStudy.Hertz[i - 1], decibels[i - 1]) : at;
            if (at.Y > Plot.Bottom != before.Y > Plot.Bottom)
            {
                var share = (Plot.Bottom - before.Y) / (at.Y - before.Y);
                stretch.Add(new Point(before.X + ((at.X - before.X) * share), Plot.Bottom));
            }

            if (at.Y <= Plot.Bottom)
            {
                stretch.Add(at);
            }
            else if (stretch.Count > 0)
            {
                yield return stretch;
                stretch = [];
            }
        }

        if (stretch.Count > 0)
        {
            yield return stretch;
        }
    }

    /// <summary>What lies between two curves inside the plot, as a closed line: along the upper and back along the lower.</summary>
    public ImmutableArray<Point> Between(ImmutableArray<double> least, ImmutableArray<double> most)
    {
        return [.. Along(most), .. Along(least).Reverse()];

        IEnumerable<Point> Along(ImmutableArray<double> levels) =>
            levels.Select((level, i) => new Point(X(ResponseStudy.Hertz[i]), Math.Min(Y(level), Plot.Bottom)));
    }
}
