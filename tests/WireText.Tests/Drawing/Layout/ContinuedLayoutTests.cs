using System.Globalization;
using CsCheck;
using WireText.Drawing.Layout;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Layout;

/// <summary>Layouts that go on from the one before, as in a picture beside a text that somebody writes.</summary>
public class ContinuedLayoutTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Fact]
    public void Continue_WithAWireMore_MovesNoPartAndDrawsOnlyLegalWires() =>
        Samples.Each(
            RandomLayouts.Problem(mostParts: 6, mostWires: 10).Where(problem => problem.Wires.Length > 0),
            count: 100,
            judge: problem =>
            {
                var before = problem with { Wires = [.. problem.Wires.Skip(1)] };
                var laid = LayoutEngine.Lay(before, LayoutEffort.Quick);

                var now = LayoutEngine.Continue(problem, before, laid);

                LegalLayout.Check(problem, now);
                if (now.Unrouted.IsEmpty)
                {
                    var joined = before
                        .Wires.Where(wire => wire.From != wire.To)
                        .SelectMany(wire => new[] { wire.From, wire.To })
                        .Select(end => end.Split('.')[0])
                        .ToHashSet();
                    Assert.Equal(Poses(laid, joined), Poses(now, joined));
                }
                else
                {
                    // Then it is laid as if it were alone.
                    Assert.Equal(LayoutEngine.Lay(problem, LayoutEffort.Quick).Unrouted.AsEnumerable(), now.Unrouted);
                }
            }
        );

    [Fact]
    public void Continue_WithAPartAndItsWiresGone_DrawsOnlyLegalWires() =>
        Samples.Each(
            RandomLayouts.Problem(mostParts: 6, mostWires: 10).Where(problem => problem.Parts.Length > 1),
            count: 100,
            judge: problem =>
            {
                var laid = LayoutEngine.Lay(problem, LayoutEffort.Quick);
                var gone = problem.Parts[0];
                bool IsOf(string end) => end.Split('.')[0] == gone.Id;
                var without = problem with
                {
                    Parts = [.. problem.Parts.Skip(1)],
                    Wires = [.. problem.Wires.Where(wire => !IsOf(wire.From) && !IsOf(wire.To))],
                };

                LegalLayout.Check(without, LayoutEngine.Continue(without, problem, laid));
                LegalLayout.Check(
                    problem,
                    LayoutEngine.Continue(problem, without, LayoutEngine.Lay(without, LayoutEffort.Quick))
                );
            }
        );

    /// <summary>Each wire taken out of an example and written again: everything else stands still, and all is as legal as before.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void Wire_TakenOutAndWrittenAgain_MovesNoPart(string example)
    {
        var whole = Lines(example);
        var start = Compile(whole);
        var places = Places(start.PlanFor(LayoutEffort.Quick)!.Layout);
        var edits = Enumerable
            .Range(0, whole.Length)
            .Where(line => whole[line].StartsWith("wire ", StringComparison.Ordinal));

        Every.Item(
            edits,
            line =>
            {
                var without = start.WithPlacesHeld(Source([.. whole.Where((_, i) => i != line)]));
                Assert.Equal(places, Places(without.PlanFor(LayoutEffort.Quick)!.Layout));
                var again = without.WithPlacesHeld(Source(whole)).PlanFor(LayoutEffort.Quick)!.Layout;
                Assert.Equal(places, Places(again));
                Assert.Empty(again.Unrouted);
                AssertHasNoFault(again);
            }
        );
    }

    /// <summary>An example written line by line has in the end all its wires, none of them illegal.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void Example_WrittenLineByLine_HasEveryWireInTheEnd(string example)
    {
        var lines = Lines(example);
        var compiled = Compile([]);
        for (var line = 1; line <= lines.Length; line++)
        {
            compiled = compiled.WithPlacesHeld(Source(lines[..line]));
            _ = compiled.PlanFor(LayoutEffort.Quick);
        }

        var layout = compiled.PlanFor(LayoutEffort.Quick)!.Layout;
        Assert.Empty(layout.Unrouted);
        AssertHasNoFault(layout);
        Assert.Equal(Compile(lines).PlanFor(LayoutEffort.Quick)!.Layout.Wires.Length, layout.Wires.Length);
    }

    [Fact]
    public void Part_WithAnotherName_StaysWhereItIs()
    {
        const string Text = """
            pickup neck single
            pot vol 250k
            jack out mono
            wire neck.hot to vol.3 white
            wire vol.2 to out.tip white
            wire neck.cold to vol.case black
            wire vol.1 to vol.case bare
            wire vol.case to out.sleeve black
            """;
        var start = Compilation.Of(new SourceText("a.wiring", Text), NoSources.Instance);
        var before = start.PlanFor(LayoutEffort.Quick)!.Layout.Parts.Single(part => part.Part.Id == "vol");

        var renamed = start.WithPlacesHeld(
            new SourceText("a.wiring", Text.Replace("vol", "loudness", StringComparison.Ordinal))
        );

        var after = renamed.PlanFor(LayoutEffort.Quick)!.Layout.Parts.Single(part => part.Part.Id == "loudness");
        Assert.Equal(before.Pose, after.Pose);
    }

    [Fact]
    public void Text_ThatIsBrokenForAMoment_LosesNoPlace()
    {
        var lines = Lines(Repository.ExampleNames[0]);
        var start = Compile(lines);
        var places = Places(start.PlanFor(LayoutEffort.Quick)!.Layout);

        var broken = start.WithPlacesHeld(Source([.. lines, "wire"]));
        _ = broken.PlanFor(LayoutEffort.Quick);
        var mended = broken.WithPlacesHeld(Source([.. lines, "# and on"]));

        Assert.Equal(places, Places(mended.PlanFor(LayoutEffort.Quick)!.Layout));
    }

    [Fact]
    public void Continue_FromALatticeTooLargeToKeep_LaysAsIfItWereAlone()
    {
        var start = Compilation.Of(Source(Lay(1200, "")), NoSources.Instance);
        _ = start.PlanFor(LayoutEffort.Quick);
        var text = Lay(1200, "wire vol.1 to out.sleeve black");

        var now = start.WithPlacesHeld(Source(text)).PlanFor(LayoutEffort.Quick)!;

        var alone = Compilation.Of(Source(text), NoSources.Instance).PlanFor(LayoutEffort.Quick)!;
        Assert.Equal(LayoutText.Of(alone.Layout), LayoutText.Of(now.Layout));

        static string[] Lay(int away, string more) =>
            [
                "pot vol 250k",
                "jack out mono",
                "place vol at 0,0",
                $"place out at {away},{away}",
                "wire vol.2 to out.tip white",
                more,
            ];
    }

    /// <summary>The layout that a command draws never depends on what was drawn before.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void With_AnotherText_LaysItAsIfItWereAlone(string example)
    {
        var lines = Lines(example);
        var start = Compile(lines[..^2]);
        _ = start.PlanFor(LayoutEffort.Quick);

        var followed = start.With(Source(lines)).PlanFor(LayoutEffort.Quick);

        Assert.Equal(
            LayoutText.Of(Compile(lines).PlanFor(LayoutEffort.Quick)!.Layout),
            LayoutText.Of(followed!.Layout)
        );
    }

    private static IEnumerable<(string, WireText.Geometry.Point, int)> Poses(
        LayoutResult layout,
        HashSet<string> parts
    ) => layout.Parts.Where(part => parts.Contains(part.Part.Id)).Select(part => (part.Part.Id, part.At, part.Turn));

    /// <remarks>At quick effort some crossing is drawn as a gap, with an earlier picture and without.</remarks>
    private static void AssertHasNoFault(LayoutResult result) =>
        Assert.DoesNotContain(new LayoutMeasure(result).Faults, fault => fault.Kind != LayoutFaultKind.CrampedHop);

    private static string[] Lines(string example) =>
        File.ReadAllText(Repository.PathOf("examples", example)).Split('\n');

    private static SourceText Source(string[] lines) => new("a.wiring", string.Join('\n', lines));

    private static Compilation Compile(string[] lines) => Compilation.Of(Source(lines), NoSources.Instance);

    private static string[] Places(LayoutResult layout) =>
        [
            .. layout
                .Parts.OrderBy(part => part.Part.Id, StringComparer.Ordinal)
                .Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Part.Id} {part.At} {part.Turn}")),
        ];
}
