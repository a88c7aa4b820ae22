using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Parts;
using WireText.Text;

namespace WireText.Drawing.Pictures;

/// <summary>What stands under the drawing: title, notes, scale, the colours in use, wires told in words, and the findings.</summary>
internal sealed class TitleBlock
{
    private readonly Scene _scene;
    private readonly Theme _theme;
    private readonly Box _area;

    /// <summary>What of the area the words take; close-ups stand beside them where there is room.</summary>
    private readonly Box _text;
    private readonly List<PictureItem> _items = [];
    private readonly ImmutableArray<CloseUp> _closeUps;
    private double _y;

    /// <param name="area">Where it may stand: its left and top edge, and its width.</param>
    private TitleBlock(Scene scene, ImmutableArray<CloseUp> closeUps, Box area)
    {
        _scene = scene;
        _theme = scene.Theme;
        _area = area;
        _y = area.Y;
        _closeUps = closeUps;
        var left = area.Width - RowWidth(closeUps) - (2 * Tokens.ColumnGap);
        _text = closeUps.IsEmpty || left < Tokens.TextColumn ? area : area with { Width = left };
    }

    private bool HasColumns => _text.Width < _area.Width;

    private static double RowWidth(ImmutableArray<CloseUp> closeUps) =>
        closeUps.Sum(close => close.Size.Width + (2 * Tokens.ColumnGap)) - (2 * Tokens.ColumnGap);

    /// <summary>The block, and how far down it reaches.</summary>
    public static (PictureGroup Block, double Bottom) Build(Scene scene, ImmutableArray<CloseUp> closeUps, Box area)
    {
        var block = new TitleBlock(scene, closeUps, area);
        block.Rule();
        var top = block._y;
        block.Heading();
        block.Notes();
        block.Legend();
        block.Contacts();
        var bottom = top;
        if (block.HasColumns)
        {
            bottom = block.CloseUps(new Point(block._text.Right + (2 * Tokens.ColumnGap), top));
        }
        else
        {
            block._y = block.CloseUps(new Point(area.X, block._y));
        }

        block.WireTable();
        block.Unrouted();
        block.Findings();
        return (new PictureGroup("title-block", [.. block._items]), Math.Max(bottom, block._y));
    }

    private void Rule()
    {
        _items.Add(
            PathShape.Through(
                "rule",
                Paint.Stroked(_theme.PartLine, Tokens.BlockLine),
                new Point(_area.X, _y),
                new Point(_area.Right, _y)
            )
        );
        _y += Tokens.BlockGap;
    }

    /// <summary>Title on the left; scale bar, view and file name on the right.</summary>
    private void Heading()
    {
        var right = _text.Right;
        var file = FileLine();
        var scaleWidth = Math.Max(Tokens.ScaleBar, DrawnText.Width(file, TextWeight.Regular, Tokens.NoteSize));
        ScaleBar(new Point(right - Tokens.ScaleBar, _y));
        var titleWidth = _text.Width - scaleWidth - Tokens.ColumnGap;
        var top = _y;
        var lines = DrawnText.Wrap(
            _scene.Circuit.Title ?? "Untitled wiring",
            TextWeight.SemiBold,
            Tokens.TitleSize,
            titleWidth
        );
        foreach (var line in lines)
        {
            Line("title", line, _text.X, TextWeight.SemiBold, Tokens.TitleSize, _theme.Ink);
        }

        var scale = Tokens.ScaleBarHeight + (Tokens.LugLabelSize * Tokens.LineHeight);
        var below = top + scale + (Tokens.NoteSize * Tokens.LineHeight / 2);
        _items.Add(
            new TextItem(
                "file",
                file,
                new Point(right, below + Tokens.NoteSize),
                TextAlign.End,
                TextWeight.Regular,
                Tokens.NoteSize,
                _theme.QuietInk,
                DrawnText.Width(file, TextWeight.Regular, Tokens.NoteSize),
                IsVertical: false
            )
        );
        _y = Math.Max(_y, below + (Tokens.NoteSize * Tokens.LineHeight)) + (Tokens.BlockGap / 2);
    }

    private string FileLine()
    {
        var words = new List<string> { "seen from behind" };
        if (_scene.Options.FileName is { Length: > 0 } file)
        {
            words.Add(file);
        }

        return DrawnText.Fit(string.Join(" · ", words), TextWeight.Regular, Tokens.NoteSize, _text.Width / 2);
    }

