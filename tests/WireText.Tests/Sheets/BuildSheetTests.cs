using WireText.Documents;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Output;
using WireText.Sheets;
using WireText.Testing;
using WireText.Tests.Drawing.Pictures;

namespace WireText.Tests.Sheets;

public class BuildSheetTests
{
    private const string Placed = """
        pot    vol  500k audio
        jack   out  mono
        cap    dark 47n tol=5% from vol.2 to vol.3
        resistor load 150k from vol.1 to vol.2
        wire   vol.2 to out.tip white length=120mm awg=24
        wire   vol.1 to out.sleeve black
        wire   vol.case to out.sleeve black sleeved
        place  vol at 0,0
        place  out at 60,0
        """;

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory, MemberData(nameof(Examples))]
    public void Sheet_OfAnExample_AsMarkdown(string name) =>
        Snap.Match(DocumentMarkdown.Write(ComposedSheet.OfExample(name), "sheet.svg"), $"{name}.md");

    /// <summary>47 nF is 47 × 10³ pF, and 150 kΩ is 15 × 10⁴ Ω (IEC 60062).</summary>
    [Fact]
    public void Parts_OfCapacitorAndResistor_HaveTheirMarkings()
    {
        var rows = TableUnder(ComposedSheet.Of(Placed, count: 12), "Parts");

        Assert.Contains(rows, row => row.SequenceEqual(["1", "12", "cap", "47n", "±5 %", "473", "dark"]));
        Assert.Contains(rows, row => row.SequenceEqual(["1", "12", "resistor", "150k", "", "154", "load"]));
    }

    /// <summary>Soldered by wires that are its own leads, it is to be had all the same.</summary>
    [Fact]
    public void Parts_WhoseLeadsAreWrittenAsWires_AreOnTheList()
    {
        const string Wired = """
            pot    tone  500k audio
            cap    dark  22n
            jack   out   mono
            wire   dark.1  to tone.2     bare
            wire   dark.2  to tone.case  bare
            wire   tone.3  to out.tip    white
            """;

        var rows = TableUnder(ComposedSheet.Of(Wired), "Parts");

        Assert.Contains(rows, row => row.Contains("dark") && row.Contains("223"));
    }

    [Fact]
    public void Wires_ThatAreTwisted_SayWithWhich()
    {
        const string Twisted = """
            pickup neck  single-coil
            switch turn  dpdt
            jack   out   mono
            cable  neck.hot to turn.A0 white and neck.ground to turn.B0 black twisted
            wire   turn.A1 to out.tip red
            wire   turn.B1 to out.sleeve blue
            """;

        var rows = TableUnder(ComposedSheet.Of(Twisted), "Wires");

        Assert.Contains(rows, row => row.Take(2).SequenceEqual(["1", "white, twisted with 2"]));
        Assert.Contains(rows, row => row.Take(2).SequenceEqual(["2", "black, twisted with 1"]));
        Assert.Contains(rows, row => row.Take(2).SequenceEqual(["3", "red"]));
    }

    [Fact]
    public void Wires_WhereTheFilePlacesTheParts_AreCutAsTheyRun()
    {
        var contents = ComposedSheet.ContentsOf(Placed);

        var route = contents.Layout!.Wires.Single(wire => wire.Wire.Id == "vol.1--out.sleeve");
        var length = route.Points.Zip(route.Points.Skip(1), (a, b) => Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y)).Sum();
        var wire = contents.Wires.Single(wire => wire.Lugs[0] == "vol.1");
        Assert.InRange(wire.CutMillimetres!.Value, (length * 0.9 * 1.1) + 30, (length * 1.1) + 35);
        Assert.Equal(0, wire.CutMillimetres.Value % 5);
        Assert.Equal(120, contents.Wires[0].StatedMillimetres);
        Assert.Equal(24, contents.Wires[0].Gauge);
        Assert.True(contents.Wires[2].IsSleeved);
    }

    [Fact]
    public void Wires_WithoutPlaces_AreMeasuredAtTheBench()
    {
        var text = Placed.Replace("place", "# place", StringComparison.Ordinal);

        Every.Item(ComposedSheet.ContentsOf(text).Wires, wire => Assert.Null(wire.CutMillimetres));
    }

    [Theory]
    [InlineData("", "Heat harms", false)]
    [InlineData("cap c 1n heat-sensitive from vol.2 to vol.3", "Heat harms c", true)]
    [InlineData("cap c 1n paper-in-oil from vol.2 to vol.3", "Heat harms c", true)]
    [InlineData("cap c 1n film from vol.2 to vol.3", "Heat harms", false)]
    [InlineData("", "finish", false)]
    [InlineData("finish polyester", "Mask the finish (polyester)", true)]
    [InlineData("finish nitrocellulose", "The finish is nitrocellulose", true)]
    [InlineData("", "Take the battery out", false)]
    [InlineData("battery b 9V", "Take the battery out", true)]
    [InlineData("", "Unplug the instrument", true)]
    public void Cautions_StandOnlyWhereTheyApply(string line, string words, bool isThere)
    {
        var sheet = ComposedSheet.Of(Placed + "\n" + line);

        var cautions = sheet.Blocks.OfType<Block.Bullets>().First().Items;

        Assert.Equal(isThere, cautions.Any(caution => caution.Contains(words, StringComparison.Ordinal)));
    }

    [Fact]
    public void TitleBlock_SaysWhatTheWiringIsAbout_AndKeepsTheMark()
    {
        var sheet = ComposedSheet.Of("about job \"31\"\nabout customer \"the owner\"\n" + Placed);

        var rows = sheet.Blocks.OfType<Block.Table>().First().Rows;
        Assert.Equal(["job: 31", "customer: the owner"], rows.Take(2).Select(row => string.Join(": ", row)));
        Assert.Equal(ComposedSheet.Of(Placed).Foot, sheet.Foot);
    }

    /// <summary>Who cuts a wire reads its joints in the order of its ends.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void Joints_OfAWire_StandInTheOrderOfItsLugs(string name)
    {
        var contents = ComposedSheet.ContentsOf(File.ReadAllText(Repository.PathOf("examples", name)));
        var jointAt = contents.Order.Joints.ToLookup(
            joint => contents.Circuit.NameOf(joint.Lug),
            joint => joint.Number
        );

        Every.Item(
            contents.Wires,
            wire =>
            {
                var left = wire.Joints.ToList();
                foreach (var lug in wire.Lugs.OfType<string>())
                {
                    while (left.Count > 0 && jointAt[lug].Contains(left[0]))
                    {
                        left.RemoveAt(0);
                    }
                }

                Assert.Empty(left);
            }
        );
    }

    /// <summary>A line from a number to its joint that passes another lug says that the number is about that one.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void Numbers_OfJoints_PointAtNoOtherLug(string name)
    {
        var contents = ComposedSheet.ContentsOf(File.ReadAllText(Repository.PathOf("examples", name)));
        var items = PictureItems.In(contents.Diagram!.Items).ToList();
        var lugs = items.OfType<CircleShape>().Where(circle => circle.Class is "lug" or "joint" or "eyelet").ToList();

        Every.Item(
            items.OfType<PathShape>().Where(path => path.Class == "joint-line"),
            line =>
            {
                var (from, to) = (line.Steps[0].To, line.Steps[^1].To);
                Assert.DoesNotContain(
                    lugs,
                    lug =>
                        Point.Distance(lug.Centre, from) > 0.5
                        && new Segment(from, to).Meets(Box.Around(lug.Centre, 0.4, 0.4))
                );
            }
        );
        Assert.NotEmpty(lugs);
    }

    [Fact]
    public void Sheet_HasABoxForEachStep()
    {
        var contents = ComposedSheet.ContentsOf(Placed);

        var boxes = BuildSheet.Compose(contents).Blocks.OfType<Block.Boxes>().Sum(boxes => boxes.Items.Length);

        Assert.Equal(contents.Order.Steps.Length, boxes);
    }

    [Fact]
    public void Diagram_ShowsTheNumberOfEachJoint()
    {
        var contents = ComposedSheet.ContentsOf(Placed);

        var svg = SvgWriter.Write(contents.Diagram!);

        Every.Item(
            contents.Order.Joints,
            joint => Assert.Contains($">{joint.Number}</text>", svg, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Mark_OfACircuit_ChangesWithAWireAndNotWithAComment()
    {
        var mark = CircuitMark.Of(ComposedSheet.ContentsOf(Placed).Circuit);

        Assert.Equal(mark, CircuitMark.Of(ComposedSheet.ContentsOf("# a comment\n" + Placed).Circuit));
        Assert.NotEqual(
            mark,
            CircuitMark.Of(ComposedSheet.ContentsOf(Placed.Replace("white", "red", StringComparison.Ordinal)).Circuit)
        );
    }

    private static IEnumerable<IEnumerable<string>> TableUnder(Document sheet, string heading) =>
        sheet
            .Blocks.SkipWhile(block => block is not Block.Heading { Level: 2 } title || title.Text != heading)
            .OfType<Block.Table>()
            .First()
            .Rows.Select(row => row.AsEnumerable());
}
