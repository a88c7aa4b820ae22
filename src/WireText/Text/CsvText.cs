using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace WireText.Text;

/// <summary>Reads a table with commas (RFC 4180; lines may end in LF alone). Empty lines are no rows.</summary>
public static class CsvText
{
    /// <summary>The rows, or the first thing that is wrong.</summary>
    public static Read<CsvTable> Read(string text)
    {
        var rows = ImmutableArray.CreateBuilder<CsvRow>();
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = new StringBuilder();
        var (line, start, at) = (1, 1, text.StartsWith('\uFEFF') ? 1 : 0);
        while (at < text.Length)
        {
            if (text[at] == '"' && cell.Length == 0)
            {
                var opened = line;
                at++;
                while (at < text.Length && (text[at] != '"' || (at + 1 < text.Length && text[at + 1] == '"')))
                {
                    line += text[at] == '\n' ? 1 : 0;
                    cell.Append(text[at]);
                    at += text[at] == '"' ? 2 : 1;
                }

                if (at == text.Length)
                {
                    return Text.Read.Bad<CsvTable>(Problem(opened, "a quote is not closed", "put one behind the cell"));
                }

                at++;
                if (at < text.Length && text[at] is not (',' or '\r' or '\n'))
                {
                    return Text.Read.Bad<CsvTable>(
                        Problem(line, "something follows a quote that is closed", "double a quote inside of a cell")
                    );
                }

                // A cell in quotes may be empty: what follows can open no second one.
                if (at < text.Length && text[at] == ',')
                {
                    EndCell();
                    at++;
                }

                continue;
            }

            switch (text[at])
            {
                case ',':
                    EndCell();
                    break;
                case '\r' when at + 1 < text.Length && text[at + 1] == '\n':
                    break;
                case '\n' or '\r':
                    EndRow();
                    line++;
                    start = line;
                    break;
                default:
                    cell.Append(text[at]);
                    break;
            }

            at++;
        }

        EndRow();
        return Text.Read.Good(new CsvTable(rows.ToImmutable()));

        void EndCell()
        {
            cells.Add(cell.ToString());
            cell.Clear();
        }

        void EndRow()
        {
            if (cells.Count > 0 || cell.Length > 0)
            {
                EndCell();
                rows.Add(new CsvRow(start, cells.ToImmutable()));
                cells.Clear();
            }
        }
    }

    /// <summary>What is wrong, where, and how it is mended.</summary>
    public static string Problem(int line, string what, string mend) =>
        string.Create(CultureInfo.InvariantCulture, $"line {line}: {what}; {mend}");
}

/// <param name="Rows">The heading too, where there is one.</param>
public sealed record CsvTable(ImmutableArray<CsvRow> Rows);

/// <param name="Line">Where it begins, from 1.</param>
public sealed record CsvRow(int Line, ImmutableArray<string> Cells);
