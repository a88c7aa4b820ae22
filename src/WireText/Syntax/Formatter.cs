using System.Text;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax;

/// <summary>Prints a file in even columns, one group of neighbouring lines at a time. Formatting twice changes nothing.</summary>
/// <remarks>Words stay as they were typed, comments and blank lines stay, and a line with a finding stays as it is.</remarks>
public static class Formatter
{
    /// <summary>Where the second word of a line starts; further right only behind a longer first word.</summary>
    private const int KeywordWidth = 8;

    private const string BlockIndent = "    ";

    private const string PartShape = "part";

    public static string Format(WiringTree tree)
    {
        if (tree.Lines.IsEmpty)
        {
            return tree.Source.Content;
        }

        var rows = tree.Lines.Select(line => RowOf(line, tree.Source)).ToList();
        var start = 0;
        while (start < rows.Count)
        {
            var end = start + 1;
            while (end < rows.Count && rows[start].Shape is not null && rows[end].Shape == rows[start].Shape)
            {
                end++;
            }

            Align(rows, start, end);
            start = end;
        }

        return Join(rows, LineEndOf(tree.Source));
    }

    /// <summary>The line end of the first line; all others are made alike.</summary>
    private static string LineEndOf(SourceText source)
    {
        var end = source.LineSpan(1).End;
        return source.Content.AsSpan(end).StartsWith("\r\n") ? "\r\n" : "\n";
    }

    private static string Join(List<Row> rows, string lineEnd)
    {
        var text = new StringBuilder();
        foreach (var row in rows)
        {
            text.Append(row.Text).Append('\n');
        }

        // The last line of a file that ends with a line break is empty, and no blank lines stand at the end.
        var content = text.ToString().TrimEnd('\n');
        return content.Length == 0 ? "" : (content + "\n").Replace("\n", lineEnd, StringComparison.Ordinal);
    }

    private static Row RowOf(LineSyntax line, SourceText source)
    {
        var text = source.Slice(line.Span);
        if (line.Number == 1 && text.StartsWith('\uFEFF'))
        {
            text = text[1..];
        }

        if (line.IsBad || line.Content is null)
        {
            // A comment stays where it is; only what cannot be seen behind it goes.
            return new Row(null, [], "", 0) { Text = line.IsBad ? text : text.TrimEnd(' ', '\t') };
        }

        var comment = line.CommentStart < 0 ? "" : source.Content[line.CommentStart..line.Span.End].TrimEnd(' ', '\t');
        var column = line.CommentStart < 0 ? 0 : ColumnOf(source, line);
        return new Row(ShapeOf(line.Content), CellsOf(line.Content, source), comment, column);
    }

    /// <summary>The column of a comment as it stands.</summary>
    private static int ColumnOf(SourceText source, LineSyntax line) =>
        ColumnsOf(source.Content.AsSpan(line.Span.Start, line.CommentStart - line.Span.Start));

    /// <summary>How many columns a text takes, with tabs to every fourth one; a quoted text may have them.</summary>
    private static int ColumnsOf(ReadOnlySpan<char> text)
    {
        var column = 0;
        foreach (var character in text)
        {
            column = character == '\t' ? (column / 4 * 4) + 4 : column + 1;
        }

        return column;
    }

    /// <summary>Lines of one shape that follow each other are aligned together.</summary>
    private static string? ShapeOf(SyntaxNode node) =>
        node switch
        {
            ArrangeRowSyntax => "cells",
            InsideSyntax => "inside",
            PartSyntax => PartShape,
            WireSyntax => "wire",
            ExpectSyntax => "expect",
            FoundSyntax => "found",
            PositionsSyntax => "positions",
            ColourSyntax => "colour",
            _ => "other",
        };

    /// <summary>What stands in columns; what is in one cell is joined by single blanks.</summary>
    private static List<string> CellsOf(SyntaxNode node, SourceText source)
    {
        var words = WordsOf(node.Span, source, node is ExpectSyntax or DropExpectSyntax or FoundSyntax);
        switch (node)
        {
            case ArrangeRowSyntax:
                return [BlockIndent + words[0], .. words.Skip(1)];
            case InsideSyntax:
                return [BlockIndent + words[0], InsideCell(node, words)];
            case PartSyntax part:
                return PartCells(part, words);
            case DefineSyntax:
                return [string.Join(' ', words)];
            case WireSyntax wire:
                return WireCells(wire, words);
            case ExpectSyntax expect:
                var colon = words.IndexOf(":", expect.Jack is null ? 0 : words.IndexOf(":") + 1);
                return [words[0], StateCell(expect, words[1..colon]), JoinClaims(words[(colon + 1)..])];
            case FoundSyntax { What.IsEmpty: true }:
                return words;
            case FoundSyntax found:
                var behind = words.IndexOf(
                    ":",
                    found.At is FoundAtPlugSyntax { Jack: not null } ? words.IndexOf(":") + 1 : 0
                );
                return [words[0], JoinClaims(words[1..behind]) + ":", JoinClaims(words[(behind + 1)..])];
            case DropExpectSyntax { Jack: { } jack }:
                return [words[0], $"{words[1]} {jack.Text}: {string.Join(' ', words.Skip(4))}"];
            case PositionsSyntax:
                return [words[0], words[1], string.Join(' ', words.Skip(2))];
            case ColourSyntax:
                return words;
            default:
                return words.Count == 1 ? words : [words[0], string.Join(' ', words.Skip(1))];
        }
    }

