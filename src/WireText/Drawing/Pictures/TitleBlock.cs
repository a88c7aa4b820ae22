using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Text;

namespace WireText.Drawing.Pictures;

/// <summary>What stands under the drawing: title, notes, scale, the colours in use, wires told in words, and the findings.</summary>
internal sealed class TitleBlock
{
    private const int MostTitleLines = 2;

    private readonly Scene scene;
    private readonly Theme theme;
    private readonly Box area;

    /// <summary>What of the area the words take; close-ups stand beside them where there is room.</summary>
    private readonly TextColumn whole;

    /// <summary>Where the next words go: the whole, or its left part.</summary>
    private TextColumn column;
    private readonly List<PictureItem> items = [];
    private readonly ImmutableArray<CloseUp> closeUps;
    private readonly IReadOnlySet<string> led;
    private readonly TextStyle plain;

    /// <param name="area">Where it may stand: its left and top edge, and its width.</param>
    private TitleBlock(Scene scene, ImmutableArray<CloseUp> closeUps, IReadOnlySet<string> led, Box area)
    {
        this.scene = scene;
        theme = scene.Theme;
        this.area = area;
        plain = TextStyle.Note(theme.Ink);
        (this.closeUps, this.led) = (closeUps, led);
        var left = area.Width - RowWidth(closeUps) - (2 * Tokens.ColumnGap);
        var width = closeUps.IsEmpty || left < Tokens.TextColumn ? area.Width : left;
        column = whole = new TextColumn(items, area.X, area.X + width, area.Y);
    }

    private bool HasColumns => column.Right < area.Right;

    private static double RowWidth(ImmutableArray<CloseUp> closeUps) =>
        closeUps.Sum(close => close.Size.Width + (2 * Tokens.ColumnGap)) - (2 * Tokens.ColumnGap);

    /// <summary>The block, and how far down it reaches.</summary>
    public static (PictureGroup Block, double Bottom) Build(
        Scene scene,
        ImmutableArray<CloseUp> closeUps,
        IReadOnlySet<string> led,
        Box area
    )
    {
        var block = new TitleBlock(scene, closeUps, led, area);
        block.Rule();
        var top = block.column.Y;
        block.Words();
        var bottom = top;
        if (block.HasColumns)
        {
            bottom = block.CloseUps(new Point(block.column.Right + (2 * Tokens.ColumnGap), top));
        }
        else
        {
            block.column.MoveTo(block.CloseUps(new Point(area.X, block.column.Y)));
        }

        block.WireTable();
        if (scene.Options.ForBench)
        {
            block.Lengths();
        }

        block.Unrouted();
        block.Findings();
        return (new PictureGroup("title-block", [.. block.items]), Math.Max(bottom, block.column.Y));
    }

    private void Rule()
    {
        items.Add(
            PathShape.Through(
                "rule",
                Paint.Stroked(theme.PartLine, Tokens.BlockLine),
                new Point(area.X, column.Y),
                new Point(area.Right, column.Y)
            )
        );
        column.Skip(Tokens.BlockGap);
    }

    /// <summary>
    /// Title, notes and signs on the left; scale bar, view and file name on the right, and below them what is heard, where the
    /// words on the left still have room.
    /// </summary>
    private void Words()
    {
        var file = FileLines();
        var fileWidth = file.Select(line => DrawnText.Width(line, TextWeight.Regular, Tokens.NoteSize))
            .Append(Tokens.ScaleBar)
            .Max();
        var heard = scene.Options.Heard is { } table ? new HeardGrid(table, theme) : null;
        var room = whole.Width - Tokens.TextColumn - (2 * Tokens.ColumnGap);
        var isBeside = fileWidth <= room && heard?.Width <= room;
        var right = Math.Max(fileWidth, isBeside ? heard!.Width : 0);
        var rightColumn = new TextColumn(items, whole.Right - right, whole.Right, whole.Y);
        column = new TextColumn(items, whole.Left, rightColumn.Left - (2 * Tokens.ColumnGap), whole.Y);
        Title();
        FileAndScale(file, rightColumn);
        if (isBeside)
        {
            rightColumn.Skip(Tokens.BlockGap / 2);
            heard!.Write(rightColumn);
        }
        else if (right > room)
        {
            whole.MoveTo(Math.Max(column.Y, rightColumn.Y + (Tokens.BlockGap / 2)));
            column = whole;
        }

        Notes();
        Changes();
        Legend();
        Contacts();
        if (!isBeside && heard is not null)
        {
            heard.Write(column);
            column.Skip(Tokens.BlockGap / 2);
        }

        whole.MoveTo(Math.Max(column.Y, rightColumn.Y + (isBeside ? Tokens.BlockGap / 2 : 0)));
        column = whole;
    }

