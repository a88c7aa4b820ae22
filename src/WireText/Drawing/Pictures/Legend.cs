using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Quantities;

namespace WireText.Drawing.Pictures;

/// <summary>A sample of every colour in use with its code and its name, and the signs that wires and parts carry.</summary>
internal sealed class Legend
{
    private const double BesideSample = 1.5;
    private const double RowHeight = Tokens.NoteSize * Tokens.LineHeight * 1.2;

    private readonly Scene scene;
    private readonly Theme theme;
    private readonly ImmutableArray<CloseUp> closeUps;

    private Legend(Scene scene, ImmutableArray<CloseUp> closeUps) =>
        (this.scene, theme, this.closeUps) = (scene, scene.Theme, closeUps);

    /// <summary>The legend and its height; null when there is nothing to tell.</summary>
    /// <param name="corner">Its left and upper corner.</param>
    public static (PictureGroup? Legend, double Height) Build(
        Scene scene,
        ImmutableArray<CloseUp> closeUps,
        Point corner,
        double width
    )
    {
        // A file's own colour may have a name of any length.
        var room = width - Tokens.LegendSample - BesideSample;
        var entries = new Legend(scene, closeUps)
            .Entries()
            .Select(entry => (entry.Sample, Words: Fit(entry.Words, room)))
            .ToImmutableArray();
        if (entries.IsEmpty)
        {
            return (null, 0);
        }

        var items = new List<PictureItem>();
        var widths = entries.Select(entry =>
            Tokens.LegendSample + BesideSample + DrawnText.Width(entry.Words, TextWeight.Regular, Tokens.NoteSize)
        );
        var places = Rows([.. widths], width);
        foreach (var ((sample, words), (x, row)) in entries.Zip(places))
        {
            var left = corner + new Point(x, (row + 0.5) * RowHeight);
            var right = left with { X = left.X + Tokens.LegendSample };
            items.AddRange(sample(left, right));
            var at = new Point(right.X + BesideSample, right.Y + (Tokens.NoteSize * DrawnText.CapHeight / 2));
            items.Add(TextItem.Start("legend-text", words, at, TextWeight.Regular, Tokens.NoteSize, scene.Theme.Ink));
        }

        return (new PictureGroup("legend", [.. items]), (places[^1].Row + 1) * RowHeight);
    }

    /// <summary>Where entries stand: in as few rows as the width asks for, and those as equal as may be.</summary>
    private static ImmutableArray<(double X, int Row)> Rows(ImmutableArray<double> widths, double width)
    {
        var best = Broken(width);
        for (var narrower = width - 1; narrower > widths.Max() && Broken(narrower)[^1].Row == best[^1].Row; narrower--)
        {
            best = Broken(narrower);
        }

        return best;

        ImmutableArray<(double X, int Row)> Broken(double most)
        {
            var places = ImmutableArray.CreateBuilder<(double, int)>(widths.Length);
            var (x, row) = (0.0, 0);
            foreach (var entry in widths)
            {
                (x, row) = x > 0 && x + entry > most ? (0.0, row + 1) : (x, row);
                places.Add((x, row));
                x += entry + Tokens.ColumnGap;
            }

            return places.MoveToImmutable();
        }
    }

    private IEnumerable<(Func<Point, Point, IEnumerable<PictureItem>> Sample, string Words)> Entries()
    {
        var wires = scene.Wires.Select(wire => wire.Wire).ToImmutableArray();
        var colours = wires
            .Where(wire => wire.Kind is not (WireKind.PartLead or WireKind.Braid))
            .Select(wire => wire.Colour)
            .OfType<InsulationColour>()
            .Distinct()
            .OrderBy(colour => PlaceOf(colour.Base))
            .ThenBy(colour => colour.Stripe is { } stripe ? PlaceOf(stripe) : -1)
            .ThenBy(colour => colour.Tag, StringComparer.Ordinal);
        foreach (var colour in colours)
        {
            var words = colour.IsBare ? colour.Name : $"{colour.Tag} {colour.Name}";
            yield return ((a, b) => Sample(WireStyle.Of(theme, colour), a, b), words);
        }

        if (!scene.Layout.Braids.IsEmpty)
        {
            yield return (SheathSample, "braid");
        }

        var signs = closeUps.Select(close => close.Signs).Append(WirePainter.SignsIn(scene)).ToArray();
        if (Array.Exists(signs, sign => sign.HasSleeves))
        {
            yield return (SleeveSample, "sleeved");
        }

        if (Array.Exists(signs, sign => sign.HasTwists))
        {
            yield return (TwistSample, "twisted");
        }

        if (wires.Any(wire => wire.Kind == WireKind.SpliceLead && wire.Colour is null))
        {
            yield return (
                (a, b) => Sample(WireStyle.Of(theme, (InsulationColour?)null), a, b),
                "lead, colour not stated"
            );
        }

        if (wires.Any(wire => wire.Kind == WireKind.PartLead))
        {
            yield return ((a, b) => Sample(WireStyle.Neutral(theme), a, b), "a part's own lead");
        }

        if (Array.Exists(signs, sign => sign.HasHops))
        {
            yield return (HopSample, "crosses, not joined");
        }

        if (Array.Exists(signs, sign => sign.HasGaps))
        {
            yield return (GapSample, "goes under, not joined");
        }

        var lugs = scene.Parts.SelectMany(part => part.Face.Lugs).Where(lug => lug.Look != LugLook.Lead);
        if (lugs.Any(lug => !scene.IsSoldered(lug.Lug)))
        {
            yield return (UnusedSample, "unused lug");
        }

        foreach (var sign in scene.Parts.Select(part => scene.LookOf(part).Sign).OfType<LookSign>().Distinct())
        {
            yield return ((a, b) => sign.Sample(theme, a, b), sign.Words);
        }

        if (scene.Parts.Any(scene.HasHeatSign))
        {
            yield return (HeatSample, HeatSign.Words);
        }

        var coils = scene.Circuit.Elements.OfType<Coil>().ToImmutableArray();
        if (coils.Any(coil => coil.Winding is not null))
        {
            yield return (CoilSample, "start · finish of a coil, wound cw or ccw as seen from the strings");
        }
        else if (!coils.IsEmpty)
        {
            yield return (CoilSample, "start · finish of a coil");
        }
    }

