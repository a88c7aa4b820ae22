using System.Xml.Linq;
using WireText.Measuring;
using WireText.Testing;

namespace WireText.Tests.Drawing.Random;

/// <summary>Something that no drawing may have, as the finished SVG shows it.</summary>
/// <param name="Kind">In words: <c>through a body</c>.</param>
/// <param name="First">As the measure names it: <c>wire:a--b</c>, <c>label:sel.A1</c>.</param>
/// <param name="Second">Empty when only one thing is concerned.</param>
internal sealed record DrawingFault(string Kind, string First, string Second = "")
{
    public override string ToString() => $"{Kind}: {First} {Second}".TrimEnd();
}

/// <summary>All that is wrong with a finished drawing. A wire that found no way is no fault where the sheet says so.</summary>
internal static class DrawingFaults
{
    public const string LabelOverlap = "label overlap";

    private const string NotDrawn = "Not drawn: no free way was found for these wires";

    public static IReadOnlyList<DrawingFault> Of(Drawn drawn)
    {
        var measure = Drawings.TryMeasure(drawn);
        if (measure.Error is { } error)
        {
            return [new DrawingFault("cannot be measured", error)];
        }

        var unrouted = drawn.Layout!.Unrouted;
        return
        [
            .. Each("missing", measure.MissingWires.Except(unrouted, StringComparer.Ordinal)),
            .. Each("not said to be missing", NotSaid(drawn)),
            .. Each("extra", measure.ExtraWires),
            .. Each("wrong end", measure.WrongEnds.Except(unrouted, StringComparer.Ordinal)),
            .. Each("overlap", measure.Overlaps),
            .. Each("crowding", measure.Crowding),
            .. Each("false joint", measure.FalseJoints),
            .. Each("stray tag", measure.StrayTags),
            .. Each("off the page", measure.OutsidePage),
            .. Each("cramped hop", measure.CrampedHops),
            .. Each("through a body", measure.ThroughBodies),
            .. Each(LabelOverlap, measure.LabelOverlaps),
        ];
    }

    /// <summary>Wires that are not drawn and that no row under the drawing names.</summary>
    private static IEnumerable<string> NotSaid(Drawn drawn)
    {
        var circuit = drawn.Compiled.Circuit!;
        var texts = XDocument.Parse(drawn.Svg!).Descendants().Where(e => e.Name.LocalName == "text").ToList();
        var hasReason = texts.Exists(text => text.Value == NotDrawn);
        var rows = string.Join(
            ' ',
            texts.Where(text => (string?)text.Attribute("class") == "unrouted-row").Select(text => text.Value)
        );
        foreach (var wire in drawn.Layout!.Unrouted.Select(id => circuit.Wires.Single(wire => wire.Id == id)))
        {
            if (!hasReason || !rows.Contains($"{End(wire.From)} to {End(wire.To)}", StringComparison.Ordinal))
            {
                yield return wire.Id;
            }
        }

        string End(int lug) => lug < 0 ? "cut" : circuit.NameOf(lug);
    }

    private static IEnumerable<DrawingFault> Each(string kind, IEnumerable<string> names) =>
        names.Select(name => new DrawingFault(kind, name));

    private static IEnumerable<DrawingFault> Each(string kind, IEnumerable<OffendingPair> pairs) =>
        pairs.Select(pair => new DrawingFault(kind, pair.First, pair.Second));
}
