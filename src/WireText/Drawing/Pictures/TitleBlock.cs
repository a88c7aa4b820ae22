using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
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
            var (name, definition) = (_scene.PartOf(part).Name, _scene.PartOf(part).Definition);
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

    private void Legend()
    {
        var (legend, height) = Pictures.Legend.Build(_scene, _closeUps, new Point(_text.X, _y), _text.Width);
        if (legend is not null)
        {
            _items.Add(legend);
            _y += height + (Tokens.BlockGap / 2);
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