    private void ScaleBar(Point left)
    {
        const int Fields = 4;
        var field = Tokens.ScaleBar / Fields;
        for (var i = 0; i < Fields; i++)
        {
            var box = new Box(left.X + (i * field), left.Y, field, Tokens.ScaleBarHeight);
            var fill = i % 2 == 0 ? _theme.Ink : _theme.Paper;
            _items.Add(new RectangleShape("scale", box, 0, new Paint(fill, _theme.Ink, Tokens.BlockLine)));
        }

        var size = Tokens.LugLabelSize;
        var baseline = left.Y + Tokens.ScaleBarHeight + (size * Tokens.LineHeight);
        var text = string.Create(CultureInfo.InvariantCulture, $"{Tokens.ScaleBar:0} mm");
        _items.Add(
            TextItem.Start("scale-text", "0", left with { Y = baseline }, TextWeight.Regular, size, _theme.QuietInk)
        );
        var width = DrawnText.Width(text, TextWeight.Regular, size);
        var at = new Point(left.X + Tokens.ScaleBar, baseline);
        _items.Add(
            new TextItem(
                "scale-text",
                text,
                at,
                TextAlign.End,
                TextWeight.Regular,
                size,
                _theme.QuietInk,
                width,
                IsVertical: false
            )
        );
    }

    private void Notes()
    {
        var top = _y;
        foreach (var note in _scene.Circuit.Notes)
        {
            Paragraph("note", note, _text.X, _theme.Ink);
        }

        if (_scene.Circuit.Finish is { Length: > 0 } finish)
        {
            Paragraph("note", InWords(finish), _text.X, _theme.Ink);
        }

        foreach (
            var part in _scene.Parts.Where(part => part.Face.Lugs.Select(lug => lug.Section).Distinct().Count() > 1)
        )
        {
            var (name, definition) = (
                _scene.Circuit.Parts[part.Index].Name,
                _scene.Circuit.Parts[part.Index].Definition
            );
            if (definition.Remark is { Length: > 0 } remark)
            {
                Paragraph("note", $"{name}: {remark}", _text.X, _theme.Ink);
            }
        }

        if (_scene.Options.Trace is { } trace)
        {
            Paragraph("note", $"Following: {trace.InWords}", _text.X, _theme.Ink);
        }

        if (_y > top)
        {
            _y += Tokens.BlockGap / 2;
        }
    }

    /// <summary>What the instrument is finished in. That flux spatter marks nitrocellulose is common practice.</summary>
    private static string InWords(string finish) =>
        string.Equals(finish, "nitrocellulose", StringComparison.OrdinalIgnoreCase)
            ? "Body finish: nitrocellulose. Flux spatter marks it: mask it with a towel"
            : $"Body finish: {finish}";

    /// <summary>A sample of every colour in use with its code and its name, and the signs that parts carry.</summary>
    private void Legend()
    {
        const double BesideSample = 1.5;
        var entries = LegendEntries().ToImmutableArray();
        if (entries.IsEmpty)
        {
            return;
        }

        var items = new List<PictureItem>();
        var height = Tokens.NoteSize * Tokens.LineHeight * 1.2;
        var widths = entries.Select(entry =>
            Tokens.LegendSample + BesideSample + DrawnText.Width(entry.Words, TextWeight.Regular, Tokens.NoteSize)
        );
        var places = LegendRows([.. widths], _text.Width);
        foreach (var ((sample, words), (x, row)) in entries.Zip(places))
        {
            var left = new Point(_text.X + x, _y + ((row + 0.5) * height));
            var right = left with { X = left.X + Tokens.LegendSample };
            items.AddRange(sample(left, right));
            var at = new Point(right.X + BesideSample, right.Y + (Tokens.NoteSize * DrawnText.CapHeight / 2));
            items.Add(TextItem.Start("legend-text", words, at, TextWeight.Regular, Tokens.NoteSize, _theme.Ink));
        }

        _items.Add(new PictureGroup("legend", [.. items]));
        _y += ((places[^1].Row + 1) * height) + (Tokens.BlockGap / 2);
    }

