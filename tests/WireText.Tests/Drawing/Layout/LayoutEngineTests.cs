using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsCheck;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;
using WireText.Testing;
using Size = WireText.Geometry.Size;

namespace WireText.Tests.Drawing.Layout;

public class LayoutEngineTests
{
    public static TheoryData<LayoutEffort> Efforts() => new(LayoutEffort.Quick, LayoutEffort.Full);

    [Theory, MemberData(nameof(Efforts))]
    public void Lay_RandomProblem_DrawsOnlyLegalWires(LayoutEffort effort)
    {
        Samples.Each(
            RandomLayouts.Problem(mostParts: 7, mostWires: 14),
            effort == LayoutEffort.Quick ? 150 : 25,
            print: Describe,
            judge: problem =>
            {
                var result = LayoutEngine.Lay(problem, effort);

                LegalLayout.Check(problem, result);
            }
        );
    }

    [Fact]
    public void Lay_RandomProblemWithoutGivenPlaces_RoutesEveryWireThatJoinsTwoEnds() =>
        Samples.Each(
            RandomLayouts
                .Problem(mostParts: 6, mostWires: 8)
                .Select(problem =>
                    problem with
                    {
                        Parts = [.. problem.Parts.Select(part => part with { GivenAt = null })],
                        Wires = [.. problem.Wires.Where(wire => wire.From != wire.To)],
                    }
                ),
            count: 100,
            print: Describe,
            judge: problem =>
            {
                var result = LayoutEngine.Lay(problem, LayoutEffort.Quick);

                Assert.DoesNotContain(
                    new LayoutMeasure(result, LayoutMeasure.CrowdedPartsSlant).Faults,
                    fault => fault.Kind != LayoutFaultKind.CrampedHop
                );
            }
        );

    [Fact]
    public void Lay_ShuffledProblemInAnotherCulture_GivesTheSameResult() =>
        Samples.Each(
            Gen.Select(RandomLayouts.Problem(6, 10), Gen.Int),
            count: 30,
            print: sample => Describe(sample.Item1),
            judge: sample =>
            {
                var (problem, seed) = sample;
                var expected = LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Quick));
                var shuffled = problem with
                {
                    Parts = Shuffled(problem.Parts, seed),
                    Wires = Shuffled(problem.Wires, seed + 1),
                };

