using System.Collections.Immutable;
using System.Globalization;
using WireText.Building;
using WireText.Circuits;
using WireText.Documents;

namespace WireText.Sheets;

/// <summary>The sheet that lies on the bench: what to have, what to take care of, and what to do in which order.</summary>
public static class BuildSheet
{
    private const double MillimetresPerMetre = 1000;

    public static Document Compose(SheetContents contents)
    {
        var circuit = contents.Circuit;
        ImmutableArray<Block> blocks =
        [
            new Block.Heading(1, contents.Title),
            new Block.Table(["", ""], [.. TitleBlock(contents)]),
            .. circuit.Remarks.Select(remark => new Block.Paragraph(remark)),
            new Block.Heading(2, "Take care"),
            new Block.Bullets([.. Cautions.Of(circuit)]),
            .. Diagram(contents),
            new Block.Heading(2, "Parts"),
            .. Parts(contents),
            new Block.Heading(2, "Wires"),
            .. Wires(contents),
            new Block.Heading(2, "Order of work"),
            .. contents.IsMod
                ? new Block[]
                {
                    new Block.Paragraph(
                        "These steps change the instrument as it is. Where a step names a joint that is there already, take its "
                            + "old solder off first; joints that no step names stay as they are."
                    ),
                }
                : [],
            new Block.Paragraph(
                "Hook each end on when you lay a wire, and solder nothing before its own step: each joint is made once, "
                    + "when all that belongs into it lies there."
            ),
            .. Steps(contents),
            .. contents.BenchTest,
        ];
        return new Document(contents.Title, contents.Foot, blocks);
    }

    private static IEnumerable<ImmutableArray<string>> TitleBlock(SheetContents contents)
    {
        foreach (var about in contents.Circuit.About)
        {
            yield return [about.Key, about.Words];
        }

        if (contents.FileName is { } file)
        {
            yield return ["file", file];
        }

        yield return ["mark of the circuit", CircuitMark.Of(contents.Circuit)];
        if (contents.Count > 1)
        {
            yield return ["to build", Text(contents.Count)];
        }
    }

    private static IEnumerable<Block> Diagram(SheetContents contents)
    {
        if (contents.Diagram is { } picture)
        {
            yield return new Block.Figure(
                "Diagram",
                picture,
                "Seen from behind, true size; a number in a ring is a joint of the order of work"
            );
        }
    }

    private static IEnumerable<Block> Parts(SheetContents contents)
    {
        var rows = PartRow.ListOf(contents.Circuit, contents.Parts);
        var isBatch = contents.Count > 1;
        yield return Block.Table.OfFilledColumns(
            [.. isBatch ? ["each", "in all"] : (string[])["each"], "what", "value", "tolerance", "marking", "names"],
            [
                .. rows.Select(row =>
                    (ImmutableArray<string>)
                        [
                            Text(row.Quantity),
                            .. isBatch ? [Text(row.Quantity * contents.Count)] : Array.Empty<string>(),
                            row.What,
                            row.Value,
                            row.Tolerance,
                            row.Marking,
                            string.Join(", ", row.Names),
                        ]
                ),
            ]
        );
        if (rows.Any(row => row.Marking.Length > 0))
        {
            yield return new Block.Paragraph(
                "Marking: two figures and a power of ten, in picofarads on a capacitor and in ohms on a resistor (IEC 60062). "
                    + "A part may show its value in other ways."
            );
        }
    }

    private static IEnumerable<Block> Wires(SheetContents contents)
    {
        yield return Block.Table.OfFilledColumns(WireTable.Heading, [.. contents.Wires.Select(WireTable.Cells)]);
        yield return new Block.Paragraph(WireTable.Legend);
        var rolls = contents
            .Wires.Where(wire => !wire.IsOwnLead && wire.Kind == WireKind.Wire)
            .GroupBy(wire => (wire.Colour, wire.Gauge));
        yield return Block.Table.OfFilledColumns(
            ["from the roll", "awg", "pieces", "metres known", "pieces to measure"],
            [
                .. rolls.Select(roll =>
                    (ImmutableArray<string>)
                        [
                            roll.Key.Colour,
                            WireTable.GaugeOf(roll.Key.Gauge),
                            Text(roll.Count() * contents.Count),
                            Metres(roll.Sum(wire => wire.Millimetres ?? 0) * contents.Count),
                            Text(roll.Count(wire => wire.Millimetres is null) * contents.Count),
                        ]
                ),
            ]
        );
    }

    private static IEnumerable<Block> Steps(SheetContents contents)
    {
        var words = new StepWords(contents.Circuit);
        foreach (var phase in contents.Order.Steps.GroupBy(step => step.Phase))
        {
            yield return new Block.Heading(3, StepWords.Of(phase.Key));
            yield return new Block.Boxes([.. phase.Select(words.Of)]);
        }
    }

    private static string Metres(double millimetres) =>
        millimetres == 0 ? "" : (millimetres / MillimetresPerMetre).ToString("0.00", CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
