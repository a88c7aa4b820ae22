using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Pictures;
using WireText.Electrical.Positions;

namespace WireText.Output;

/// <summary>Tells what is heard in every position, in the words of the table of positions.</summary>
public static class HeardWords
{
    /// <summary>More rows than these are counted and not told: a drawing is no place for a long table. Chosen.</summary>
    private const int MostRows = 16;

    /// <summary>Null where there is nothing to tell.</summary>
    public static HeardTable? Of(PositionTable table)
    {
        var sheet = PositionSheet.Of(table);
        if (sheet.Rows.IsEmpty)
        {
            return null;
        }

        ImmutableArray<ImmutableArray<string>> told =
        [
            .. sheet
                .Rows.Take(MostRows)
                .Select(row => (ImmutableArray<string>)[.. row.Take(sheet.HeardColumn), HeardIn(sheet, row)]),
        ];
        return WithJoins(
            table.Circuit,
            new HeardTable(
                [.. sheet.Heading.Take(sheet.HeardColumn + 1)],
                told,
                sheet.Rows.Length - told.Length,
                told.Any(row => row[^1].EndsWith(AssumedValues.Mark, StringComparison.Ordinal))
            )
        );
    }

    /// <summary>Where one control alone decides, each of its rows tells too what that position joins.</summary>
    private static HeardTable WithJoins(Circuit circuit, HeardTable table)
    {
        if (
            table.Heading.Length != 2
            || circuit.Controls.FirstOrDefault(one => one.Name == table.Heading[0]) is not { } control
        )
        {
            return table;
        }

        var positions = control.Positions.ToDictionary(position => position.Name, StringComparer.OrdinalIgnoreCase);
        return table.Rows.Length == positions.Count && table.Rows.All(row => positions.ContainsKey(row[0]))
            ? table with
            {
                Heading = table.Heading.Insert(1, "joins"),
                Rows = [.. table.Rows.Select(row => row.Insert(1, ContactWords.Joined(circuit, positions[row[0]])))],
                Joined = control.Index,
            }
            : table;
    }

    /// <summary>Without what else is to be known of a row.</summary>
    private static string HeardIn(PositionSheet sheet, ImmutableArray<string> row) =>
        row[sheet.HeardColumn].Split(PositionSheet.NoteMark)[0];
}