    private void Title()
    {
        var (lines, style) = TitleIn(column.Width);
        foreach (var line in lines)
        {
            column.Line("title", line, style);
        }

        column.Skip(Tokens.BlockGap / 2);
    }

    private void FileAndScale(ImmutableArray<string> file, TextColumn right)
    {
        ScaleBar(new Point(right.Right - Tokens.ScaleBar, right.Y));
        right.Skip(
            Tokens.ScaleBarHeight
                + (Tokens.LugLabelSize * Tokens.LineHeight)
                + (Tokens.NoteSize * Tokens.LineHeight / 2)
        );
        foreach (var line in file)
        {
            right.EndOn(right.Y + Tokens.NoteSize, "file", line, TextStyle.Note(theme.QuietInk));
            right.Skip(Tokens.NoteSize * Tokens.LineHeight);
        }
    }

    /// <summary>The title in two lines at most: smaller where it is long, and cut where it is longer than any title.</summary>
    private (IReadOnlyList<string> Lines, TextStyle Style) TitleIn(double width)
    {
        var title = scene.Circuit.Title ?? "Untitled wiring";
        // The name of the file stands below a title of one line, so that may run up to the scale.
        var beside = whole.Width - Tokens.ScaleBar - (2 * Tokens.ColumnGap);
        var one = DrawnText.Wrap(title, TextWeight.SemiBold, Tokens.TitleSize, Math.Max(width, beside));
        if (one.Count == 1)
        {
            return (one, TextStyle.Title(theme.Ink));
        }

        for (var size = Tokens.TitleSize; size >= Tokens.NoteSize; size -= 0.4)
        {
            var lines = DrawnText.Wrap(title, TextWeight.SemiBold, size, width);
            if (lines.Count <= MostTitleLines)
            {
                return (lines, TextStyle.Title(theme.Ink) with { Size = size });
            }
        }

        var cut = DrawnText.Wrap(title, TextWeight.SemiBold, Tokens.NoteSize, width);
        var last = DrawnText.Fit(string.Join(' ', cut.Skip(1)), TextWeight.SemiBold, Tokens.NoteSize, width);
        return ([cut[0], last], TextStyle.Title(theme.Ink) with { Size = Tokens.NoteSize });
    }

    /// <summary>The view and the name of the file: whole, in as many lines as it takes.</summary>
    private ImmutableArray<string> FileLines()
    {
        var view = $"seen from behind{NeckSide()}";
        if (scene.Options.FileName is not { Length: > 0 } file)
        {
            return [view];
        }

        var room = column.Width / 2;
        var one = DrawnText.Clean($"{view} · {file}");
        return DrawnText.Width(one, TextWeight.Regular, Tokens.NoteSize) <= room
            ? [one]
            : [view, .. Broken(DrawnText.Clean(file), room)];
    }

    /// <summary>On which side the neck is, where pickups say where they sit and stand in that order.</summary>
    private string NeckSide()
    {
        PlacedFace[] pickups = [.. scene.Parts.Where(part => part.Face.Layout.Zone == LayoutZone.Pickup)];
        if (
            pickups.Length < 2
            || PickupOrder.Seated([.. pickups.Select(part => scene.PartOf(part).Name)]) is not { } seats
        )
        {
            return "";
        }

        var (least, most) = (seats.Zip(pickups).MinBy(one => one.First), seats.Zip(pickups).MaxBy(one => one.First));
        var apart = least.First == most.First ? 0 : most.Second.Bounds.X - least.Second.Bounds.X;
        return apart > 0 ? ", neck to the left"
            : apart < 0 ? ", neck to the right"
            : "";
    }

    /// <summary>A name without blanks in pieces that fit.</summary>
    private static IEnumerable<string> Broken(string name, double room)
    {
        var left = StringInfo.GetTextElementEnumerator(name);
        var line = "";
        while (left.MoveNext())
        {
            var longer = line + left.GetTextElement();
            if (line.Length > 0 && DrawnText.Width(longer, TextWeight.Regular, Tokens.NoteSize) > room)
            {
                yield return line;
                longer = left.GetTextElement();
            }

            line = longer;
        }

        yield return line;
    }