    /// <summary>Where entries stand: in as few rows as the width asks for, and those as equal as may be.</summary>
    private static ImmutableArray<(double X, int Row)> LegendRows(ImmutableArray<double> widths, double width)
    {
        var best = Rows(width);
        for (var narrower = width - 1; narrower > widths.Max() && Rows(narrower)[^1].Row == best[^1].Row; narrower--)
        {
            best = Rows(narrower);
        }

        return best;

        ImmutableArray<(double X, int Row)> Rows(double most)
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

    private void Contacts()
    {
        string[] lines = [.. ContactWords.Of(_scene.Circuit, _text.Width)];
        if (lines.Length == 0)
        {
            return;
        }

        Caption("What each position joins");
        foreach (var line in lines)
        {
            Paragraph("contacts", line, _text.X, _theme.Ink);
        }

        _y += Tokens.BlockGap / 2;
    }

    private IEnumerable<(Func<Point, Point, IEnumerable<PictureItem>> Sample, string Words)> LegendEntries()
    {
        var wires = _scene.Wires.Select(wire => wire.Wire).ToImmutableArray();
        var colours = wires
            .Where(wire => wire.Kind is not (WireKind.PartLead or WireKind.Braid))
            .Select(wire => wire.Colour)
            .OfType<InsulationColour>()
            .Distinct()
            .OrderBy(colour => colour.Base)
            .ThenBy(colour => colour.Stripe is null ? -1 : (int)colour.Stripe);
        foreach (var colour in colours)
        {
            var words = colour.IsBare ? colour.Name : $"{colour.Tag} {colour.Name}";
            yield return ((a, b) => Sample(WireStyle.Of(_theme, colour), a, b), words);
        }

        if (!_scene.Layout.Braids.IsEmpty)
        {
            yield return (SheathSample, "braid");
        }

        if (wires.Any(wire => wire.IsSleeved))
        {
            yield return (SleeveSample, "sleeved");
        }

        if (wires.Any(wire => wire.Kind == WireKind.SpliceLead && wire.Colour is null))
        {
            yield return (
                (a, b) => Sample(WireStyle.Of(_theme, (InsulationColour?)null), a, b),
                "lead, colour not stated"
            );
        }

        if (wires.Any(wire => wire.Kind == WireKind.PartLead))
        {
            yield return ((a, b) => Sample(WireStyle.Neutral(_theme), a, b), "a part's own lead");
        }

        var signs = _closeUps.Select(close => close.Signs).Append(WirePainter.SignsIn(_scene)).ToArray();
        if (Array.Exists(signs, sign => sign.HasHops))
        {
            yield return (HopSample, "crosses, not joined");
        }

        if (Array.Exists(signs, sign => sign.HasGaps))
        {
            yield return (GapSample, "goes under, not joined");
        }

        var lugs = _scene.Parts.SelectMany(part => part.Face.Lugs).Where(lug => lug.Look != LugLook.Lead);
        if (lugs.Any(lug => !_scene.IsSoldered(lug.Lug)))
        {
            yield return (UnusedSample, "unused lug");
        }

        var coils = _scene.Circuit.Elements.OfType<Coil>().ToImmutableArray();
        if (coils.Any(coil => coil.Winding is not null))
        {
            yield return (CoilSample, "start · finish of a coil, wound cw or ccw as seen from the strings");
        }
        else if (!coils.IsEmpty)
        {
            yield return (CoilSample, "start · finish of a coil");
        }
    }

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
        yield return PathShape.Through("sample", Paint.Stroked(_theme.MetalLine, Tokens.SheathWidth), from, to);
        yield return PathShape.Through("sample", Paint.Stroked(_theme.Tin, inner), from, to);
        var weave = Paint.Stroked(_theme.MetalLine, inner) with { Dashes = [Tokens.WeaveOn, Tokens.WeaveOff] };
        yield return PathShape.Through("sample", weave, from, to);
    }

    private IEnumerable<PictureItem> SleeveSample(Point from, Point to)
    {
        var inner = Tokens.SleeveWidth - (2 * Tokens.SleeveLine);
        yield return PathShape.Through("sample", Paint.Stroked(_theme.PartLine, Tokens.SleeveWidth), from, to);
        yield return PathShape.Through("sample", Paint.Stroked(_theme.Paper, inner), from, to);
        foreach (var item in Sample(WireStyle.Of(_theme, (InsulationColour?)null), from, to))
        {
            yield return item;
        }
    }

    private IEnumerable<PictureItem> HopSample(Point from, Point to)
    {
        var style = WireStyle.Of(_theme, (InsulationColour?)null);
        var middle = WirePath.Along(from, to, Tokens.LegendSample / 2);
        var half = new Point(0, Tokens.LegendSample / 4);
        foreach (var item in Sample(style, middle - half, middle + half))
        {
            yield return item;
        }

        var hop = WirePath.Draw([from, to], [new WireHop(middle, HopBulge.Left)]);
        yield return WirePath.Air(hop.Gaps[0], style.OuterWidth, _theme.Paper);
        yield return new PathShape("sample", hop.Steps, style.CasingPaint);
        yield return new PathShape("sample", hop.Steps, style.CorePaint);
    }

