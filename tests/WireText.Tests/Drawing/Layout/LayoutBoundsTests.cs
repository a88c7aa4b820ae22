using System.Globalization;
using WireText.Drawing.Layout;
using WireText.Geometry;
using WireText.Testing;
using Size = WireText.Geometry.Size;

namespace WireText.Tests.Drawing.Layout;

/// <summary>What is done where a search of the layout has gone as far as it may: each bound is reached, at its own number or at a smaller one.</summary>
public class LayoutBoundsTests
{
    private const string Dense = "c5-dense-fourpole";

    /// <summary>A search begins with rows that are half as wide again as they are many; parts that are only brought near each other lie in a square.</summary>
    [Theory]
    [InlineData(24, 6)]
    [InlineData(25, 5)]
    public void BigParts_PastTheBound_AreOnlyBroughtNearEachOther(int pots, int columns)
    {
        var laid = LayoutEngine.Lay(Tangle(pots, wires: 2 * pots), LayoutEffort.Quick);

        Every.Item(laid.Slots, row => Assert.Equal(columns, row.Length));
        Assert.Equal(pots, laid.Slots.Sum(row => row.Count(part => part is not null)));
    }

    [Fact]
    public void Trials_PastTheBound_LeaveTheBestPlacesSoFar()
    {
        var problem = Tangle(pots: 60, wires: 120);

        double[] ways =
        [
            .. new[] { 0, 10, LayoutBounds.Standard.TrialsAPart }
                .Select(trials => new LayoutBounds { TrialsAPart = trials })
                .Select(bounds => WayOf(problem, LayoutEngine.Lay(problem, LayoutEffort.Quick, bounds))),
        ];

        Assert.Equal(ways.OrderDescending(), ways);
        Assert.Equal(3, ways.Distinct().Count());
    }

    /// <summary>A lattice over 3 m by 3 m has 2.3 million nodes, one over 4.2 m by 4.2 m has 4.4 million.</summary>
    [Theory]
    [InlineData(3_000, true)]
    [InlineData(4_200, false)]
    public void Lattice_PastTheBound_ShowsThePartsAndListsTheWires(double far, bool isDrawn)
    {
        LayoutPart[] parts =
        [
            TestParts.Pot("near") with
            {
                GivenAt = default(Point),
            },
            TestParts.Pot("far") with
            {
                GivenAt = new Point(far, far),
            },
        ];

        var laid = LayoutEngine.Lay(
            new LayoutProblem([.. parts], [Wire(0, "near.1", "far.1")], [], []),
            LayoutEffort.Quick
        );

        Assert.Equal(2, laid.Parts.Length);
        Assert.Equal(isDrawn ? 1 : 0, laid.Wires.Length);
        Assert.Equal(isDrawn ? 0 : 1, laid.Unrouted.Length);
    }

