using System.Collections.Immutable;

namespace WireText.Electrical.Faults;

/// <summary>The steps in which a fault of any size is tried: each stands for all that lies half way to those beside it, in ln R.</summary>
internal sealed class FaultSteps(params ImmutableArray<double> steps)
{
    /// <summary>Steps further apart in ln R have what is within tolerance between them.</summary>
    private const double MostGap = 1.7;

    /// <summary>An element at each share of what it should be.</summary>
    public IEnumerable<FaultSize> Scaling(int element, Func<double, string> words) =>
        steps.Select(step => SizeOf(step, new FaultEdit.Scale(element, step), element, words(step)));

    /// <summary>An edit that adds so many ohms, behind all elements that there are.</summary>
    public IEnumerable<FaultSize> Adding(int elements, Func<double, FaultEdit> edit, Func<double, string> words) =>
        steps.Select(step => SizeOf(step, edit(step), elements, words(step)));

    private FaultSize SizeOf(double step, FaultEdit edit, int sized, string words) =>
        new([edit])
        {
            Words = words,
            Sized = sized,
            HalfWidth = HalfWidthAt(step),
        };

    private double HalfWidthAt(double step)
    {
        var at = steps.IndexOf(step);
        var gaps = new[] { at - 1, at + 1 }
            .Where(beside => beside >= 0 && beside < steps.Length)
            .Select(beside => Math.Abs(Math.Log(steps[beside] / step)))
            .Where(gap => gap < MostGap);
        return gaps.DefaultIfEmpty(MostGap).Max() / 2;
    }
}
