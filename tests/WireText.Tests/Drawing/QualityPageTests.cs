using System.Globalization;
using System.Text;
using WireText.Measuring;
using WireText.Testing;
using WireText.Tests.Drawing.Layout;

namespace WireText.Tests.Drawing;

/// <summary>Writes docs/quality.md: every example and every layout case, measured, beside what was wished for.</summary>
public class QualityPageTests
{
    /// <summary>What was wished for before the router was written; some of it was never reached by the prototype.</summary>
    private static readonly Target[] Targets =
    [
        new("c1-one-pickup", 2, 1, 7, 1.35),
        new("c2-duo-lever-mute", 7, 5, 15, 1.3),
        new("c3-trio-fiveway", 13, 10, 16, 1.25),
        new("c4-twin-hb-pushpull", 18, 8, 22, 1.3),
        new("c5-dense-fourpole", 46, 42, 42, 1.35),
    ];

    private sealed record Target(string Case, int CrossingsGiven, int CrossingsSearched, int Tags, double LengthRatio)
    {
        public int Crossings(bool isGiven) => isGiven ? CrossingsGiven : CrossingsSearched;
    }

    [Fact]
    public void QualityPage_IsWhatIsMeasured() => AcceptedFile.Check("docs/quality.md", Write());

    [Fact]
    public void Targets_AreOneForEachLayoutCase() =>
        Assert.Equal(LayoutCase.Names, Targets.Select(target => target.Case));

    private static string Write()
    {
        var page = new StringBuilder(Head);
        AddExamples(page);
        AddDoubts(page);
        AddCases(page, isGiven: true);
        AddCases(page, isGiven: false);
        AddMissed(page);
        AddGivenBaselines(page);
        AddSearchedBaselines(page);
        return page.ToString();
    }