    [Fact]
    public void Rounds_PastTheBound_TakeOutTheWiresInConflict()
    {
        var problem = LayoutCase.Read(Dense, isGiven: true);

        var stopped = LayoutEngine.Lay(problem, LayoutEffort.Quick, new LayoutBounds { Rounds = 0 });

        AssertIsLegal(problem, stopped);
        Assert.NotEqual(LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Quick)), LayoutText.Of(stopped));
    }

    [Fact]
    public void StatesAtQuickEffort_PastTheBound_ListWires()
    {
        const long Most = 1_000;
        var problem = LayoutCase.Read(Dense, isGiven: true);

        var stopped = LayoutEngine.Lay(problem, LayoutEffort.Quick, new LayoutBounds { QuickStates = Most });

        AssertIsLegal(problem, stopped);
        Assert.NotEmpty(stopped.Unrouted);
        // The first picture, and one opened on all sides: the places were given.
        Assert.Equal(2 * Most, stopped.States);
    }

    [Fact]
    public void StatesOfAStart_PastTheBound_ListWires()
    {
        const long Most = 1_000;
        var problem = LayoutCase.Read(Dense, isGiven: true);

        var stopped = LayoutEngine.Lay(problem, LayoutEffort.Full, new LayoutBounds { FullStartStates = Most });

        AssertIsLegal(problem, stopped);
        Assert.NotEmpty(stopped.Unrouted);
        Assert.Equal(2 * 6 * Most, stopped.States);
    }

    [Fact]
    public void StatesThatComparePlaces_PastTheBound_TakeTheScoreSoFar()
    {
        var problem = LayoutCase.Read("c2-duo-lever-mute", isGiven: false);

        var stopped = LayoutEngine.Lay(problem, LayoutEffort.Full, new LayoutBounds { TrialStates = 10 });

        AssertIsLegal(problem, stopped);
        Assert.Empty(stopped.Unrouted);
        Assert.NotEqual(LayoutText.Of(LayoutEngine.Lay(problem, LayoutEffort.Full)), LayoutText.Of(stopped));
    }

    /// <summary>Far more wires than the lanes hold: each picture that is wider is paid for, and the best of them stands.</summary>
    [Fact]
    public void Widenings_PastTheBound_LeaveTheBestPictureSoFar()
    {
        const long Most = 1_000_000;
        var problem = Tangle(pots: 12, wires: 70);

        var laid = Enumerable
            .Range(0, LayoutBounds.Standard.Widenings + 1)
            .Select(widenings => new LayoutBounds { QuickStates = Most, Widenings = widenings })
            .Select(bounds => LayoutEngine.Lay(problem, LayoutEffort.Quick, bounds))
            .ToList();

        // Each picture takes what it may, and what the search for places takes.
        Every.Item(laid, (one, widenings) => Assert.Equal((widenings + 1) * laid[0].States, one.States));
        Every.Item(laid, one => AssertIsLegal(problem, one));
        var unrouted = laid.Select(one => one.Unrouted.Length).ToList();
        Assert.Equal(unrouted.OrderDescending(), unrouted);
        Assert.True(unrouted[^1] < unrouted[0], "wider channels gained nothing: this tangle shows nothing");
        var usual = LayoutEngine.Lay(problem, LayoutEffort.Quick, new LayoutBounds { QuickStates = Most });
        Assert.Equal(LayoutText.Of(laid[^1]), LayoutText.Of(usual));
    }

    private static void AssertIsLegal(LayoutProblem problem, LayoutResult laid)
    {
        Assert.Equal(problem.Parts.Length, laid.Parts.Length);
        Assert.Equal(problem.Wires.Length, laid.Wires.Length + laid.Unrouted.Length);
        Assert.DoesNotContain(
            new LayoutMeasure(laid).Faults,
            fault => fault.Kind is not (LayoutFaultKind.Unrouted or LayoutFaultKind.CrampedHop)
        );
    }

    /// <summary>Pots whose wires lead everywhere.</summary>
    private static LayoutProblem Tangle(int pots, int wires) =>
        new(
            [.. Enumerable.Range(0, pots).Select(pot => TestParts.Pot(Name(pot)))],
            [
                .. Enumerable
                    .Range(0, wires)
                    .Select(i =>
                        Wire(i, $"{Name(i * 7 % pots)}.{i % 3}", $"{Name(((i * 31) + 5) % pots)}.{i * 5 % 3}")
                    ),
            ],
            [],
            []
        );

    private static string Name(int pot) => string.Create(CultureInfo.InvariantCulture, $"p{pot}");

    private static LayoutWire Wire(int number, string from, string to) =>
        new(Name(number), from, to, "red", WireRank.Signal, new Size(4, 2.2));

    /// <summary>The straight ways between the parts that wires join, in millimetres.</summary>
    private static double WayOf(LayoutProblem problem, LayoutResult laid)
    {
        var at = laid.Parts.ToDictionary(part => part.Part.Id, part => part.At);
        return problem.Wires.Sum(wire =>
        {
            var (from, to) = (at[wire.From.Split('.')[0]], at[wire.To.Split('.')[0]]);
            return Math.Abs(from.X - to.X) + Math.Abs(from.Y - to.Y);
        });
    }
}