    private static string Fit(string words, double room) =>
        DrawnText.Fit(words, TextWeight.Regular, Tokens.NoteSize, room);

    /// <summary>The standard's order; a file's own colours come last.</summary>
    private static int PlaceOf(PlainColour colour) =>
        colour is StandardColour standard ? (int)standard.Colour : int.MaxValue;

    private static IEnumerable<PictureItem> Sample(WireStyle style, Point from, Point to)
    {
        yield return PathShape.Through("sample", style.CasingPaint, from, to);
        yield return PathShape.Through("sample", style.CorePaint, from, to);
        if (style.Stripe is { } stripe)
        {
            var dashes = Paint.Stroked(stripe, Tokens.StripeWidth) with
            {
                Dashes = [Tokens.StripeOn, Tokens.StripeOff],
            };
            yield return PathShape.Through("sample", dashes, from, to);
        }
    }

    private IEnumerable<PictureItem> SheathSample(Point from, Point to)
    {
        var inner = Tokens.SheathWidth - (2 * Tokens.SheathCasing);
        yield return PathShape.Through("sample", Paint.Stroked(theme.MetalLine, Tokens.SheathWidth), from, to);
        yield return PathShape.Through("sample", Paint.Stroked(theme.Tin, inner), from, to);
        var weave = Paint.Stroked(theme.MetalLine, inner) with { Dashes = [Tokens.WeaveOn, Tokens.WeaveOff] };
        yield return PathShape.Through("sample", weave, from, to);
    }

    private IEnumerable<PictureItem> SleeveSample(Point from, Point to)
    {
        var inner = Tokens.SleeveWidth - (2 * Tokens.SleeveLine);
        yield return PathShape.Through("sample", Paint.Stroked(theme.PartLine, Tokens.SleeveWidth), from, to);
        yield return PathShape.Through("sample", Paint.Stroked(theme.Paper, inner), from, to);
        foreach (var item in Sample(WireStyle.Of(theme, (InsulationColour?)null), from, to))
        {
            yield return item;
        }
    }

    private IEnumerable<PictureItem> TwistSample(Point from, Point to)
    {
        var style = WireStyle.Of(theme, (InsulationColour?)null);
        var aside = new Point(0, Tokens.LanePitch / 2);
        var (quarter, middle) = (Tokens.LegendSample / 4, Tokens.LegendSample / 2);
        var (start, end) = (from.Towards(to, quarter), from.Towards(to, quarter + middle));
        Point[] falling = [from - aside, start - aside, end + aside, to + aside];
        Point[] rising = [from + aside, start + aside, end - aside, to - aside];
        yield return PathShape.Through("sample", style.CasingPaint, falling);
        yield return PathShape.Through("sample", style.CorePaint, falling);
        yield return PathShape.Through(
            "sample",
            Paint.Stroked(theme.Paper, style.OuterWidth + Tokens.Gap),
            start + aside,
            end - aside
        );
        yield return PathShape.Through("sample", style.CasingPaint, rising);
        yield return PathShape.Through("sample", style.CorePaint, rising);
    }

    private IEnumerable<PictureItem> HopSample(Point from, Point to)
    {
        var style = WireStyle.Of(theme, (InsulationColour?)null);
        var middle = from.Towards(to, Tokens.LegendSample / 2);
        var half = new Point(0, Tokens.LegendSample / 4);
        foreach (var item in Sample(style, middle - half, middle + half))
        {
            yield return item;
        }

        var hop = WirePath.Draw([from, to], [new WireHop(middle, HopBulge.Left)]);
        yield return WirePath.Air(hop.Gaps[0], style.OuterWidth, theme.Paper);
        yield return new PathShape("sample", hop.Steps, style.CasingPaint);
        yield return new PathShape("sample", hop.Steps, style.CorePaint);
    }

    private IEnumerable<PictureItem> GapSample(Point from, Point to)
    {
        var style = WireStyle.Of(theme, (InsulationColour?)null);
        var middle = from.Towards(to, Tokens.LegendSample / 2);
        var half = new Point(0, Tokens.LegendSample / 4);
        var air = new Point((style.OuterWidth / 2) + Tokens.Gap, 0);
        return
        [
            .. Sample(style, from, middle - air),
            .. Sample(style, middle + air, to),
            .. Sample(style, middle - half, middle + half),
        ];
    }

    private IEnumerable<PictureItem> UnusedSample(Point left, Point right) =>
        LugPainter.Eyelet(theme, left.Towards(right, Tokens.LegendSample / 2), "sample", "sample");

    private IEnumerable<PictureItem> HeatSample(Point left, Point right) =>
        HeatSign.At(left.Towards(right, Tokens.LegendSample / 2), theme);

    private IEnumerable<PictureItem> CoilSample(Point left, Point right)
    {
        var line = new Paint(theme.Ink, theme.Ink, Tokens.DetailLine);
        var (start, finish) = (left.Towards(right, 2), right.Towards(left, 2));
        yield return new CircleShape("sample", start, Tokens.CoilEnd, line);
        yield return new CircleShape("sample", finish, Tokens.CoilEnd, line with { Fill = theme.Paper });
    }
}
