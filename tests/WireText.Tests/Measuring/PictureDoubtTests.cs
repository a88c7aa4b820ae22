using WireText.Measuring;

namespace WireText.Tests.Measuring;

/// <summary>A drawing is made easy to misread in one way at a time; the measure names that doubt, and not where the drawing is right.</summary>
public class PictureDoubtTests
{
    [Fact]
    public void Doubts_WiredLugWithoutAName_IsUnnamed()
    {
        var doubt = new PictureDoubt(DoubtKind.UnnamedLug, Lug("sel.2"));

        Assert.Contains(doubt, SmallPicture.With("").Doubts);
        Assert.DoesNotContain(doubt, SmallPicture.With(Name("sel.2", 42, 22.7)).Doubts);
        Assert.DoesNotContain(new PictureDoubt(DoubtKind.UnnamedLug, Lug("sel.4")), SmallPicture.With("").Doubts);
    }

    [Theory]
    [InlineData("cap", false)]
    [InlineData("button", true)]
    public void Doubts_TwoLeadsAlike_NeedNoNames(string kind, bool isDoubted)
    {
        var part = $"""
            <g class="part" data-part="two" data-kind="{kind}"><rect class="body" x="80" y="4" width="8" height="4"/></g>
            <g class="lug" data-lug="two.1" data-part="two"><circle class="eyelet" cx="78" cy="6" r="0.8"/></g>
            <g class="lug" data-lug="two.2" data-part="two"><circle class="eyelet" cx="90" cy="6" r="0.8"/></g>
            <g class="wire" data-wire="f" data-from="two.1" data-to="two.2" data-kind="wire"><path class="core" d="M78 6 L78 2 L90 2 L90 6"/></g>
            """;

        var doubts = SmallPicture.With(part).Doubts;

        Assert.Equal(isDoubted, doubts.Contains(new PictureDoubt(DoubtKind.UnnamedLug, Lug("two.1"))));
    }

    [Fact]
    public void Doubts_NameAsNearToAnotherLug_NamesBoth() =>
        Assert.Contains(
            new PictureDoubt(DoubtKind.NameNearAnother, Label("sel.2"), Lug("sel.4")),
            SmallPicture.With(Name("sel.2", 45.5, 22.7)).Doubts
        );

    [Fact]
    public void Doubts_NameAtTheEndOfALine_IsTakenForNoOther()
    {
        var led = $"""
            <g class="lug" data-lug="sel.2" data-part="sel"><path class="leader" d="M41.4 22 L45 22"/>{Name(
                "sel.2",
                45.5,
                22.7
            )}</g>
            """;

        var doubts = SmallPicture.With(led).Doubts;

        Assert.DoesNotContain(new PictureDoubt(DoubtKind.UnnamedLug, Lug("sel.2")), doubts);
        Assert.DoesNotContain(doubts, doubt => doubt.First == Label("sel.2"));
    }

    [Fact]
    public void Doubts_WireBetweenANameAndItsLug_NamesIt()
    {
        var behind = SmallPicture.Spoiled("x=\"46\" y=\"22.7\"", "x=\"53\" y=\"34\"");

        Assert.Contains(new PictureDoubt(DoubtKind.NameBehindAWire, Label("sel.4"), Wire("e")), behind.Doubts);
        Assert.DoesNotContain(SmallPicture.With("").Doubts, doubt => doubt.Kind == DoubtKind.NameBehindAWire);
    }

    [Fact]
    public void Doubts_NameOnAnotherSideThanItsRow_NamesItsLug()
    {
        // 1 and 4 have their names to the left of them.
        Assert.Contains(
            new PictureDoubt(DoubtKind.NameOutOfRow, Lug("sel.2")),
            SmallPicture.With(Name("sel.2", 40, 20.5)).Doubts
        );
        Assert.DoesNotContain(
            SmallPicture.With(Name("sel.2", 38, 22.7)).Doubts,
            doubt => doubt.Kind == DoubtKind.NameOutOfRow
        );
    }

    [Theory]
    [InlineData(86, 25, false)]
    [InlineData(88, 22.7, true)]
    public void Doubts_LugsOnABodyAndBelowIt_AreNoRow(double x, double y, bool isDoubted)
    {
        // Three lugs down the body with their names to the right, and three below it with their names below.
        (string Lug, double X, double Y, double NameX, double NameY)[] lugs =
        [
            ("pull.A", 82, 6, 84.5, 6.7),
            ("pull.B", 82, 10, 84.5, 10.7),
            ("pull.C", 82, 14, 84.5, 14.7),
            ("pull.1", 82, 22, 82, 25),
            ("pull.2", 86, 22, x, y),
            ("pull.3", 90, 22, 90, 25),
        ];
        var part =
            """<g class="part" data-part="pull" data-kind="pot"><rect class="body" x="80" y="4" width="12" height="15"/></g>"""
            + string.Concat(
                lugs.Select(lug =>
                    FormattableString.Invariant(
                        $"""<g class="lug" data-lug="{lug.Lug}" data-part="pull"><circle class="eyelet" cx="{lug.X}" cy="{lug.Y}" r="0.8"/></g>"""
                    ) + Name(lug.Lug, lug.NameX, lug.NameY)
                )
            );

        PictureDoubt[] expected = isDoubted ? [new(DoubtKind.NameOutOfRow, Lug("pull.2"))] : [];
        Assert.Equal(expected, SmallPicture.With(part).DoubtsOf(DoubtKind.NameOutOfRow));
    }