    private void ScaleBar(Point left)
    {
        const int Fields = 4;
        var field = Tokens.ScaleBar / Fields;
        for (var i = 0; i < Fields; i++)
        {
            var box = new Box(left.X + (i * field), left.Y, field, Tokens.ScaleBarHeight);
            var fill = i % 2 == 0 ? theme.Ink : theme.Paper;
            items.Add(new RectangleShape("scale", box, 0, new Paint(fill, theme.Ink, Tokens.BlockLine)));
        }

        var style = new TextStyle(TextWeight.Regular, Tokens.LugLabelSize, theme.QuietInk);
        var baseline = left.Y + Tokens.ScaleBarHeight + (style.Size * Tokens.LineHeight);
        var text = string.Create(CultureInfo.InvariantCulture, $"{Tokens.ScaleBar:0} mm");
        items.Add(TextItem.Start("scale-text", "0", left with { Y = baseline }, style));
        items.Add(TextItem.End("scale-text", text, new Point(left.X + Tokens.ScaleBar, baseline), style));
    }

    private void Notes()
    {
        var top = column.Y;
        foreach (var about in scene.Circuit.About)
        {
            column.Paragraph("about", $"{about.Key}: {about.Words}", plain);
        }

        foreach (var note in scene.Circuit.Remarks)
        {
            column.Paragraph("note", note, plain);
        }

        if (scene.Circuit.Finish is { Length: > 0 } finish)
        {
            column.Paragraph("note", InWords(finish), plain);
        }

        foreach (var words in ToldParts.Remarks(scene))
        {
            column.Paragraph("note", words, plain);
        }

        if (scene.Options.Trace is { } trace)
        {
            column.Paragraph("note", $"Following: {trace.InWords}", plain);
        }

        if (column.Y > top)
        {
            column.Skip(Tokens.BlockGap / 2);
        }
    }

    /// <summary>What the instrument is finished in. That flux spatter marks nitrocellulose is common practice.</summary>
    private static string InWords(string finish) =>
        string.Equals(finish, "nitrocellulose", StringComparison.OrdinalIgnoreCase)
            ? "Body finish: nitrocellulose. Flux spatter marks it: mask it with a towel"
            : $"Body finish: {finish}";

    private void Legend()
    {
        var (legend, height) = Pictures.Legend.Build(scene, closeUps, new Point(column.Left, column.Y), column.Width);
        if (legend is not null)
        {
            items.Add(legend);
            column.Skip(height + (Tokens.BlockGap / 2));
        }
    }

    /// <summary>What is to be done to make this circuit of the earlier one, by the numbers on the drawing.</summary>
    private void Changes()
    {
        if (scene.Options.Changes is not var (overlay, against))
        {
            return;
        }

        Caption($"What changes against {against}");
        column.Paragraph(
            "note",
            overlay.Changes.IsEmpty
                ? "Nothing: it is the same circuit"
                : "Dashed and cut: comes off. Full: new. Pale: stays as it is",
            plain
        );
        foreach (var change in overlay.Changes)
        {
            var unseen = change.Wire is not null && !overlay.WiresOf(change).Any() ? " (its lug is gone)" : "";
            column.Paragraph(
                "change-row",
                $"{Scene.Text(change.Number)}. {ChangeList.WordOf(change.Section)}: {change.Words}{unseen}",
                plain
            );
        }

        column.Skip(Tokens.BlockGap / 2);
    }

    private void Contacts()
    {
        string[] lines = [.. ContactWords.Of(scene.Circuit, column.Width, scene.Options.Heard?.Joined)];
        if (lines.Length == 0)
        {
            return;
        }

        Caption("What each position joins");
        foreach (var line in lines)
        {
            column.Paragraph("contacts", line, plain);
        }

        column.Skip(Tokens.BlockGap / 2);
    }

