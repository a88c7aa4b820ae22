using WireText.Drawing.Layout;
using WireText.Tests.Drawing.Layout;
using WireText.Text;

namespace WireText.Tests.Drawing;

/// <summary>A text that is written line by line, with a picture after each that goes on from the one before.</summary>
/// <param name="PartsMoved">How often a part stands elsewhere than in the picture before.</param>
/// <param name="PartsSeen">How often a part stands in a picture and in the one before.</param>
/// <param name="Last">The picture in the end.</param>
/// <param name="Anew">That of the whole text alone.</param>
internal sealed record WrittenLineByLine(
    int Lines,
    int PartsMoved,
    int PartsSeen,
    LayoutMeasure Last,
    LayoutMeasure Anew
)
{
    public static WrittenLineByLine Of(string[] lines)
    {
        var compiled = Compile("");
        var (moved, seen) = (0, 0);
        var places = new Dictionary<string, PlacedPart>(StringComparer.Ordinal);
        for (var line = 1; line <= lines.Length; line++)
        {
            compiled = compiled.WithPlacesHeld(Source(string.Join('\n', lines[..line])));
            foreach (var part in compiled.PlanFor(LayoutEffort.Quick)?.Layout.Parts ?? [])
            {
                seen += places.ContainsKey(part.Part.Id) ? 1 : 0;
                moved += places.TryGetValue(part.Part.Id, out var was) && was.Pose != part.Pose ? 1 : 0;
                places[part.Part.Id] = part;
            }
        }

        return new WrittenLineByLine(
            lines.Length,
            moved,
            seen,
            Measured(compiled),
            Measured(Compile(string.Join('\n', lines)))
        );
    }

    private static LayoutMeasure Measured(Compilation compiled) =>
        new(
            compiled.PlanFor(LayoutEffort.Quick)?.Layout
                ?? throw new ArgumentException("The text in the end has no picture.")
        );

    private static Compilation Compile(string text) => Compilation.Of(Source(text), NoSources.Instance);

    private static SourceText Source(string text) => new("a.wiring", text);
}
