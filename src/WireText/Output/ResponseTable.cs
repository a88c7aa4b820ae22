using System.Globalization;
using System.Text;
using WireText.Electrical.Positions;
using WireText.Electrical.Responses;

namespace WireText.Output;

/// <summary>Writes a study as a table with commas (RFC 4180, lines ending in LF): a row a frequency, a column a curve.</summary>
public static class ResponseTable
{
    /// <summary>Levels in dB over the EMF of one coil; a state in which nothing sounds has an empty column, one with assumed values a star, and one that rests on what nobody knows two more columns, the least and the most.</summary>
    public static string Write(ResponseStudy study)
    {
        var table = new StringBuilder("Hz");
        foreach (var curve in study.Curves)
        {
            table.Append(',').Append(CsvCell.Of(curve.Label + (curve.IsAssumed ? AssumedValues.Mark : "")));
            if (curve.Least is not null)
            {
                table.Append(',').Append(CsvCell.Of(curve.Label + " least"));
                table.Append(',').Append(CsvCell.Of(curve.Label + " most"));
            }
        }

        table.Append('\n');
        for (var i = 0; i < ResponseStudy.Hertz.Length; i++)
        {
            table.Append(ResponseStudy.Hertz[i].ToString("0.###", CultureInfo.InvariantCulture));
            foreach (var curve in study.Curves)
            {
                table.Append(',').Append(Figure(curve.Decibels?[i]));
                if (curve is { Least: { } least, Most: { } most })
                {
                    table.Append(',').Append(Figure(least[i])).Append(',').Append(Figure(most[i]));
                }
            }

            table.Append('\n');
        }

        return table.ToString();
    }

    private static string? Figure(double? decibels) => decibels?.ToString("0.000", CultureInfo.InvariantCulture);
}