    /// <summary>Parts on which much is soldered, or whose tags or names have no room even at the end of a line, larger, side by side as the page allows.</summary>
    /// <returns>How far down they reach.</returns>
    private double CloseUps(Point corner)
    {
        var (at, height) = (corner, 0.0);
        foreach (var close in closeUps)
        {
            if (at.X > corner.X && at.X + close.Size.Width > area.Right + 1e-6)
            {
                (at, height) = (new Point(corner.X, at.Y + height + Tokens.BlockGap), 0.0);
            }

            items.Add(close.Paint(at));
            at = at with { X = at.X + close.Size.Width + (2 * Tokens.ColumnGap) };
            height = Math.Max(height, close.Size.Height);
        }

        return at.Y + (closeUps.IsEmpty ? 0 : height + Tokens.BlockGap);
    }

    /// <summary>Wires that had no room for their tag, told in words.</summary>
    private void WireTable()
    {
        var inCloseUps = closeUps.SelectMany(close => close.Tagged).ToHashSet(StringComparer.Ordinal);
        var untagged = scene
            .Wires.Where(wire => IsInTable(wire) && !inCloseUps.Contains(wire.Wire.Id))
            .ToImmutableArray();
        Told(
            "Wires without room for a tag",
            untagged.Select(wire => $"{Ends(wire.Wire)}  {wire.Wire.Colour?.Name ?? "colour not stated"}")
        );
    }

    /// <summary>What is twisted, what is cut to a stated length, and what is longer than a part's own lead.</summary>
    private void Lengths()
    {
        Told("Twisted together", ToldParts.UndrawnTwists(scene, Ends));
        Told("Lengths stated", ToldParts.StatedLengths(scene, Ends));
        Told("Longer than the part's own lead: extend it with sleeved wire", ToldParts.LongLeads(scene, Ends));
    }

    private void Told(string caption, IEnumerable<string> lines)
    {
        var told = lines.ToImmutableArray();
        if (told.IsEmpty)
        {
            return;
        }

        Caption(caption);
        foreach (var line in told)
        {
            column.Paragraph("wire-row", line, plain);
        }

        column.Skip(Tokens.BlockGap / 2);
    }

    private bool IsInTable(SceneWire wire) =>
        wire.Route.Tag is null
        && !led.Contains(wire.Wire.Id)
        && (
            WireFaces.TagOf(wire.Wire).Length > 0
            || (theme.HasTagsOnAll && wire.Wire.Kind is WireKind.Wire or WireKind.Core && wire.Wire.Colour is not null)
        );

    private string Ends(Wire wire) =>
        $"{(wire.From >= 0 ? scene.Circuit.NameOf(wire.From) : "cut")} to {(wire.To >= 0 ? scene.Circuit.NameOf(wire.To) : "cut")}";

    private void Unrouted()
    {
        var missing = scene.Layout.Unrouted;
        if (missing.IsEmpty)
        {
            return;
        }

        Caption("Not drawn: no free way was found for these wires");
        foreach (var id in missing)
        {
            var wire = scene.Circuit.Wires.FirstOrDefault(wire => wire.Id == id);
            var words = wire is null ? id : $"{Ends(wire)}  {wire.Colour?.Name ?? "colour not stated"}";
            column.Paragraph("unrouted-row", words, plain);
        }

        column.Skip(Tokens.BlockGap / 2);
    }

    private void Findings()
    {
        for (var i = 0; i < scene.Options.Findings.Length; i++)
        {
            var finding = scene.Options.Findings[i];
            const double indent = Tokens.FindingBadge + 2;
            var top = column.Y;
            column.Skip(Tokens.NoteSize * (Tokens.LineHeight - 1));
            column.Paragraph(
                "finding-text",
                $"{Word(finding.Severity)}: {finding.Message} [{finding.Id}]",
                plain,
                indent
            );
            if (finding.Help is { Length: > 0 } help)
            {
                column.Paragraph("finding-help", help, TextStyle.Note(theme.QuietInk), indent);
            }

            var centre = new Point(column.Left + (Tokens.FindingBadge / 2), top + Tokens.NoteSize);
            items.Add(
                new PictureGroup("finding", [.. FindingPainter.Badge(theme, finding.Severity, i + 1, centre)])
                {
                    Shows = [("finding", Scene.Text(i + 1)), ("check", finding.Id)],
                }
            );
            column.Skip(Tokens.NoteSize * 0.6);
        }
    }

    private static string Word(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            Severity.Note => "note",
            _ => "right",
        };

    private void Caption(string text) => column.Line("caption", text, TextStyle.Caption(theme.QuietInk));
}
