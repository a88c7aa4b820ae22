using System.Globalization;
using System.Text;
using WireText.Parts;
using WireText.Templates;

namespace WireText.Output;

/// <summary>Writes the holes of a template as a table with commas (RFC 4180), for a machine or a table program.</summary>
public static class HoleListCsv
{
    public static string Write(TemplateHoles template)
    {
        var csv = new StringBuilder();
        Append(csv, ["name", "x mm", "y mm", "diameter mm", "slot width mm", "slot height mm", "seen from", "origin"]);
        foreach (var hole in template.Holes)
        {
            Append(
                csv,
                [
                    hole.Part,
                    Text(hole.At.X),
                    Text(hole.At.Y),
                    hole.Shape is HoleShape.Round round ? Text(round.Diameter) : "",
                    hole.Shape is HoleShape.Slot wide ? Text(wide.Width) : "",
                    hole.Shape is HoleShape.Slot high ? Text(high.Height) : "",
                    template.Side.Word(),
                    "0 0 of the places; y down",
                ]
            );
        }

        return csv.ToString();
    }

    private static string Text(double number) =>
        (number == 0 ? 0 : number).ToString("0.###", CultureInfo.InvariantCulture);

    private static void Append(StringBuilder csv, IEnumerable<string> cells) =>
        csv.AppendJoin(',', cells.Select(CsvCell.Of)).Append('\n');
}