    private IEnumerable<PictureItem> GapSample(Point from, Point to)
    {
        var style = WireStyle.Of(_theme, (InsulationColour?)null);
        var middle = WirePath.Along(from, to, Tokens.LegendSample / 2);
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
        LugPainter.Eyelet(_theme, WirePath.Along(left, right, Tokens.LegendSample / 2), "sample", "sample");

    private IEnumerable<PictureItem> CoilSample(Point left, Point right)
    {
        var line = new Paint(_theme.Ink, _theme.Ink, Tokens.DetailLine);
        var (start, finish) = (WirePath.Along(left, right, 2), WirePath.Along(right, left, 2));
        yield return new CircleShape("sample", start, Tokens.CoilEnd, line);
        yield return new CircleShape("sample", finish, Tokens.CoilEnd, line with { Fill = _theme.Paper });
    }

    /// <summary>Parts whose wires have no room for their tags in the drawing, larger, side by side as the page allows.</summary>
    /// <returns>How far down they reach.</returns>
    private double CloseUps(Point corner)
    {
        var (at, height) = (corner, 0.0);
        foreach (var close in _closeUps)
        {
            if (at.X > corner.X && at.X + close.Size.Width > _area.Right + 1e-6)
            {
                (at, height) = (new Point(corner.X, at.Y + height + Tokens.BlockGap), 0.0);
            }

            _items.Add(close.Paint(at));
            at = at with { X = at.X + close.Size.Width + (2 * Tokens.ColumnGap) };
            height = Math.Max(height, close.Size.Height);
        }

        return at.Y + (_closeUps.IsEmpty ? 0 : height + Tokens.BlockGap);
    }

    /// <summary>Wires that had no room for their tag, told in words.</summary>
    private void WireTable()
    {
        var inCloseUps = _closeUps.SelectMany(close => close.Tagged).ToHashSet(StringComparer.Ordinal);
        var untagged = _scene
            .Wires.Where(wire => IsInTable(wire) && !inCloseUps.Contains(wire.Wire.Id))
            .ToImmutableArray();
        if (untagged.IsEmpty)
        {
            return;
        }

        Caption("Wires without room for a tag");
        foreach (var wire in untagged)
        {
            var colour = wire.Wire.Colour?.Name ?? "colour not stated";
            Paragraph("wire-row", $"{Ends(wire.Wire)}  {colour}", _text.X, _theme.Ink);
        }

        _y += Tokens.BlockGap / 2;
    }

    private bool IsInTable(SceneWire wire) =>
        wire.Route.Tag is null
        && (
            WireFaces.TagOf(wire.Wire).Length > 0
            || (_theme.HasTagsOnAll && wire.Wire.Kind is WireKind.Wire or WireKind.Core && wire.Wire.Colour is not null)
        );

    private string Ends(Wire wire) =>
        $"{(wire.From >= 0 ? _scene.Circuit.NameOf(wire.From) : "cut")} to {(wire.To >= 0 ? _scene.Circuit.NameOf(wire.To) : "cut")}";

    private void Unrouted()
    {
        var missing = _scene.Layout.Unrouted;
        if (missing.IsEmpty)
        {
            return;
        }

        Caption("Not drawn: no free way was found for these wires");
        foreach (var id in missing)
        {
            var wire = _scene.Circuit.Wires.FirstOrDefault(wire => wire.Id == id);
            var words = wire is null ? id : $"{Ends(wire)}  {wire.Colour?.Name ?? "colour not stated"}";
            Paragraph("unrouted-row", words, _text.X, _theme.Ink);
        }

        _y += Tokens.BlockGap / 2;
    }

    private void Findings()
    {
        for (var i = 0; i < _scene.Options.Findings.Length; i++)
        {
            var finding = _scene.Options.Findings[i];
            var left = _text.X + Tokens.FindingBadge + 2;
            var top = _y;
            _y += Tokens.NoteSize * (Tokens.LineHeight - 1);
            Paragraph("finding-text", $"{Word(finding.Severity)}: {finding.Message} [{finding.Id}]", left, _theme.Ink);
            if (finding.Help is { Length: > 0 } help)
            {
                Paragraph("finding-help", help, left, _theme.QuietInk);
            }

            var centre = new Point(_text.X + (Tokens.FindingBadge / 2), top + Tokens.NoteSize);
            _items.Add(
                new PictureGroup("finding", [.. FindingPainter.Badge(_theme, finding.Severity, i + 1, centre)])
                {
                    Shows = [("finding", Scene.Text(i + 1)), ("check", finding.Id)],
                }
            );
            _y += Tokens.NoteSize * 0.6;
        }
    }

    private static string Word(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            Severity.Note => "note",
            _ => "remark",
        };

    private void Caption(string text) =>
        Line("caption", text, _text.X, TextWeight.SemiBold, Tokens.NoteSize, _theme.QuietInk);

    private void Paragraph(string name, string text, double left, Colour colour)
    {
        foreach (var line in DrawnText.Wrap(text, TextWeight.Regular, Tokens.NoteSize, _text.Right - left))
        {
            Line(name, line, left, TextWeight.Regular, Tokens.NoteSize, colour);
        }
    }

    private void Line(string name, string text, double left, TextWeight weight, double size, Colour colour)
    {
        _items.Add(
            TextItem.Start(name, text, new Point(left, _y + (size * DrawnText.CapHeight)), weight, size, colour)
        );
        _y += size * Tokens.LineHeight;
    }
}