                Assert.Equal(
                    expected,
                    OtherCulture.Run(() => LayoutText.Of(LayoutEngine.Lay(shuffled, LayoutEffort.Quick)))
                );
            }
        );

    // Routings use the memory of those before them again.
    [Fact]
    public void Lay_AfterALargerProblem_GivesTheSameResult()
    {
        var problem = LayoutCase.Read("c2-duo-lever-mute", isGiven: true);
        var first = LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Quick));

        LayoutEngine.Lay(LayoutCase.Read("c5-dense-fourpole", isGiven: true), LayoutEffort.Quick);

        Assert.Equal(first, LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Quick)));
    }

    [Theory]
    [InlineData(LayoutEffort.Quick, true)]
    [InlineData(LayoutEffort.Quick, false)]
    [InlineData(LayoutEffort.Full, true)]
    [InlineData(LayoutEffort.Full, false)]
    public void Lay_ThatNobodyWaitsFor_StopsAndSpoilsNoLaterOne(LayoutEffort effort, bool isGiven)
    {
        var problem = LayoutCase.Read("c2-duo-lever-mute", isGiven);
        var whole = LayoutText.Of(LayoutEngine.Lay(problem, effort));
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => LayoutEngine.Lay(problem, effort, cancelled.Token));

        Assert.Equal(whole, LayoutText.Of(LayoutEngine.Lay(problem, effort)));
    }

    [Theory]
    [InlineData(LayoutEffort.Quick, true, 2_000)]
    [InlineData(LayoutEffort.Quick, false, 20_000)]
    [InlineData(LayoutEffort.Full, true, 60_000)]
    [InlineData(LayoutEffort.Full, false, 60_000)]
    public void Lay_WithLessWorkThanItTakes_ListsWiresAndDrawsTheRestLegally(
        LayoutEffort effort,
        bool isGiven,
        long states
    )
    {
        var problem = LayoutCase.Read("c5-dense-fourpole", isGiven);

        var stopped = LayoutEngine.Lay(problem, effort, new LayoutBounds { States = states });

        Assert.InRange(stopped.States, states / 2, states);
        Assert.NotEmpty(stopped.Unrouted);
        Assert.Equal(problem.Wires.Length, stopped.Wires.Length + stopped.Unrouted.Length);
        Assert.Equal(stopped.Parts.Length, problem.Parts.Length);
        Assert.DoesNotContain(new LayoutMeasure(stopped).Faults, fault => fault.Kind != LayoutFaultKind.Unrouted);
    }

    [Theory]
    [MemberData(nameof(Efforts))]
    public void Lay_WithoutWork_PlacesEveryPart(LayoutEffort effort)
    {
        var problem = LayoutCase.Read("c2-duo-lever-mute", isGiven: false);

        var stopped = LayoutEngine.Lay(problem, effort, new LayoutBounds { States = 0 });

        Assert.Equal(problem.Parts.Length, stopped.Parts.Length);
        Assert.Equal(problem.Wires.Length, stopped.Unrouted.Length);
        Assert.Equal(0, stopped.States);
    }

    [Fact]
    public void Lay_TheDensestCase_StaysFarBelowTheMostWork() =>
        Assert.InRange(
            LayoutEngine.Lay(LayoutCase.Read("c5-dense-fourpole", isGiven: true), LayoutEffort.Full).States,
            1,
            LayoutEngine.MostStates / 2
        );

    [Theory]
    [InlineData(LayoutEngine.MostWiresAtFullEffort, false)]
    [InlineData(LayoutEngine.MostWiresAtFullEffort + 1, true)]
    public void Lay_MoreWiresThanFullEffortIsFor_IsLaidAtQuickEffort(int wires, bool isQuick)
    {
        var littleWork = new LayoutBounds { States = 40_000 };
        var pots = Enumerable.Range(0, 12).Select(pot => TestParts.Pot($"p{pot}")).ToImmutableArray();
        var problem = Problem(
            pots,
            [
                .. Enumerable
                    .Range(0, wires)
                    .Select(i => Wire($"w{i}", $"p{i % 12}.{i % 3}", $"p{(i + 1 + (i / 12)) % 12}.2")),
            ]
        );

        var full = LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Full, littleWork));
        var quick = LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Quick, littleWork));

        Assert.Equal(isQuick, full == quick);
    }

    [Theory]
    [InlineData("c2-duo-lever-mute")]
    [InlineData("c4-twin-hb-pushpull")]
    public void Lay_ShuffledCase_GivesTheSameResultAtFullEffort(string name)
    {
        var problem = LayoutCase.Read(name, isGiven: true);
        var shuffled = problem with { Parts = Shuffled(problem.Parts, 3), Wires = Shuffled(problem.Wires, 4) };

        Assert.Equal(
            LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Full)),
            LayoutText.Of(LayoutEngine.Lay(shuffled, LayoutEffort.Full))
        );
    }

    [Fact]
    public void Lay_NothingAtAll_GivesNothing()
    {
        var result = LayoutEngine.Lay(new LayoutProblem([], [], [], []), LayoutEffort.Full);

        Assert.Empty(result.Parts);
        Assert.Empty(result.Wires);
        Assert.Empty(result.Unrouted);
    }

    [Fact]
    public void Lay_WireFromALugToItselfOrToNoLug_IsUnrouted()
    {
        var problem = Problem([TestParts.Pot("vol")], Wire("loop", "vol.0", "vol.0"), Wire("lost", "vol.0", "out.tip"));

        Assert.Equal(
            ["loop", "lost"],
            LayoutEngine.Lay(problem, LayoutEffort.Quick).Unrouted.Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Lay_SixWiresOnOneLug_AreAllDrawnApart()
    {
        var wires = Enumerable
            .Range(0, 6)
            .Select(i => Wire($"w{i}", "vol.1", i < 3 ? $"tone.{i}" : $"out.{i - 3}"))
            .ToArray();
        var problem = Problem([TestParts.Pot("vol"), TestParts.Pot("tone"), TestParts.Pickup("out")], wires);

        Assert.Empty(new LayoutMeasure(LayoutEngine.Lay(problem, LayoutEffort.Full)).Faults);
    }

    [Fact]
    public void Lay_TwoWiresBetweenTheSameLugs_AreBothDrawn()
    {
        var problem = Problem(
            [TestParts.Pot("vol"), TestParts.Pot("tone")],
            Wire("a", "vol.1", "tone.1"),
            Wire("b", "vol.1", "tone.1")
        );

        Assert.Empty(new LayoutMeasure(LayoutEngine.Lay(problem, LayoutEffort.Quick)).Faults);
    }

    [Fact]
    public void Lay_GivenPlaceOffTheLattice_IsObeyedExactly()
    {
        var given = TestParts.Pot("vol") with { GivenAt = new Point(31.37, 18.91), GivenTurn = 270 };
        var problem = Problem([given, TestParts.Jack("out")], Wire("w", "vol.1", "out.0"));

        var result = LayoutEngine.Lay(problem, LayoutEffort.Quick);

        var placed = result.Parts.Single(part => part.Part.Id == "vol");
        Assert.Equal(new Point(31.37, 18.91), placed.At);
        Assert.Equal(270, placed.Turn);
        Assert.Empty(new LayoutMeasure(result).Faults);
    }

    [Fact]
    public void Lay_Arrangement_PutsPartsInItsRowsAndColumns()
    {
        var problem = Problem(
            [TestParts.Pot("a"), TestParts.Pot("b"), TestParts.Pot("c"), TestParts.Jack("out")],
            Wire("w", "a.1", "c.1")
        ) with
        {
            Arrangement =
            [
                ["c", null, "a"],
                ["b", "out"],
            ],
        };

        var at = LayoutEngine
            .Lay(problem, LayoutEffort.Quick)
            .Parts.ToDictionary(part => part.Part.Id, part => part.At);

        Assert.True(at["c"].X < at["out"].X && at["out"].X < at["a"].X);
        Assert.Equal(at["c"].Y, at["a"].Y, tolerance: 1.01);
        Assert.True(at["b"].Y > at["c"].Y + 24);
    }

    [Fact]
    public void Lay_PartsTooFarApart_AreShownWithoutWires()
    {
        var far = TestParts.Pot("far") with { GivenAt = new Point(1e9, 1e9) };
        var problem = Problem(
            [TestParts.Pot("near") with { GivenAt = default(Point) }, far],
            Wire("w", "near.1", "far.1")
        );

        var result = LayoutEngine.Lay(problem, LayoutEffort.Full);

        Assert.Equal("w", Assert.Single(result.Unrouted));
        Assert.Equal(2, result.Parts.Length);
    }

    [Fact]
    public void Lay_BraidedCable_CoversItsCoreAndBreaksOutToItsOwnLugs()
    {
        var problem = Problem([TestParts.Pickup("neck"), TestParts.Pot("vol")], Wire("core", "neck.0", "vol.0")) with
        {
            Cables = [new LayoutCable("cable", ["core"], "braid", "neck.1", "vol.case")],
        };

        var result = LayoutEngine.Lay(problem, LayoutEffort.Full);

        var braid = Assert.Single(result.Braids);
        Assert.Equal(["neck.1", "vol.case"], braid.Tails.Select(tail => tail.Wire.To));
        Assert.True(Assert.Single(braid.Sheath).Length >= 2);
        // Each tail leaves the braid a little inside it, not where the core comes out: it is not soldered to the core.
        Assert.Equal(1.2, LayoutMeasure.Apart(braid.Sheath[0][0], braid.Tails[0].Points[0]), tolerance: 1e-6);
        Assert.Equal(1.2, LayoutMeasure.Apart(braid.Sheath[0][^1], braid.Tails[1].Points[0]), tolerance: 1e-6);
        Every.Item(
            braid.Tails,
            tail => Assert.True(LayoutMeasure.Apart(tail.Points[0], braid.Sheath[0]) < 1e-6, $"{tail.Points[0]}")
        );
        Assert.Empty(new LayoutMeasure(result).Faults);
    }

    [Theory]
    [InlineData(LayoutEffort.Quick)]
    [InlineData(LayoutEffort.Full)]
    public void Lay_CoresOfOneCable_RunSideBySide(LayoutEffort effort)
    {
        // Lugs in another order, on parts that do not stand in one line: apart, each core would take its own way.
        var problem = Problem(
            [
                TestParts.Pickup("neck") with
                {
                    GivenAt = new Point(0, 0),
                },
                TestParts.Lever("sel") with
                {
                    GivenAt = new Point(70, 90),
                },
                TestParts.Pot("vol") with
                {
                    GivenAt = new Point(0, 70),
                },
            ],
            Wire("a", "neck.0", "sel.0"),
            Wire("b", "neck.2", "sel.3"),
            Wire("c", "neck.4", "sel.1"),
            Wire("d", "neck.1", "vol.0"),
            Wire("e", "vol.1", "sel.2")
        );
        var cable = new LayoutCable("cable", ["a", "b", "c"], null, null, null);

        var apart = LayoutEngine.Lay(problem, effort);
        var together = LayoutEngine.Lay(problem with { Cables = [cable] }, effort);

        Assert.Empty(new LayoutMeasure(together).Faults);
        Assert.InRange(ShareInCompany(together, "b", "a", "c"), 0.66, 1);
        Assert.InRange(ShareInCompany(together, "c", "a", "b"), 0.66, 1);
        Assert.True(
            ShareInCompany(apart, "b", "a", "c") < ShareInCompany(together, "b", "a", "c"),
            "without a cable the cores would run together just as much: this circuit shows nothing"
        );
    }

    /// <summary>How much of a wire's way runs within two lanes of one of the others and the same way.</summary>
    private static double ShareInCompany(LayoutResult result, string id, params string[] others)
    {
        const double Near = 2.5 * Tokens.LanePitch;
        var path = Steps(result, id);
        var company = others.SelectMany(other => Steps(result, other)).ToList();
        var shared = path.Count(step =>
            company.Exists(other =>
                other.IsUpright == step.IsUpright
                && Math.Max(Math.Abs(other.At.X - step.At.X), Math.Abs(other.At.Y - step.At.Y)) < Near
            )
        );
        return (double)shared / path.Count;
    }

    private static List<(Point At, bool IsUpright)> Steps(LayoutResult result, string id)
    {
        const double Step = 0.5;
        var points = result.Wires.Single(wire => wire.Wire.Id == id).Points;
        var steps = new List<(Point, bool)>();
        for (var i = 1; i < points.Length; i++)
        {
            var (from, to) = (points[i - 1], points[i]);
            var (dx, dy) = (to.X - from.X, to.Y - from.Y);
            var count = (int)((Math.Abs(dx) + Math.Abs(dy)) / Step);
            for (var k = 0; k < count; k++)
            {
                steps.Add(
                    (new Point(from.X + (dx * k / count), from.Y + (dy * k / count)), Math.Abs(dy) > Math.Abs(dx))
                );
            }
        }

        return steps;
    }

    private static LayoutProblem Problem(ImmutableArray<LayoutPart> parts, params LayoutWire[] wires) =>
        new(parts, [.. wires], [], []);

    private static LayoutWire Wire(string id, string from, string to) =>
        new(id, from, to, "red", WireRank.Signal, new Size(4, 2.2));

    private static ImmutableArray<T> Shuffled<T>(ImmutableArray<T> items, int seed) =>
        [
            .. items
                .Select((item, i) => (item, Key: unchecked(((i + 1) * 40503) ^ (seed * 7919)) % 1009))
                .OrderBy(p => p.Key)
                .Select(p => p.item),
        ];

    private static string Describe(LayoutProblem problem)
    {
        var text = new StringBuilder("\n");
        foreach (var part in problem.Parts)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{part.Id} {part.Zone} lugs {part.Lugs.Length} at {part.GivenAt} turn {part.GivenTurn}\n"
            );
        }

        foreach (var wire in problem.Wires)
        {
            text.Append(CultureInfo.InvariantCulture, $"{wire.Id} {wire.From} {wire.To}\n");
        }

        return text.ToString();
    }
}
