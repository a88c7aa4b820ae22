using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Geometry;
using WireText.Output;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>One circuit drawn against an earlier one: what comes off, what is new and what stays are all there, by number.</summary>
public partial class ChangePictureTests
{
    private const string Stock = """
        pickup neck single-coil
        pot    vol  250k audio
        cap    dark 47n from vol.3 to vol.case
        jack   out  mono
        wire   neck.hot    to vol.3      white
        wire   neck.ground to vol.case   black
        wire   vol.1       to vol.case   bare
        wire   vol.2       to out.tip    red
        wire   vol.case    to out.sleeve black

        """;

    /// <summary>Each example against the one before it: circuits that have little in common.</summary>
    public static TheoryData<string, string> Pairs
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            string[] names = [.. Repository.ExampleNames];
            for (var i = 0; i < names.Length; i++)
            {
                pairs.Add(names[i], names[(i + names.Length - 1) % names.Length]);
            }

            return pairs;
        }
    }

    [Theory, MemberData(nameof(Pairs))]
    public void Picture_AgainstAnotherExample_HasEveryChange_AndMovesNoPart(string name, string old)
    {
        var (after, before) = (
            Compiled(File.ReadAllText(Repository.PathOf("examples", name))),
            Compiled(File.ReadAllText(Repository.PathOf("examples", old)))
        );
        var overlay = Overlay.Of(CircuitComparison.Of(before.Circuit!, after.Circuit!));
        var plan = after.PlanFor(LayoutEffort.Quick)!;
        var both = plan.Under(overlay, LayoutEffort.Quick, CancellationToken.None)!;

        Assert.Equal(Places(plan, after.Circuit!), Places(both, after.Circuit!));
        Assert.Empty(both.Layout.Unrouted);
        Assert.Equal(
            overlay.Circuit.Wires.Count(wire => wire.Kind != WireKind.Braid && wire.From >= 0 && wire.To >= 0),
            both.Layout.Wires.Length
        );
        var svg = SvgOf(both, overlay);
        Every.Item(
            overlay.Changes,
            change =>
            {
                var isSeen = overlay.PartOf(change) is not null || overlay.WiresOf(change).Any();
                var number = change.Number.ToString(CultureInfo.InvariantCulture);
                Assert.True(!isSeen || svg.Contains($">{number}</text>", StringComparison.Ordinal), change.Words);
            }
        );
    }

    /// <summary>Worked out by hand: what the wires and parts of <see cref="Stock"/> become.</summary>
    [Fact]
    public void Overlay_OfAMod_HasWhatComesWhatGoesAndWhatStays()
    {
        var overlay = OverlayOf(
            Stock
                .Replace(
                    "cap    dark 47n from vol.3 to vol.case\n",
                    "button mute momentary\n",
                    StringComparison.Ordinal
                )
                .Replace("vol.2       to out.tip    red", "vol.2       to mute.1     red", StringComparison.Ordinal)
        );

        Assert.Equal(
            [
                "neck.hot--vol.3 Stays",
                "neck.ground--vol.case Stays",
                "vol.1--vol.case Stays",
                "vol.2--mute.1 Comes",
                "vol.case--out.sleeve Stays",
                "dark.1--vol.3 Goes",
                "dark.2--vol.case Goes",
                "vol.2--out.tip Goes",
            ],
            overlay.Circuit.Wires.Select(wire => $"{wire.Id} {overlay.Wires[wire.Index]}")
        );
        Assert.Equal(
            ["neck Stays", "vol Stays", "mute Comes", "out Stays", "dark Goes"],
            overlay.Circuit.Parts.Select(part => $"{part.Name} {overlay.Parts[part.Index]}")
        );
        Assert.Equal(
            [
                "1 lifted: dark.1 to vol.3 bare",
                "2 lifted: dark.2 to vol.case bare",
                "3 out: cap dark 47n",
                "4 in: button mute momentary",
                "5 moved: vol.2 to out.tip red → vol.2 to mute.1 red",
            ],
            overlay.Changes.Select(change => $"{change.Number} {ChangeList.WordOf(change.Section)}: {change.Words}")
        );
    }

    [Fact]
    public void Picture_CutsWhatGoes_AndNothingElse()
    {
        var text = Stock.Replace("neck.ground to vol.case ", "neck.ground to out.sleeve", StringComparison.Ordinal);

        var svg = SvgAgainstStock(text);

        var cut = CutWires().Matches(svg).Select(match => match.Groups["wire"].Value);
        Assert.Equal(["neck.ground--vol.case"], cut);
    }

    /// <summary>The number of a part stands off the ends of wires, or it would be read as the wire's.</summary>
    [Theory, MemberData(nameof(Pairs))]
    public void Picture_HasTheNumbersOfParts_OffTheEndsOfWires(string name, string old)
    {
        const double Apart = 2.5;
        var (after, before) = (
            Compiled(File.ReadAllText(Repository.PathOf("examples", name))),
            Compiled(File.ReadAllText(Repository.PathOf("examples", old)))
        );
        var overlay = Overlay.Of(CircuitComparison.Of(before.Circuit!, after.Circuit!));
        var both = after.PlanFor(LayoutEffort.Quick)!.Under(overlay, LayoutEffort.Quick, CancellationToken.None)!;
        var ends = EndsOfWires(SvgOf(both, overlay));
        var numbers = overlay
            .Changes.Where(change => overlay.PartOf(change) is not null)
            .Select(change => change.Number.ToString(CultureInfo.InvariantCulture))
            .ToHashSet(StringComparer.Ordinal);

        var starts = NumberStarts()
            .Matches(SvgOf(both, overlay))
            .Where(match => numbers.Contains(match.Groups["number"].Value))
            .Select(PointIn)
            .ToList();

        Assert.NotEmpty(starts);
        Every.Item(starts, start => Assert.True(ends.Min(end => Point.Distance(start, end)) > Apart, $"{start}"));
    }

    /// <summary>Findings have numbers too: on a picture of a change there are those of the changes alone.</summary>
    [Fact]
    public void Picture_OfACircuitWithAFinding_HasTheNumbersOfChangesAlone()
    {
        var text = Stock + "metal plate\n";

        Assert.Contains(Compiled(text).Findings, finding => finding.Severity == Severity.Warning);
        var svg = SvgAgainstStock(text);
        Assert.Contains("change-number", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("finding", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_OfTheSameCircuit_SaysSo()
    {
        var svg = SvgAgainstStock(Stock);

        Assert.Contains("Nothing: it is the same circuit", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("stroke-dasharray", svg, StringComparison.Ordinal);
    }

    /// <summary>A part that is another one under the same name, a lug that is gone, a core and its braid, a name that is no word.</summary>
    [Theory]
    [InlineData("pot    vol  250k audio", "switch vol dpdt", "vol~2")]
    [InlineData("cap    dark 47n from vol.3 to vol.case", "resistor dark 4.7k from vol.3 to vol.case", "dark~2")]
    [InlineData("pickup neck single-coil", "pickup neck single-coil-cover", null)]
    public void Overlay_OfOddChanges_IsDrawn(string was, string now, string? name)
    {
        var text = Stock.Replace(was, now, StringComparison.Ordinal);

        var overlay = OverlayOf(text);

        Assert.Equal(name is null ? 0 : 1, overlay.Circuit.Parts.Count(part => part.Name == name));
        Assert.NotEmpty(overlay.Changes);
        Assert.Contains("change-row", SvgAgainstStock(text), StringComparison.Ordinal);
    }

    [Fact]
    public void Overlay_OfACableThatGoes_HasItsCoreAndItsBraid()
    {
        var screened = Stock.Replace(
            "wire   vol.2       to out.tip    red\nwire   vol.case    to out.sleeve black",
            "cable  vol.2 to out.tip red  braid vol.case to out.sleeve",
            StringComparison.Ordinal
        );

        var overlay = Overlay.Of(CircuitComparison.Of(Compiled(screened).Circuit!, Compiled(Stock).Circuit!));

        Assert.Equal(
            ["vol.2--out.tip~2", "vol.case--out.sleeve~2"],
            overlay.Circuit.Wires.Where(wire => overlay.Wires[wire.Index] == Standing.Goes).Select(wire => wire.Id)
        );
    }

    private static Compilation Compiled(string text) =>
        Compilation.Of(new SourceText("test.wiring", text), NoSources.Instance);

    private static Overlay OverlayOf(string text) =>
        Overlay.Of(CircuitComparison.Of(Compiled(Stock).Circuit!, Compiled(text).Circuit!));

    private static string SvgAgainstStock(string text)
    {
        var (overlay, after) = (OverlayOf(text), Compiled(text));
        var plan = after.PlanFor(LayoutEffort.Quick)!.Under(overlay, LayoutEffort.Quick, CancellationToken.None)!;
        return SvgOf(plan, overlay, after.Findings);
    }

    private static string SvgOf(Plan plan, Overlay overlay, ImmutableArray<Finding> findings = default) =>
        SvgWriter.Write(
            plan.Paint(
                overlay.Circuit,
                findings.IsDefault ? [] : findings,
                new DrawOptions(LayoutEffort.Quick, Theme.Light, null)
                {
                    Changes = new ChangesShown(overlay, "stock.wiring"),
                }
            )
        );

    /// <summary>Each part of the later circuit as seen from its first, in whole hundredths of a millimetre.</summary>
    private static IEnumerable<string> Places(Plan plan, Circuit after)
    {
        var names = after.Parts.Select(part => part.Name).ToHashSet(StringComparer.Ordinal);
        var parts = plan.Layout.Parts.Where(part => names.Contains(part.Part.Id)).ToList();
        var origin = parts[0].At;
        return parts.Select(part =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{part.Part.Id} {part.At.X - origin.X:F2} {part.At.Y - origin.Y:F2} {part.Turn}"
            )
        );
    }

    /// <summary>Where the wires begin and end on the page.</summary>
    private static List<Point> EndsOfWires(string svg) =>
        [
            .. Cores()
                .Matches(svg)
                .SelectMany(match => new[] { match.Groups["from"].Value, match.Groups["to"].Value })
                .Select(PointOf),
        ];

    private static Point PointIn(Match match) => PointOf(match.Groups["from"].Value);

    private static Point PointOf(string pair)
    {
        var numbers = pair.Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray();
        return new Point(numbers[0], numbers[1]);
    }

    [GeneratedRegex(
        """class="(core|conductor)" d="M(?<from>[-\d.]+ [-\d.]+)[^"]*?(?<to>[-\d.]+ [-\d.]+)" """,
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Cores();

    [GeneratedRegex(
        """class="change-line" d="M(?<from>[-\d.]+ [-\d.]+)(.(?!</g>))*?class="change-number"[^>]*>(?<number>\d+)<""",
        RegexOptions.ExplicitCapture | RegexOptions.Singleline
    )]
    private static partial Regex NumberStarts();

    [GeneratedRegex("""<g[^>]*data-wire="(?<wire>[^"]*)"[^>]*>(?:(?!</g>).)*class="cut" """, RegexOptions.Singleline)]
    private static partial Regex CutWires();
}