    [Fact]
    public void Doubts_JointOnACaseNearAName_NamesBoth() =>
        Assert.Contains(
            new PictureDoubt(DoubtKind.JointNearName, Label("vol.2"), new DrawnThing(ThingKind.Joint, "vol.case:d")),
            SmallPicture.With(Name("vol.2", 36.7, 48)).Doubts
        );

    [Fact]
    public void Doubts_WireBetweenAPartAndItsName_NamesBoth()
    {
        var doubt = new PictureDoubt(DoubtKind.PartNameApart, new DrawnThing(ThingKind.PartName, "sel"), Wire("e"));
        const string Right = "x=\"40\" y=\"15\"";

        // Wire e runs from 50,26 to 66,26, below the switch that ends at y = 18.
        Assert.Contains(doubt, SmallPicture.Spoiled(Right, "x=\"54\" y=\"32\"").Doubts);
        Assert.DoesNotContain(doubt, SmallPicture.Spoiled(Right, "x=\"54\" y=\"24\"").Doubts);
        Assert.Empty(SmallPicture.With("").DoubtsOf(DoubtKind.PartNameApart));
    }

    [Fact]
    public void Doubts_OwnWireBetweenAPartAndItsName_IsNone() =>
        // Wire c ends on the switch; its name stands right of it, level with the corner of the body.
        Assert.DoesNotContain(
            SmallPicture.Spoiled("x=\"40\" y=\"15\"", "x=\"56\" y=\"35\"").DoubtsOf(DoubtKind.PartNameApart),
            doubt => doubt.Second == Wire("c")
        );

    [Fact]
    public void Doubts_CrossingTwoMillimetresFromAnEnd_IsAShortEnd()
    {
        const string Right = "M44 45 L50 45 L50 26 L55 26 A1 1 0 0 1 57 26 L66 26 L66 40";

        var near = SmallPicture.Spoiled(Right, Right.Replace("26", "24", StringComparison.Ordinal));

        Assert.Equal([new PictureDoubt(DoubtKind.ShortEnd, Wire("c"), Wire("e"))], near.DoubtsOf(DoubtKind.ShortEnd));
        Assert.Empty(SmallPicture.With("").DoubtsOf(DoubtKind.ShortEnd));
    }

    [Theory]
    [InlineData("data-wire=\"e\" data-from=\"vol.2\" data-to=\"out.tip\" data-kind=", true)] // 55 mm
    [InlineData("data-wire=\"b\" data-from=\"sel.2\" data-to=\"vol.2\" data-kind=", false)] // 27 mm
    public void Doubts_OwnLeadOver35Millimetres_IsLong(string start, bool isLong) =>
        Assert.Equal(
            isLong,
            SmallPicture.Spoiled($"{start}\"wire\"", $"{start}\"part-lead\"").DoubtsOf(DoubtKind.LongLead).Any()
        );

    [Fact]
    public void Doubts_TextWithAnEllipsis_IsCut() =>
        Assert.Equal(
            [new PictureDoubt(DoubtKind.CutText, new DrawnThing(ThingKind.Text, "A rig…"))],
            SmallPicture.Spoiled(">A right drawing<", ">A rig…<").DoubtsOf(DoubtKind.CutText)
        );

    [Theory]
    [InlineData("M61 40 L63 45", false)] // from wire c, whose tag it is
    [InlineData("M66 44 L63 45", true)]
    public void Faults_TagAtTheEndOfALine_IsStrayUnlessTheLineBeginsOnItsWire(string line, bool isStray)
    {
        var measure = SmallPicture.Spoiled(
            "<rect class=\"tag-box\" x=\"59\" y=\"38.65\" width=\"4\" height=\"2.7\"/><text class=\"tag-text\" x=\"61\" y=\"40.7\"",
            $"<path class=\"leader\" d=\"{line}\"/><rect class=\"tag-box\" x=\"61\" y=\"45\" width=\"4\" height=\"2.7\"/><text class=\"tag-text\" x=\"63\" y=\"47\""
        );

        Assert.Equal(isStray, measure.FaultsOf(FaultKind.StrayTag).Any());
    }

    [Fact]
    public void ShareOfPage_IsThatOfTheBoxAroundPartsLugsAndWires()
    {
        var measure = SmallPicture.With("");

        // By hand: from 20,10 to 86,55 on a page of 100 by 60.
        Assert.Equal(66 * 45 / 6000.0, measure.ShareOfPage, 1e-6);
    }

    private static string Name(string lug, double x, double y) =>
        FormattableString.Invariant(
            $"""<text class="lug-label" data-lug="{lug}" x="{x}" y="{y}" font-size="2" text-anchor="middle" textLength="1">1</text>"""
        );

    private static DrawnThing Lug(string name) => new(ThingKind.Lug, name);

    private static DrawnThing Label(string lug) => new(ThingKind.LugLabel, lug);

    private static DrawnThing Wire(string id) => new(ThingKind.Wire, id);
}