    private static void AddExamples(StringBuilder page)
    {
        page.Append(
            """

            ## The examples

            Measured on the finished SVG, which is the one beside the example. Hard faults are all that no drawing may have: a wire
            missing, on a wrong lug, on another wire, crowding one, through a body, past a foreign lug; a label on something; a tag off
            its wire; anything off the page; a hop at a corner. Tags: wires of a stated insulation colour whose code stands on them;
            the others are told in words below the drawing.

            | example | wires | crossings | most on one wire | wires that cross none | bends | length ÷ lower bound | label overlaps | hard faults | tags |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |

            """
        );
        foreach (var name in Repository.ExampleNames)
        {
            var m = FullDrawings.MeasureOf(name);
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {Path.GetFileNameWithoutExtension(name)} | {m.WiresInPicture} | {m.Crossings} | {m.MostCrossingsOnOneWire} | {m.ShareWithoutCrossing * 100:0} % | {m.Bends:0} | {m.LengthOverLowerBound:0.00} | {m.FaultsOf(FaultKind.LabelOverlap).Count()} | {m.Faults.Length} | {m.TagsPlaced}/{m.TagsWanted} |\n"
            );
        }
    }

    private static void AddDoubts(StringBuilder page)
    {
        page.Append(
            """

            ## What can be read wrongly

            Nothing is wrong there, yet an eye may err. Each name is looked at on the drawing itself, larger views left out.

            """
        );
        var kinds = Enum.GetValues<DoubtKind>();
        page.Append("| example | ")
            .AppendJoin(" | ", kinds.Select(DoubtWords.Of))
            .Append(" | drawing ÷ page |\n| --- |");
        page.Insert(page.Length, " --- |", kinds.Length + 1).Append('\n');
        foreach (var name in Repository.ExampleNames)
        {
            var m = FullDrawings.MeasureOf(name);
            page.Append("| " + Path.GetFileNameWithoutExtension(name) + " | ")
                .AppendJoin(" | ", kinds.Select(kind => m.DoubtsOf(kind).Count()))
                .Append(CultureInfo.InvariantCulture, $" | {m.ShareOfPage * 100:0} % |\n");
        }
    }

    private static void AddCases(StringBuilder page, bool isGiven)
    {
        page.Append('\n')
            .Append(isGiven ? "## The layout cases, places given" : "## The layout cases, places searched")
            .Append(
                """


                | case | crossings | target | bends | length ÷ lower bound | target | label overlaps | hard faults | tags | target |
                | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |

                """
            );
        foreach (var target in Targets)
        {
            var m = FullDrawings.OfCase(target.Case, isGiven);
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {target.Case} | {m.Crossings} | ≤ {target.Crossings(isGiven)} | {m.Bends} | {m.LengthRatio:0.00} | ≤ {target.LengthRatio} | {LabelOverlaps(m)} | {m.Faults.Count} | {m.TagsPlaced}/{m.TagsWanted} | {target.Tags}/{m.TagsWanted} |\n"
            );
        }
    }

    private static void AddMissed(StringBuilder page)
    {
        page.Append("\n## Targets not reached\n\n");
        var missed = Targets.SelectMany(target => Missed(target, true).Concat(Missed(target, false))).ToList();
        page.AppendJoin('\n', missed.DefaultIfEmpty("None.")).Append('\n');
    }

    private static IEnumerable<string> Missed(Target target, bool isGiven)
    {
        var m = FullDrawings.OfCase(target.Case, isGiven);
        var what = $"- {target.Case}, places {(isGiven ? "given" : "searched")}:";
        if (m.Crossings > target.Crossings(isGiven))
        {
            yield return $"{what} {m.Crossings} crossings, not {target.Crossings(isGiven)}";
        }

        if (m.LengthRatio > target.LengthRatio)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{what} length {m.LengthRatio:0.00} of the lower bound, not {target.LengthRatio}"
            );
        }

        if (m.TagsPlaced < target.Tags)
        {
            yield return $"{what} {m.TagsPlaced} tags, not {target.Tags}";
        }
    }

    private static void AddGivenBaselines(StringBuilder page)
    {
        page.Append(GivenBaselines);
        AppendOurs(page, isGiven: true);
        var c4 = FullDrawings.OfCase("c4-twin-hb-pushpull", isGiven: true);
        page.Append(CultureInfo.InvariantCulture, $" {c4.Bends} | {c4.LengthRatio:0.00} |\n");
        page.Append(
            """

            ¹ No wire on another, but 7 / 11 / 6 pairs run closer than half a pitch. ² All turning ÷ 90°. A ratio below 1 is of curves and
            slants, which are shorter than the distance by the lanes.

            """
        );
    }

    private static void AddSearchedBaselines(StringBuilder page)
    {
        page.Append(SearchedBaselines);
        AppendOurs(page, isGiven: false);
        var c4 = FullDrawings.OfCase("c4-twin-hb-pushpull", isGiven: false);
        page.Append(CultureInfo.InvariantCulture, $" {c4.Bends} | {c4.Length / 1000:0.00} |\n");
    }

    private static void AppendOurs(StringBuilder page, bool isGiven)
    {
        page.Append("| WireText, full effort |");
        foreach (var name in LayoutCase.Names)
        {
            var m = FullDrawings.OfCase(name, isGiven);
            page.Append(CultureInfo.InvariantCulture, $" {m.Crossings}/{HardFaultsAsCountedThen(m)} |");
        }
    }

    private static int LabelOverlaps(LayoutMeasure measure) => Count(measure, LayoutFaultKind.LabelOverlap);

    /// <summary>The kinds that were counted for the other programs, and no more.</summary>
    private static int HardFaultsAsCountedThen(LayoutMeasure measure) =>
        Count(
            measure,
            LayoutFaultKind.Overlap,
            LayoutFaultKind.ThroughBody,
            LayoutFaultKind.FalseJoint,
            LayoutFaultKind.Unrouted
        );

    private static int Count(LayoutMeasure measure, params LayoutFaultKind[] kinds) =>
        measure.Faults.Count(fault => kinds.Contains(fault.Kind));

    private const string Head = """
        # The quality of the drawings

        Written by `QualityPageTests` from drawings at full effort. A lane pitch is 2 mm. Bends are all turning divided by 90°; the
        lower bound is the sum of the distances between the ends of the wires, along and across. How fast it is stands elsewhere:
        nothing here depends on the machine.

        The examples are measured by `PictureMeasurer` on the SVG alone, the five layout cases (invented circuits in
        `tests/WireText.Tests/Drawing/Layout/Cases`) by `LayoutMeasure` on the finished geometry. Neither shares code with what places
        parts and routes wires. The targets were set before the router was written; there are none for the examples.

        """;

    private const string GivenBaselines = """

        ## Beside general-purpose programs, places given

        The figures of the other programs were measured beforehand, by a tool of its own with the same definitions, on the same five
        cases; they are copied here and no test repeats them. Best effort was made for each: lugs as small nodes or pins, landing points
        fixed. Versions: Graphviz 2.43 (`neato -n2`), libavoid 0.4.5 (WebAssembly), MSAGL 1.1.24 (JavaScript), elkjs 0.12.1.

        Each cell: crossings / hard faults, which here are wires on one another, through bodies, on a foreign lug and not routed. Bends
        and length are for c4.

        | program | c1 | c2 | c3 | c4 | c5 | bends | length ÷ lower bound |
        | --- | --- | --- | --- | --- | --- | --- | --- |
        | Graphviz, ortho | 5/0 | 16/1 | 29/0 ¹ | 52/0 ¹ | crash | 62 | 1.22 |
        | Graphviz, spline | 3/4 | 14/8 | 24/15 | 70/13 | 89/25 | 25 ² | 0.95 |
        | MSAGL, rectilinear | 5/1 | 21/10 | 17/10 | 46/18 | 57/37 | 82 | 1.13 |
        | MSAGL, spline | 4/3 | 12/6 | 22/16 | 77/7 | 99/33 | 35 ² | 0.98 |
        | MSAGL, bundles | 4/0 | 15/2 | 21/5 | 49/6 | 85/25 | 43 ² | 0.99 |
        | libavoid | 5/0 | 16/0 | 32/4 | 45/5 | 91/12 | 63 | 1.14 |
        | libavoid, ends nudged | 5/0 | 16/0 | 28/0 ¹ | 42/2 | 81/5 | 63 | 1.14 |
        | libavoid, crossing penalty 80 | 5/0 | 12/1 | 21/7 | 33/7 | 80/15 | 67 | 1.18 |
        | libavoid, the same, a pin for each wire end | 5/0 | 12/1 | 18/4 | 33/7 | 65/6 | 67 | 1.18 |

        """;

    private const string SearchedBaselines = """

        ## Beside general-purpose programs, places searched

        Bends and metres of wire are for c4 (the other programs' lengths were noted in px at 10 px a pitch, which is 0.2 mm a px).

        | program | c1 | c2 | c3 | c4 | c5 | bends | wire, m |
        | --- | --- | --- | --- | --- | --- | --- | --- |
        | ELK layered, its own router | 12/4 | 50/17 | 61/19 | 74/18 | 111/25 | 84 | 2.60 |
        | ELK layered, a port for each wire end | 1/0 | 11/0 | 16/0 | 28/0 | 79/0 | 86 | 2.61 |

        """;
}
