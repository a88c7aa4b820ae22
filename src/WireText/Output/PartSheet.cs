using System.Globalization;
using System.Text;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Output;

/// <summary>Writes what parts there are, and one part with its lugs drawn in text.</summary>
public static class PartSheet
{
    /// <summary>All models, a line each, under their kinds.</summary>
    public static string List(PartCatalogue catalogue)
    {
        var text = new StringBuilder();
        foreach (var kind in catalogue.Kinds)
        {
            var models = catalogue.ModelsOf(kind);
            var width = models.Max(m => m.Model.Length);
            text.Append(kind).Append('\n');
            foreach (var model in models)
            {
                var isDefault = catalogue.DefaultOf(kind) == model && models.Length > 1 ? "  (when none is named)" : "";
                var words = model.Remark is { } remark ? $"{remark}{isDefault}" : isDefault.TrimStart();
                text.Append($"    {model.Model.PadRight(width)}  {words}".TrimEnd()).Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>One model: its lugs as they sit, seen from behind, its contacts, and its definition.</summary>
    public static string Show(PartDefinition part)
    {
        var text = new StringBuilder();
        text.Append($"{part.Kind} {part.Model}");
        text.Append(part.Remark is { } remark ? $": {remark}\n\n" : "\n\n");
        text.Append("from behind:\n\n").Append(TextFace.Draw(part)).Append('\n');
        if (!part.Holes.IsEmpty)
        {
            text.Append(
                $"drilled: {string.Join("; ", part.Holes.Select(Hole))}\n    usual, from memory: measure the part\n\n"
            );
        }

        foreach (var control in part.Controls)
        {
            text.Append(control.Suffix.Length == 0 ? "positions:\n" : $"positions of .{control.Suffix}:\n");
            for (var i = 0; i < control.Positions.Length; i++)
            {
                var position = control.Positions[i];
                var joined = position.Closed.IsEmpty
                    ? "nothing joined"
                    : string.Join("  ", position.Closed.Select(g => string.Join('+', g.Terminals)));
                text.Append($"    {position.Name}  {joined}{(i == control.Rest ? "  (rest)" : "")}\n");
            }

            text.Append(
                part.Between == SwitchOver.MakeBeforeBreak
                    ? "    makes before it breaks\n\n"
                    : "    breaks before it makes\n\n"
            );
        }

        var spare = part.Terminals.Where(t => t.IsSpare).Select(t => t.Name).ToList();
        if (spare.Count > 0)
        {
            text.Append($"may stay empty: {string.Join(' ', spare)}\n\n");
        }

        return text.Append(DefinitionOf(part)).ToString();
    }

    private static string Hole(PartHole hole) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(hole.Shape is HoleShape.Slot ? "slot " : "")}{hole.Shape.InWords}{(hole.At == new Point(0, 0) ? "" : $" at {hole.At.X},{hole.At.Y}")}"
        );

    /// <summary>The lines of its definition; empty for a part that has none.</summary>
    private static string DefinitionOf(PartDefinition part)
    {
        var source = part.DefinedAt.Source;
        if (part.DefinedAt.Span.Length == 0)
        {
            return "";
        }

        var text = new StringBuilder("defined as:\n\n");
        var first = part.DefinedAt.Position.Line;
        for (var number = first; number <= source.LineCount; number++)
        {
            var line = source.Slice(source.LineSpan(number)).TrimEnd();
            var isInside = line.StartsWith(' ') || line.StartsWith('\t');
            if (number > first && !isInside)
            {
                break;
            }

            text.Append(line).Append('\n');
        }

        return text.ToString();
    }
}

/// <summary>A part's face in characters: every lug's name where the lug sits, inside the outline of the body.</summary>
internal static class TextFace
{
    private const int Indent = 4;

    public static string Draw(PartDefinition part)
    {
        var lugs = part
            .Terminals.Where(t => t.At is not null)
            .Select(t => (t.Name, At: t.At!.Value))
            .OrderBy(t => t.At.Y)
            .ThenBy(t => t.At.X)
            .ToList();
        if (lugs.Count == 0)
        {
            return "";
        }

        var (halfWidth, halfHeight) = part.Body switch
        {
            BodyShape.Box box => (box.Width / 2, box.Height / 2),
            BodyShape.Round round => (round.Diameter / 2, round.Diameter / 2),
            _ => (0, 0),
        };
        var scale = ScaleFor(lugs);
        var left = Math.Min(-halfWidth, lugs.Min(l => l.At.X));
        int Column(double x) => Indent + (int)Math.Round((x - left) * scale) + 2;

        var text = new StringBuilder();
        var hasBody = halfWidth > 0;
        var edges = (First: Column(-halfWidth) - 1, Last: Column(halfWidth) + 2);
        var edge = new string(' ', edges.First) + "+" + new string('-', edges.Last - edges.First - 1) + "+\n";
        var isOpen = false;
        var wasClosed = false;
        var isEmpty = true;
        foreach (var row in lugs.GroupBy(l => l.At.Y))
        {
            if (hasBody && !isOpen && row.Key >= -halfHeight)
            {
                text.Append(edge);
                isOpen = true;
            }

            if (hasBody && isOpen && !wasClosed && row.Key > halfHeight)
            {
                text.Append(isEmpty ? Row([], edges) : "").Append(edge);
                wasClosed = true;
            }

            var isInside = hasBody && isOpen && !wasClosed;
            isEmpty &= !isInside;
            text.Append(Row(row.Select(l => (l.Name, Column(l.At.X))), isInside ? edges : null));
        }

        if (hasBody && !isOpen)
        {
            text.Append(edge);
        }

        return text.Append(hasBody && !wasClosed ? edge : "").ToString();
    }

    /// <summary>Columns per millimetre, so that no two names in a row touch.</summary>
    private static double ScaleFor(List<(string Name, Point At)> lugs)
    {
        var scale = 0.5;
        foreach (var row in lugs.GroupBy(l => l.At.Y))
        {
            var names = row.ToList();
            for (var i = 1; i < names.Count; i++)
            {
                var gap = Math.Max(0.1, names[i].At.X - names[i - 1].At.X);
                var room = ((names[i].Name.Length + names[i - 1].Name.Length) / 2.0) + 2;
                scale = Math.Max(scale, room / gap);
            }
        }

        return Math.Min(scale, 8);
    }

    private static string Row(IEnumerable<(string Name, int Column)> names, (int First, int Last)? edges)
    {
        var row = new StringBuilder();
        void Put(string word, int column)
        {
            column = Math.Max(0, column);
            row.Append(' ', Math.Max(0, column + word.Length - row.Length));
            for (var i = 0; i < word.Length; i++)
            {
                row[column + i] = word[i];
            }
        }

        if (edges is { } e)
        {
            Put("|", e.First);
            Put("|", e.Last);
        }

        foreach (var (name, column) in names)
        {
            Put(name, column - (name.Length / 2));
        }

        return row.ToString().TrimEnd() + "\n";
    }
}
