using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Geometry;

namespace WireText.Tests.Drawing.Layout;

/// <summary>A capacitor and a resistor between the same two lugs, as in a treble bleed: no lead of one crosses one of the other.</summary>
public class ParallelPartTests
{
    private const string Bleed = """
        circuit "treble bleed"
        pickup   neck    single-coil
        pot      vol     250k audio
        jack     out     mono
        resistor bleed-r 150k from vol.3 to vol.2
        cap      bleed-c 1n   from vol.3 to vol.2
        wire     neck.hot    to vol.3      white
        wire     vol.1       to vol.case   bare
        wire     vol.2       to out.tip    blue
        wire     neck.ground to vol.case   black
        wire     vol.case    to out.sleeve black
        """;

    private const string Arranged = Bleed + "\narrange\n    neck .\n    vol out\n";

    [Theory]
    [InlineData(Bleed, LayoutEffort.Quick)]
    [InlineData(Bleed, LayoutEffort.Full)]
    [InlineData(Arranged, LayoutEffort.Quick)]
    [InlineData(Arranged, LayoutEffort.Full)]
    public void Lay_TwoPartsBetweenTheSameLugs_StandOneBehindTheOther(string text, LayoutEffort effort)
    {
        var laid = Lay(text, effort);
        var (near, far) = (PartOf(laid, "bleed-r"), PartOf(laid, "bleed-c"));
        var lugs = PartOf(laid, "vol");

        Assert.Equal(near.Turn, far.Turn);
        Assert.True(near.At.X == far.At.X || near.At.Y == far.At.Y, $"{near.At} {far.At}");
        Assert.True(Apart(lugs, far) > Apart(lugs, near), "the second is nearer than the first");
        Assert.Empty(laid.Unrouted);
        // A hasty search may still lead one round the other.
        Assert.Empty(effort == LayoutEffort.Full ? CrossingsOfLeads(laid) : []);
    }

    [Theory]
    [InlineData(Bleed)]
    [InlineData(Arranged)]
    public void Lay_TwoPartsBetweenTheSameLugs_HaveTheirNamesBesideThem(string text)
    {
        var laid = Lay(text, LayoutEffort.Full);

        foreach (var part in new[] { PartOf(laid, "bleed-r"), PartOf(laid, "bleed-c") })
        {
            // No wire has room between: a lane and the air beside it are wider.
            Assert.InRange(Box.Distance(part.Label!.Value, BodyOf(part)), 0.3, 1);
        }
    }

    [Fact]
    public void Lay_TheSecondWrittenTheOtherWayRound_IsTurnedWithItsLeads()
    {
        var laid = Lay(
            Bleed.Replace("1n   from vol.3 to vol.2", "1n   from vol.2 to vol.3", StringComparison.Ordinal),
            LayoutEffort.Full
        );

        Assert.Equal(180, Math.Abs(PartOf(laid, "bleed-r").Turn - PartOf(laid, "bleed-c").Turn));
        Assert.Empty(CrossingsOfLeads(laid));
    }

    [Fact]
    public void Lay_ThePlaceBehindTaken_FindsAnother()
    {
        var first = PartOf(Lay(Bleed), "bleed-r").At;
        var taken = Lay(
            FormattableString.Invariant(
                $"{Bleed}\nmetal plate \"in the way\"\nplace plate at {first.X},{first.Y + 16}\n"
            )
        );

        Assert.Equal(2, taken.Parts.Count(part => part.Part.Id is "bleed-r" or "bleed-c"));
    }

    private static LayoutResult Lay(string text, LayoutEffort effort = LayoutEffort.Quick) =>
        LayoutEngine.Lay(FaceBuilder.BuildProblem(Drawings.CircuitOf(text)), effort);

    private static PlacedPart PartOf(LayoutResult laid, string name) => laid.Parts.Single(part => part.Part.Id == name);

    private static Box BodyOf(PlacedPart part) => part.Pose.OnPage(part.Part.Body[0]).Bounds;

    private static double Apart(PlacedPart a, PlacedPart b) => Math.Abs(a.At.X - b.At.X) + Math.Abs(a.At.Y - b.At.Y);

    private static IEnumerable<string> CrossingsOfLeads(LayoutResult laid)
    {
        var leads = laid.Wires.Where(wire => wire.Wire.Id.Contains("bleed", StringComparison.Ordinal)).ToList();
        Assert.Equal(4, leads.Count);
        foreach (var lead in leads)
        {
            foreach (var at in lead.Hops.Concat(lead.Gaps))
            {
                if (leads.Any(other => other != lead && LayoutMeasure.Apart(at, other.Points) < 1e-6))
                {
                    yield return $"{lead.Wire.Id} at {at}";
                }
            }
        }
    }
}
