using System.Globalization;

namespace WireText.Output;

/// <summary>Writes a cell of a table with commas (RFC 4180).</summary>
internal static class CsvCell
{
    /// <summary>What starts a formula where a table is opened as a sheet.</summary>
    private const string FormulaStarts = "=+-@\t";

    /// <summary>A text, in quotes where it needs them. One that a sheet would compute has an apostrophe before it; a number stays one.</summary>
    public static string Of(string text)
    {
        var safe = IsFormula(text) ? $"'{text}" : text;
        return safe.AsSpan().ContainsAny(",\"\r\n")
            ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : safe;
    }

    private static bool IsFormula(string text) =>
        text.Length > 1
        && FormulaStarts.Contains(text[0], StringComparison.Ordinal)
        && !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
