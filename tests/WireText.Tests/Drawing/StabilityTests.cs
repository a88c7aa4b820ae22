using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing;

/// <summary>What one edit moves in the drawings of the examples; writes docs/stability.md.</summary>
public partial class StabilityTests
{
    private const string Page = "docs/stability.md";

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Edit_OfAnArrangedExample_MovesNoBigPart(string example)
    {
        var circuit = Read(File.ReadAllText(Repository.PathOf("examples", example)));
        var before = Lay(circuit);

        Every.Item(
            Deletions(circuit).Concat(Renamings(example)),
            edited => Assert.Equal(0, Compare(before, Lay(edited)).BigPartsMoved)
        );
    }

    [Fact]
    public void StabilityPage_IsWhatIsMeasured() => AcceptedFile.Check(Page, Write());

    private static string Write()
    {
        var page = new StringBuilder(
            """
            # What one edit moves

            Measured on the examples at quick effort, by taking out each wire in turn (read the other way round it is a wire added)
            and by giving each part another name. A path counts as unchanged when every corner is where it was; a part as moved when
            it is elsewhere or turned. Written by `StabilityTests`.

            With places given, as `wiretext arrange` writes them, no edit moves a pickup, switch, pot, jack or plate. A capacitor or
            resistor that hangs by its own leads finds its place beside the lugs it joins, and can move when these change.

            | example | wires | edits | big parts moved | small parts moved | paths unchanged, wire out | paths unchanged, part renamed | parts moved without places |
            | --- | --- | --- | --- | --- | --- | --- | --- |

            """
        );
        foreach (var path in Repository.Examples)
        {
            var text = File.ReadAllText(path);
            var circuit = Read(text);
            var deleted = Against(circuit, Deletions(circuit));
            var renamed = Against(circuit, Renamings(Path.GetFileName(path)));
            var bare = circuit with { Arrangement = [], Places = [] };
            var free = Against(bare, Deletions(bare));
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {Path.GetFileNameWithoutExtension(path)} | {circuit.Wires.Length} | {deleted.Count + renamed.Count} | {deleted.Concat(renamed).Sum(edit => edit.BigPartsMoved)} | {deleted.Concat(renamed).Sum(edit => edit.SmallPartsMoved)} | {Share(deleted)} | {Share(renamed)} | {Percent(free.Average(edit => (edit.BigPartsMoved + edit.SmallPartsMoved) / (double)circuit.Parts.Length))} |\n"
            );
        }

        page.Append(
            """

            ## Beside a text that somebody writes

            There the picture goes on from the one before: parts stay where they were, and wires keep their paths where what is new leaves
            them room. A part finds its place anew with the first wire that joins it. Below, each example without its places is written
            line by line, a picture after each line; parts moved are those in two pictures, one after the other, that stand elsewhere in the
            second. In the end it is compared with the picture of the whole text alone, at the same effort.

            | example | lines | parts moved | of them | crossings, written line by line | laid anew | bends, written line by line | laid anew |
            | --- | --- | --- | --- | --- | --- | --- | --- |

            """
        );
        foreach (var path in Repository.Examples)
        {
            var written = WrittenLineByLine.Of(WithoutPlaces(File.ReadAllLines(path)));
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {Path.GetFileNameWithoutExtension(path)} | {written.Lines} | {written.PartsMoved} | {written.PartsSeen} | {written.Last.Crossings} | {written.Anew.Crossings} | {written.Last.Bends} | {written.Anew.Bends} |\n"
            );
        }

        return page.ToString();
    }

    private static string[] WithoutPlaces(string[] lines) =>
        [
            .. lines.Where(line =>
                !line.StartsWith("place", StringComparison.Ordinal)
                && !line.StartsWith("arrange", StringComparison.Ordinal)
                && !line.StartsWith("    ", StringComparison.Ordinal)
            ),
        ];

    private static string Share(List<Difference> edits) => Percent(edits.Average(edit => edit.UnchangedShare));

    private static string Percent(double share) => (100 * share).ToString("0", CultureInfo.InvariantCulture) + " %";

    private static List<Difference> Against(Circuit circuit, IEnumerable<Circuit> edited)
    {
        var before = Lay(circuit);
        return [.. edited.Select(other => Compare(before, Lay(other)))];
    }

    private static IEnumerable<Circuit> Deletions(Circuit circuit) =>
        circuit
            .Wires.Where(wire => wire is { Kind: WireKind.Wire, From: >= 0, To: >= 0, Cable: null })
            .Select(wire => circuit.Without(wire.Index));

    /// <summary>The example with each part's name changed everywhere, so that it sorts elsewhere.</summary>
    private static IEnumerable<Circuit> Renamings(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        foreach (var part in Read(text).Parts)
        {
            yield return Read(Words().Replace(text, word => word.Value == part.Name ? "m" + part.Name : word.Value));
        }
    }

    private static Circuit Read(string text) =>
        Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance).Circuit!;

    private static LayoutResult Lay(Circuit circuit) =>
        LayoutEngine.Lay(FaceBuilder.BuildProblem(circuit), LayoutEffort.Quick);

    /// <summary>Parts and wires are compared by their order in the circuit, for names may have changed.</summary>
    private static Difference Compare(LayoutResult before, LayoutResult after)
    {
        var (old, now) = (InOrder(before), InOrder(after));
        var moved = old.Zip(now)
            .Where(pair => pair.First.At != pair.Second.At || pair.First.Turn != pair.Second.Turn)
            .Select(pair => pair.First.Part.Zone)
            .ToList();
        var paths = before.Wires.Select(PathOf).ToHashSet(StringComparer.Ordinal);
        var kept = after.Wires.Count(wire => paths.Contains(PathOf(wire)));
        return new Difference(
            moved.Count(zone => zone != LayoutZone.Small),
            moved.Count(zone => zone == LayoutZone.Small),
            kept / (double)after.Wires.Length
        );
    }

    private static List<PlacedPart> InOrder(LayoutResult layout) =>
        [.. layout.Parts.OrderBy(part => part.Part.Zone).ThenBy(part => part.Part.Order)];

    private static string PathOf(RoutedWire wire) => string.Join(' ', wire.Points.Select(point => point.ToString()));

    [GeneratedRegex("[A-Za-z0-9-]+", RegexOptions.None, 1000)]
    private static partial Regex Words();

    private sealed record Difference(int BigPartsMoved, int SmallPartsMoved, double UnchangedShare);
}
