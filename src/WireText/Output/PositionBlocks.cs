using System.Collections.Immutable;
using WireText.Documents;
using WireText.Electrical.Positions;

namespace WireText.Output;

/// <summary>A table of positions as a document, to be printed or read on a screen.</summary>
public static class PositionBlocks
{
    private const string Untitled = "untitled wiring";

    /// <param name="foot">What stands at the foot of each page.</param>
    public static Document Of(PositionTable table, string foot)
    {
        var sheet = PositionSheet.Of(table);
        var title = $"What each position does: {table.Circuit.Title ?? Untitled}";
        ImmutableArray<Block> blocks =
        [
            new Block.Heading(1, title),
            .. table.Circuit.About.IsEmpty
                ? Array.Empty<Block>()
                :
                [
                    new Block.Table(
                        ["", ""],
                        [.. table.Circuit.About.Select(about => (ImmutableArray<string>)[about.Key, about.Words])]
                    ),
                ],
            Block.Table.OfFilledColumns(sheet.Heading, sheet.Rows),
            new Block.Bullets(sheet.Remarks),
            .. CoilSheet.Of(table.Circuit) is { } coils
                ? new Block[]
                {
                    new Block.Heading(2, "The coils"),
                    Block.Table.OfFilledColumns(coils.FullHeading, coils.FullRows),
                    new Block.Bullets([.. coils.Remarks]),
                }
                : [],
        ];
        return new Document(title, foot, blocks);
    }
}
