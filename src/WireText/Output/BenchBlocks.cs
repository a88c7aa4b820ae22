using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Documents;
using WireText.Electrical.BenchPlans;

namespace WireText.Output;

/// <summary>A bench plan as blocks of a document: what to measure, with a column for what was found, and what a wrong reading points to.</summary>
public static class BenchBlocks
{
    public static ImmutableArray<Block> Of(BenchPlan plan)
    {
        var sheet = new BenchSheet(plan);
        return
        [
            new Block.Heading(2, "Bench test"),
            new Block.Bullets([.. sheet.ReadingRemarks()]),
            Block.Table.OfFilledColumns(sheet.ReadingHeading, sheet.Readings),
            .. plan.Taps.IsEmpty
                ? Array.Empty<Block>()
                :
                [
                    new Block.Heading(3, "What sounds"),
                    new Block.Bullets([.. sheet.TapRemarks()]),
                    Block.Table.OfFilledColumns(sheet.TapHeading, sheet.Taps),
                ],
            .. Faults(plan.Faults, plan.Circuit),
        ];
    }

    private static IEnumerable<Block> Faults(FaultTable faults, Circuit circuit)
    {
        if (!faults.Groups.IsEmpty)
        {
            yield return new Block.Heading(3, "What wrong readings point to");
            yield return new Block.Paragraph(
                "Where one thing alone is wrong. What stands in one row cannot be told apart by these readings."
                    + (faults.IsComplete ? "" : " There are more faults than were tried.")
            );
            yield return Block.Table.OfFilledColumns(
                ["these readings are wrong", "it may be"],
                [
                    .. faults.Groups.Select(group =>
                        (ImmutableArray<string>)[BenchWords.WrongOf(group), Listed(group.Faults, circuit)]
                    ),
                ]
            );
        }

        if (!faults.Unseen.IsEmpty)
        {
            yield return new Block.Heading(3, "What the meter does not see");
            yield return new Block.Bullets([.. faults.Unseen.Select(fault => BenchWords.Of(fault, circuit))]);
        }
    }

    private static string Listed(IEnumerable<Fault> faults, Circuit circuit) =>
        string.Join("; ", faults.Select(fault => BenchWords.Of(fault, circuit)));
}
