using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Parts;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Matching;

/// <summary>Reads a bin: a table with commas whose first row names its columns. <c>docs/match.md</c> describes it.</summary>
public static class BinReader
{
    /// <summary>Parts of one bin. Chosen: a drawer has hundreds.</summary>
    public const int MostParts = 2_000;

    /// <summary>Letters of a bin's file. Chosen: each part has some hundred.</summary>
    public const int MostLetters = 1_000_000;

    private static readonly ImmutableArray<string> Needed = ["name", "kind", "value"];
    private static readonly ImmutableArray<string> Known = [.. Needed, "l", "c"];

    private static readonly ImmutableArray<string> Kinds =
    [
        PartKinds.Pickup,
        PartKinds.Pot,
        PartKinds.Cap,
        PartKinds.Resistor,
        PartKinds.Inductor,
    ];

    /// <summary>The parts in the order of the file, or the first thing that is wrong: its line, what it is, and how to mend it.</summary>
    /// <param name="circuit">Whose parts may be named as kinds.</param>
    public static Read<BinFile> Read(Circuit circuit, string text)
    {
        if (text.Length > MostLetters)
        {
            return Bad(1, Invariant($"a bin may have {MostLetters:#,0} letters"), "divide it");
        }

        var table = CsvText.Read(text);
        if (table.Value is not { } rows)
        {
            return Text.Read.Bad<BinFile>(table.Problem!);
        }

        if (rows.Rows.IsEmpty)
        {
            return Bad(1, "the bin is empty", "begin with a row of names: name,kind,value");
        }

        var heading = rows.Rows[0].Cells.Select(cell => cell.Trim().ToLowerInvariant()).ToList();
        foreach (var column in Needed)
        {
            if (!heading.Contains(column))
            {
                return Bad(
                    rows.Rows[0].Line,
                    $"there is no column '{column}'",
                    "name them in the first row: name,kind,value"
                );
            }
        }

        for (var i = 0; i < heading.Count; i++)
        {
            if (!Known.Contains(heading[i]) || heading.IndexOf(heading[i]) != i)
            {
                return Bad(
                    rows.Rows[0].Line,
                    $"column '{Shown(rows.Rows[0].Cells[i])}' is {(Known.Contains(heading[i]) ? "there twice" : "not known")}",
                    $"the columns are {string.Join(", ", Known)}"
                );
            }
        }

        if (rows.Rows.Length - 1 > MostParts)
        {
            return Bad(rows.Rows[MostParts + 1].Line, Invariant($"a bin may have {MostParts:#,0} parts"), "divide it");
        }

        var parts = ImmutableArray.CreateBuilder<BinPart>();
        var names = new Dictionary<string, int>(Naming.Comparer);
        foreach (var row in rows.Rows.Skip(1))
        {
            var read = PartOf(circuit, heading, row);
            if (read.Value is not { } part)
            {
                return Text.Read.Bad<BinFile>(read.Problem!);
            }

            if (!names.TryAdd(part.Name, part.Line))
            {
                return Bad(
                    part.Line,
                    Invariant($"'{Shown(part.Name)}' is in line {names[part.Name]} already"),
                    "give each part a name of its own"
                );
            }

            parts.Add(part);
        }

        return Text.Read.Good(new BinFile(parts.ToImmutable()));
    }

    private static Read<BinPart> PartOf(Circuit circuit, List<string> heading, CsvRow row)
    {
        if (row.Cells.Length != heading.Count)
        {
            return BadPart(
                row.Line,
                Invariant($"there are {row.Cells.Length} cells where the first row has {heading.Count}"),
                "put a comma between any two, and quotes around one that has a comma"
            );
        }

        var name = CellOf("name");
        if (name.Length == 0)
        {
            return BadPart(row.Line, "a part has no name", "write what stands on it");
        }

        var kind = CellOf("kind");
        var meant = Kinds.FirstOrDefault(one => Naming.Alike(one, kind)) ?? circuit.FindPart(kind)?.Name;
        var use = UseOf(meant is null ? null : circuit.FindPart(meant)?.Kind ?? meant);
        if (meant is null || use is null)
        {
            return BadPart(
                row.Line,
                $"'{Shown(kind)}' is no kind of part that can be matched",
                $"write {string.Join(", ", Kinds)}, or the name of such a part of the circuit"
            );
        }

        if (Value("value", use) is not { } value)
        {
            return BadPart(row.Line, Why("value", use), $"write what the meter read, such as {use.Usual}");
        }

        var isPickup = use == ValueUse.CoilResistance;
        foreach (var (column, other) in new[] { ("l", ValueUse.CoilInductance), ("c", ValueUse.CoilCapacitance) })
        {
            var cell = heading.Contains(column) ? CellOf(column) : "";
            if (cell.Length > 0 && !isPickup)
            {
                return BadPart(row.Line, $"'{Shown(name)}' is no pickup and has no '{column}'", "leave the cell empty");
            }

            if (cell.Length > 0 && Value(column, other) is null)
            {
                return BadPart(
                    row.Line,
                    Why(column, other),
                    $"write a value such as {other.Usual}, or leave the cell empty"
                );
            }
        }

        return Text.Read.Good(
            new BinPart(
                name,
                meant,
                value,
                isPickup ? Value("l", ValueUse.CoilInductance) : null,
                isPickup ? Value("c", ValueUse.CoilCapacitance) : null,
                row.Line
            )
        );

        string CellOf(string column) => row.Cells[heading.IndexOf(column)].Trim();

        double? Value(string column, ValueUse of) =>
            heading.Contains(column) && CellOf(column).Length > 0 ? ValueReader.Read(CellOf(column), of).Value : null;

        string Why(string column, ValueUse of) =>
            CellOf(column).Length == 0
                ? $"'{Shown(name)}' has no value"
                : $"'{Shown(CellOf(column))}': {ValueReader.Read(CellOf(column), of).Problem}";
    }

    private static ValueUse? UseOf(string? kind) =>
        kind switch
        {
            PartKinds.Pickup => ValueUse.CoilResistance,
            PartKinds.Pot => ValueUse.Pot,
            PartKinds.Cap => ValueUse.Capacitor,
            PartKinds.Resistor => ValueUse.Resistor,
            PartKinds.Inductor => ValueUse.Inductor,
            _ => null,
        };

    /// <summary>A cell as a message repeats it.</summary>
    private static string Shown(string cell) => VisibleText.Line(cell.Length > 40 ? cell[..40] + "…" : cell);

    private static Read<BinFile> Bad(int line, string what, string mend) =>
        Text.Read.Bad<BinFile>(CsvText.Problem(line, what, mend));

    private static Read<BinPart> BadPart(int line, string what, string mend) =>
        Text.Read.Bad<BinPart>(CsvText.Problem(line, what, mend));

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A bin that was read.</summary>
public sealed record BinFile(ImmutableArray<BinPart> Parts);
