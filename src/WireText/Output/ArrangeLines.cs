using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Drawing.Layout;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Output;

/// <summary>Writes the places that a layout found as wiring lines, so that later changes move nothing.</summary>
public static class ArrangeLines
{
    /// <summary>
    /// An <c>arrange</c> block with <c>place</c> lines for the parts that are turned; where the author placed some parts
    /// already, a <c>place</c> line for each other one. Empty when there is nothing that the layout placed.
    /// </summary>
    /// <remarks>Two-lead parts have no line where there is a block: they go beside the lugs that they join, always alike.</remarks>
    public static string Write(LayoutResult layout)
    {
        var text = new StringBuilder();
        if (!layout.Slots.IsEmpty)
        {
            AppendBlock(text, layout.Slots);
        }

        foreach (var part in layout.Parts.Where(part => NeedsLine(layout, part)))
        {
            text.Append("place ").Append(part.Part.Id);
            if (layout.Slots.IsEmpty)
            {
                text.Append(CultureInfo.InvariantCulture, $" at {part.At.X:0.######},{part.At.Y:0.######}");
            }

            if (part.Turn != 0)
            {
                text.Append(CultureInfo.InvariantCulture, $" turned {part.Turn}");
            }

            text.Append('\n');
        }

        return Formatter.Format(WiringParser.Parse(new SourceText("arrange", text.ToString())));
    }

    /// <summary>The file with the lines behind its last part, and everything else as it was.</summary>
    public static string Insert(WiringTree tree, string lines)
    {
        var content = tree.Source.Content;
        var ending = content.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var parts = tree.Statements.Where(statement => statement is PartSyntax or SpliceSyntax).ToList();
        var at = parts.Count == 0 ? content.Length : EndOfLine(content, parts[^1].Span.End);
        var before = content[..at];
        var after = content[at..];
        var block = lines.Replace("\n", ending, StringComparison.Ordinal);
        var gapBefore = before.Length == 0 || before.EndsWith('\n') ? ending : ending + ending;
        var gapAfter = after.Length == 0 || after.StartsWith('\n') || after.StartsWith('\r') ? "" : ending;
        return before + gapBefore + block + gapAfter + after;
    }

    private static int EndOfLine(string content, int from)
    {
        var end = content.IndexOf('\n', Math.Min(from, content.Length));
        return end < 0 ? content.Length : end + 1;
    }

    private static void AppendBlock(StringBuilder text, ImmutableArray<ImmutableArray<string?>> slots)
    {
        text.Append("arrange\n");
        foreach (var row in slots)
        {
            text.Append("    ").AppendJoin(' ', row.Select(cell => cell ?? ".")).Append('\n');
        }
    }

    /// <summary>With a block, the big parts that are turned and do not say so; without, every big part that found its place.</summary>
    private static bool NeedsLine(LayoutResult layout, PlacedPart part) =>
        part.Part.Zone != LayoutZone.Small
        && layout.Found.Contains(part.Part.Id)
        && (layout.Slots.IsEmpty || (part.Turn != 0 && part.Part.GivenTurn is null));
}
