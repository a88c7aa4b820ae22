using System.Text;
using WireText.Sheets;

namespace WireText.Output;

/// <summary>Writes the wire list as a table with commas (RFC 4180).</summary>
public static class WireListCsv
{
    public static string Write(IEnumerable<WireRow> wires)
    {
        var csv = new StringBuilder();
        Append(csv, WireTable.Heading);
        foreach (var wire in wires)
        {
            Append(csv, WireTable.Cells(wire));
        }

        return csv.ToString();
    }

    private static void Append(StringBuilder csv, IEnumerable<string> cells) =>
        csv.AppendJoin(',', cells.Select(CsvCell.Of)).Append('\n');
}
