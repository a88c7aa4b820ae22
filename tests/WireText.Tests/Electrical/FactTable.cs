using System.Globalization;
using WireText.Testing;

namespace WireText.Tests.Electrical;

/// <summary>One row of a table of check values, by the names of its columns.</summary>
public sealed class FactRow
{
    private readonly Dictionary<string, string> cells;

    internal FactRow(string[] columns, string[] cells)
    {
        Columns = columns;
        this.cells = columns.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    public IReadOnlyList<string> Columns { get; }

    public string Id => cells["id"];

    public string this[string column] => cells[column];

    public bool IsNumber(string column) =>
        double.TryParse(cells[column], NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    public double Number(string column) => double.Parse(cells[column], CultureInfo.InvariantCulture);

    public override string ToString() => Id;
}

/// <summary>The tables of check values beside the tests. The first lines of each name its source.</summary>
internal static class FactTable
{
    public static IReadOnlyList<FactRow> Read(string name)
    {
        var lines = File.ReadAllLines(Repository.PathOf("tests", "WireText.Tests", "Electrical", "Facts", name))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .ToList();
        return [.. lines.Skip(1).Select(cells => new FactRow(lines[0], cells))];
    }

    public static TheoryData<string> Ids(string name) => Rows.Of(Read(name).Select(row => row.Id), name);

    public static FactRow Row(string name, string id) => Read(name).Single(row => row.Id == id);
}
