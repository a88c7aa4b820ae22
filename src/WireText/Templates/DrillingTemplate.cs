using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Documents;
using WireText.Sheets;

namespace WireText.Templates;

/// <summary>The template to drill by: the holes at true size, and their list.</summary>
public static class DrillingTemplate
{
    /// <param name="fileName">Null for standard input.</param>
    public static Document Compose(Circuit circuit, TemplateHoles template, string? fileName)
    {
        var title = $"Drilling template: {circuit.Title ?? "untitled wiring"}";
        var mark = $"circuit {CircuitMark.Of(circuit)}";
        ImmutableArray<Block> blocks =
        [
            new Block.Heading(1, title),
            new Block.Paragraph($"{template.Side.InWords()}."),
            new Block.Paragraph(
                "Print at 100 %, and measure the bar of 50 mm on the page before you drill. x runs to the right and y down, from the "
                    + "0,0 of the places in the file. Dashed lines are the bodies of the parts behind the plate."
            ),
            new Block.Heading(2, "Holes"),
            new Block.Table(["part", "x mm", "y mm", "size", "size from"], [.. template.Holes.Select(Cells)]),
            .. Usual(template),
            .. List(
                "Holes that are not known",
                template.Unknown,
                name => $"{name}: write hole=9.5mm on its line, with its own size; its place is marked with a cross."
            ),
            .. List(
                "Parts without a place",
                template.NotPlaced,
                name => $"{name}: write place {name} at X,Y; it is not on the template."
            ),
            new Block.Figure(
                $"Template, {(template.Side == TemplateSide.Front ? "seen from the front" : "seen from behind")}",
                TemplatePicture.Of(template, title),
                "True size, for a print at 100 %"
            ),
        ];
        return new Document(title, fileName is null ? mark : $"{fileName}, {mark}", blocks);
    }

    private static ImmutableArray<string> Cells(TemplateHole hole) =>
        [
            hole.IsMain ? hole.Part : $"{hole.Part}, screw",
            Text(hole.At.X),
            Text(hole.At.Y),
            hole.Shape.InWords,
            hole.IsUsual ? "usual: measure the part" : "the file",
        ];

    private static IEnumerable<Block> Usual(TemplateHoles template)
    {
        if (template.Holes.Any(hole => hole.IsUsual))
        {
            yield return new Block.Paragraph(
                "A usual size is that of the standard part, from memory. Measure the part before you drill, and write its own size on "
                    + "its line: hole=9.5mm."
            );
        }
    }

    private static IEnumerable<Block> List(string heading, ImmutableArray<string> names, Func<string, string> words)
    {
        if (!names.IsEmpty)
        {
            yield return new Block.Heading(2, heading);
            yield return new Block.Bullets([.. names.Select(words)]);
        }
    }

    private static string Text(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
