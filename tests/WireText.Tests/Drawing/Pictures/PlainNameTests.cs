using WireText.Drawing.Layout;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Measuring;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>Names and tags that cannot be taken for another's: in rows, on the same side of parts alike, at the end of a line where there is no room.</summary>
public class PlainNameTests
{
    /// <summary>What no example has any more; the others are counted in docs/quality.md.</summary>
    private static readonly DoubtKind[] Gone =
    [
        DoubtKind.UnnamedLug,
        DoubtKind.NameBehindAWire,
        DoubtKind.NameOutOfRow,
        DoubtKind.PartNameApart,
        DoubtKind.ShortEnd,
        DoubtKind.CutText,
    ];

    private const string TwoPulls = """
        circuit "two pulls"
        pickup  one humbucker-4
        pickup  two humbucker-4
        pot     vol-1 push-pull
        pot     vol-2 push-pull
        jack    out
        wire    one.n-start to vol-1.3 red
        wire    two.n-start to vol-2.3 red
        wire    one.n-finish to vol-1.A0 white
        wire    two.n-finish to vol-2.B0 white
        wire    one.s-start to vol-1.A1 green
        wire    two.s-start to vol-2.B1 green
        wire    vol-1.2 to vol-2.2 to out.tip blue
        wire    vol-1.case to vol-2.case to out.sleeve black
        """;

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory, MemberData(nameof(Examples))]
    public void Drawing_OfAnExample_LeavesNoDoubtOfThese(string name) =>
        Assert.DoesNotContain(FullDrawings.MeasureOf(name).Doubts, doubt => Gone.Contains(doubt.Kind));

    [Fact]
    public void Names_OnPartsAlike_StandOnTheSameSides()
    {
        var picture = Drawings.PictureOf(TwoPulls);
        var sides = SidesIn(PictureItems.In(picture.Items.Where(item => item.Class != "title-block")));

        foreach (var lug in Every.Of(["A1", "A0", "A2", "B1", "B0", "B2"]))
        {
            Assert.Equal(sides[$"vol-1.{lug}"], sides[$"vol-2.{lug}"]);
        }
    }

    [Fact]
    public void Names_OfARowWithoutASideForAll_StandOnOneSideButForThoseWithoutRoomThere()
    {
        // One of the random circuits: wires between the lugs of a large switch leave no row a free side.
        const string Text = """
            jack jack0 mono
            resistor resistor1 150k
            switch switch2 lever-5way-4pole
            wire resistor1.1 to switch2.C1 red
            wire switch2.B0 to switch2.B3 white/black
            wire switch2.C5 to switch2.B2 green
            wire switch2.C0 to switch2.B1 yellow
            wire switch2.D5 to switch2.D3 black
            wire switch2.A5 to jack0.sleeve red
            """;
        var drawn = Drawn.Of(
            new SourceText("test.wiring", Text),
            new DrawOptions(LayoutEffort.Quick, WireText.Drawing.Lettering.Theme.Light, null)
        );

        // It was five when in such a row each name went where it could.
        Assert.InRange(Drawings.MeasureOf(drawn).DoubtsOf(DoubtKind.NameOutOfRow).Count(), 0, 2);
    }

    [Fact]
    public void Pull_HasTheNamesOfItsSwitchOnIt_AndTheJointsOfItsCaseBesideIt()
    {
        var items = PictureItems.In(Drawings.PictureOf(TwoPulls, effort: LayoutEffort.Full)).ToList();
        Box[] blocks = [.. items.OfType<RectangleShape>().Where(box => box.Class == "detail").Select(box => box.Box)];
        var names = items.OfType<TextItem>().Where(text => text.Class == "lug-label" && text.Text.Length == 2);
        var joints = items
            .OfType<CircleShape>()
            .Where(joint => joint.Class == "joint" && joint.Shows[0].Value.EndsWith(".case", StringComparison.Ordinal));

        Assert.Equal(2, blocks.Length);
        foreach (var name in Every.Of(names))
        {
            Assert.Contains(blocks, block => block.Contains(name.Bounds));
        }

        foreach (var joint in Every.Of(joints))
        {
            Assert.DoesNotContain(blocks, block => block.DistanceTo(joint.Centre) <= 0);
        }
    }

    [Theory]
    [InlineData(LayoutEffort.Quick)]
    [InlineData(LayoutEffort.Full)]
    public void Joints_OnThePotOfAPull_KeepOffTheNamesOfItsSwitch(LayoutEffort effort)
    {
        var drawn = Drawn.Of(
            new SourceText("test.wiring", TwoPulls),
            new DrawOptions(effort, WireText.Drawing.Lettering.Theme.Light, null)
        );

        Assert.Empty(Drawings.MeasureOf(drawn).DoubtsOf(DoubtKind.JointNearName));
    }

    [Theory, MemberData(nameof(Examples))]
    public void Names_InALargerView_StandOnTheSidesWhereTheyStandInTheDrawing(string name)
    {
        var picture = Drawings.PictureOf(
            File.ReadAllText(Repository.PathOf("examples", name)),
            effort: LayoutEffort.Full
        );
        var drawing = SidesIn(PictureItems.In(picture.Items.Where(item => item.Class != "title-block")));
        var larger = SidesIn(PictureItems.In(picture).OfType<PictureGroup>().Where(group => group.Class == "close-up"));

        // Names in rows only: others go where their wires leave them room.
        foreach (var (lug, side) in larger.Where(lug => lug.Key.Split('.')[1] is [>= 'A' and <= 'D', _]))
        {
            Assert.Equal(drawing[lug], side);
        }
    }

    [Fact]
    public void Name_WithoutRoomBesideItsLug_StandsAtTheEndOfALineFromIt()
    {
        // Twelve wires round the six lugs of a small switch.
        const string Text = """
            circuit "hemmed in"
            switch  turn dpdt
            switch  more slide-dpdt
            jack    out  stereo
            wire    turn.A1 to turn.B2 red
            wire    turn.A2 to turn.B1 blue
            wire    turn.A0 to turn.B0 green
            wire    turn.A1 to turn.A2 white
            wire    turn.B1 to turn.B2 yellow
            wire    turn.A0 to out.tip black
            wire    turn.B0 to out.sleeve grey
            wire    turn.A1 to more.A1 orange
            wire    turn.B2 to more.B2 violet
            wire    more.A0 to out.ring brown
            """;
        var drawn = Drawn.Of(
            new SourceText("test.wiring", Text),
            new DrawOptions(LayoutEffort.Full, WireText.Drawing.Lettering.Theme.Light, null)
        );

        var measure = Drawings.MeasureOf(drawn);

        // The line of a lug's name, and not one that leads to the tag of a wire.
        Assert.Matches("<g class=\"lug\"[^>]*>(?:(?!</g>)[^~])*class=\"leader\"", drawn.Svg!);
        Assert.Empty(measure.DoubtsOf(DoubtKind.UnnamedLug));
        Assert.Empty(measure.Faults);
    }

    [Fact]
    public void Jumpers_OfASwitch_HaveTheirTagsAtTheEndOfALine_AndNeedNoLargerView()
    {
        var measure = FullDrawings.MeasureOf("2-two-pickups-mute.wiring");
        var svg = FullDrawings.Of("2-two-pickups-mute.wiring").Svg!;

        Assert.Equal(measure.TagsWanted, measure.TagsPlaced);
        Assert.Contains("class=\"leader\"", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"close-up\"", svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cap c 22n film from out.tip to out.sleeve", false)]
    [InlineData("resistor c 150k from out.tip to out.sleeve", false)]
    [InlineData("cap c 10u electrolytic from out.tip to out.sleeve", true)]
    public void Numerals_StandOnlyOnLeadsThatMayNotBeChanged(string part, bool hasNumerals)
    {
        var picture = Drawings.PictureOf($"jack out mono\n{part}\n");

        var labels = PictureItems.In(picture).OfType<TextItem>().Where(text => text.Class == "lug-label");

        Assert.Equal(hasNumerals, labels.Any(label => label.Text is "1" or "2"));
    }

    /// <summary>By lug: the side of it on which its name stands; without those at the end of a line.</summary>
    private static Dictionary<string, Side> SidesIn(IEnumerable<PictureItem> items)
    {
        var sides = new Dictionary<string, Side>(StringComparer.Ordinal);
        foreach (var lug in PictureItems.In(items).OfType<PictureGroup>().Where(group => group.Class == "lug"))
        {
            var (label, eyelet) = (
                lug.Items.OfType<TextItem>().FirstOrDefault(text => text.Class == "lug-label"),
                lug.Items.OfType<CircleShape>().FirstOrDefault(circle => circle.Class == "eyelet")
            );
            if (label is not null && eyelet is not null && !lug.Items.Any(item => item.Class == "leader"))
            {
                sides[lug.Shows.Single(shown => shown.Name == "lug").Value] = SideOf(label.Bounds, eyelet.Centre);
            }
        }

        return sides;
    }

    private static Side SideOf(Box name, Point lug)
    {
        (Side Side, double Away)[] sides =
        [
            (Side.North, lug.Y - name.Bottom),
            (Side.South, name.Y - lug.Y),
            (Side.West, lug.X - name.Right),
            (Side.East, name.X - lug.X),
        ];
        return sides.MaxBy(side => side.Away).Side;
    }
}
