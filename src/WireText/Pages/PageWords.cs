using WireText.Output;

namespace WireText.Pages;

/// <summary>Says in plain words how the figures of a page were made, and where the page ends.</summary>
internal static class PageWords
{
    public static IEnumerable<string> Of(PageContents contents)
    {
        var table = contents.Table;
        yield return "worked out from the wiring when this page was written; the page only looks up what is known";
        yield return "lit: what carries the signal from the coils to the jack; a bar joins the lugs of a closed contact, dark where the signal goes through it";
        if (TurningOf(table) is { } turning)
        {
            yield return turning;
        }

        if (table.Circuit.Controls.Any(control => control.IsPlug))
        {
            yield return "with a plug in the jack";
        }

        yield return "the curve is the level for the same voltage in every coil, against that voltage, at 13 frequencies an octave, rounded to 0.1 dB";
        if (table.Told.Any(told => told.Assumed.Length > 0))
        {
            yield return "* rests on values of coils that nobody gave and that were assumed: the table of coils marks them";
        }

        if (table.Told.Any(told => told.Unknown.Length > 0))
        {
            yield return "a band beside the curve is where it may lie: it rests on something that nobody knows, and so do the figures with a star";
        }

        if (contents.Table.Stock.Length > 0)
        {
            yield return $"before the change: {contents.StockTitle ?? "the wiring as it was"}, its controls and knobs where those of the same name stand now, the others at rest; level against the same 0 dB";
        }
    }

    private static string? TurningOf(PageTable table) =>
        table.Circuit.Dials.IsEmpty
            ? null
            : table.States.Turning switch
            {
                KnobTurning.ByOne => "knobs turn by one mark, each wherever the others stand",
                KnobTurning.ByTwo =>
                    "knobs turn by two marks, each wherever the others stand: by one there would be too many settings for a page",
                KnobTurning.Alone =>
                    $"one knob is turned at a time, the others are at rest ({PositionSheet.RestOf(table.Circuit)}): together they have too many settings for a page",
                _ =>
                    $"knobs are at rest ({PositionSheet.RestOf(table.Circuit)}): with them there would be too many settings for a page",
            };
}