    /// <summary>The state with its colon, behind the jack with its own where the line names one.</summary>
    private static string StateCell(ExpectSyntax expect, List<string> words) =>
        expect.Jack is null ? string.Join(' ', words) + ":" : $"{words[0]}: {string.Join(' ', words[2..])}:";

    private static List<string> PartCells(PartSyntax part, List<string> words)
    {
        var behind = words.Skip(2).ToList();
        var from = part.Hangs is null ? -1 : behind.FindLastIndex(w => Naming.Alike(w, "from"));
        var arguments = from < 0 ? behind : behind[..from];
        var hangs = from < 0 ? "" : string.Join(' ', behind[from..]);
        return [words[0], words[1], arguments.FirstOrDefault() ?? "", string.Join(' ', arguments.Skip(1)), hangs];
    }

    /// <summary>Keyword, first lug, the way to the others, then the colour with what follows it.</summary>
    private static List<string> WireCells(WireSyntax wire, List<string> words)
    {
        var lugs = (wire.Lugs.Length * 2) - 1;
        return
        [
            words[0],
            words[1],
            string.Join(' ', words.GetRange(2, lugs - 1)),
            string.Join(' ', words.Skip(1 + lugs)),
        ];
    }

    private static string InsideCell(SyntaxNode node, List<string> words)
    {
        var text = new StringBuilder();
        for (var i = 1; i < words.Count; i++)
        {
            text.Append(
                    i == 1 ? ""
                    : StandsApart(node, words, i) ? "  "
                    : " "
                )
                .Append(words[i]);
        }

        return text.ToString();
    }

    /// <summary>A lug with its place, a joint, a section's name and the keys behind stand apart from what is before.</summary>
    private static bool StandsApart(SyntaxNode node, List<string> words, int index)
    {
        var word = words[index];
        return node switch
        {
            TerminalsSyntax => !word.Contains(',', StringComparison.Ordinal),
            PositionSyntax or JoinedSyntax => true,
            CoilInsideSyntax or TrackInsideSyntax or AmpInsideSyntax => Naming.Alike(word, "as") && index > 2
                || (
                    word.Contains('=', StringComparison.Ordinal)
                    && !words[index - 1].Contains('=', StringComparison.Ordinal)
                ),
            _ => false,
        };
    }

    /// <summary>Commas and colons close up to the word before, brackets to the words inside.</summary>
    private static string JoinClaims(List<string> words)
    {
        var text = new StringBuilder();
        foreach (var word in words)
        {
            var closesUp = text.Length == 0 || word is "," or ")" or ":" || text[^1] == '(';
            text.Append(closesUp ? "" : " ").Append(word);
        }

        return text.ToString();
    }

    private static List<string> WordsOf(TextSpan span, SourceText source, bool hasMarks) =>
        [.. LineScan.WordsIn(source.Content, span, hasMarks).Select(source.Slice)];

    private static void Align(List<Row> rows, int start, int end)
    {
        var group = rows.GetRange(start, end - start).Where(r => r.Shape is not null).ToList();
        var widths = new ColumnWidths();
        foreach (var row in group)
        {
            widths.Add(KindOf(row), row.Cells);
        }

        foreach (var row in group)
        {
            row.Text = WithComment(Print(row, widths), row);
        }
    }

    /// <summary>Behind their names, parts are aligned with those of their own kind, other rows with all of their shape.</summary>
    private static string KindOf(Row row) => row.Shape == PartShape ? row.Cells[0] : "";

    private static string Print(Row row, ColumnWidths widths)
    {
        var text = new StringBuilder();
        var column = 0;
        for (var i = 0; i < row.Cells.Count; i++)
        {
            var cell = row.Cells[i];
            if (cell.Length > 0 && i > 0)
            {
                text.Append(' ', Math.Max(1, column - text.Length));
            }

            text.Append(cell);
            var width = widths.Of(KindOf(row), i);
            column += i == 0 ? FirstColumn(row, width) : width + GapBehind(row, i, width);
        }

        return text.ToString().TrimEnd();
    }

    /// <summary>Columns stand two blanks apart; a part's value and what is said of it only one.</summary>
    private static int GapBehind(Row row, int column, int width)
    {
        var isValue =
            row.Shape == PartShape
            && column == 2
            && row.Cells[3].Length > 0
            && !row.Cells[3].Contains('=', StringComparison.Ordinal);
        return width == 0 ? 0
            : isValue ? 1
            : 2;
    }

    private static int FirstColumn(Row row, int width) =>
        row.Shape switch
        {
            "cells" => width + 2,
            "inside" => Math.Max(BlockIndent.Length + KeywordWidth, width + 1),
            _ => Math.Max(KeywordWidth, width + 1),
        };

    private static string WithComment(string text, Row row) =>
        row.Comment.Length == 0
            ? text
            : text + new string(' ', Math.Max(row.CommentColumn - ColumnsOf(text), 2)) + row.Comment;

    private sealed class Row(string? shape, List<string> cells, string comment, int commentColumn)
    {
        /// <summary>Null for a line that is kept as it is.</summary>
        public string? Shape { get; } = shape;

        public List<string> Cells { get; } = cells;

        public string Comment { get; } = comment;

        public int CommentColumn { get; } = commentColumn;

        public string Text { get; set; } = "";
    }
}
