using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Frames;
using WireText.Geometry;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Mods;

namespace WireText.Tests.Frames;

public class FrameSequenceTests
{
    private const double LeastNamePixels = 28;

    /// <summary>Of the width and of the height, on each side: title safe.</summary>
    private const double Safe = 0.05;

    private static readonly string[] Words = ["caption", "number", "group", "title", "name"];

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory, MemberData(nameof(Examples))]
    public void Steps_OfAnExample_BringEveryWireOnce(string name)
    {
        var framed = Framed.Example(name);

        Assert.Equal(
            framed.Compiled.Circuit!.Wires.Select(wire => wire.Id).Order(StringComparer.Ordinal),
            framed.Sequence.Frames.SelectMany(frame => frame.Wires).Order(StringComparer.Ordinal)
        );
    }

    /// <summary>Measured on the pictures: what is new on one is what it says, and nothing goes away again.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void Pictures_OfAnExample_ShowWhatIsDoneSoFar(string name)
    {
        var before = new HashSet<string>(StringComparer.Ordinal);
        foreach (var frame in Every.Of(Framed.Example(name).Sequence.Frames))
        {
            var shown = new FrameSvg(frame, FrameSize.FullHd).Wires;

            Assert.Subset(shown.ToHashSet(StringComparer.Ordinal), before);
            Assert.Equal(
                frame.Wires.Order(StringComparer.Ordinal),
                shown.Except(before, StringComparer.Ordinal).Order(StringComparer.Ordinal)
            );
            before.UnionWith(shown);
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void Names_OfEachFrame_AreReadFromAfar(string name)
    {
        foreach (var frame in Every.Of(Framed.Example(name).Sequence.Frames))
        {
            var heights = new FrameSvg(frame, FrameSize.FullHd).NameHeights.ToList();

            Assert.NotEmpty(frame.Names);
            Assert.Equal(frame.Names.Length, heights.Count);
            Every.Item(heights, height => Assert.True(height >= LeastNamePixels, $"{frame.FileName}: {height}"));
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void View_OfEachFrame_HoldsWhatTheStepIsAbout(string name) =>
        Every.Item(
            Framed.Example(name).Sequence.Frames,
            frame => Every.Item(Every.Of(PlacesOf(frame)), at => Assert.True(frame.View.Contains(at), frame.FileName))
        );

    /// <summary>A view that changed did not hold the step: something was too near its edge, or it was far too small.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void View_ThatHoldsTheNextStep_Stays(string name)
    {
        const double Margin = 17;
        const double LeastShare = 0.5;
        const double Closest = 1;
        var framed = Framed.Example(name);
        var frames = framed.Sequence.Frames;
        var moves = frames.Zip(frames.Skip(1)).Where(pair => pair.First.View != pair.Second.View).ToList();

        Assert.True(moves.Count * 2 < frames.Length, $"{moves.Count} moves in {frames.Length} frames");
        foreach (var (former, next) in moves)
        {
            var scale = new FrameSvg(former, FrameSize.FullHd).Scale;
            var stage = new Size(former.View.Width * scale, former.View.Height * scale);
            var about = AboutOf(framed, next);
            var best = new[]
            {
                Closest,
                (stage.Width - (2 * Margin)) / Math.Max(1, about.Width),
                (stage.Height - (2 * Margin)) / Math.Max(1, about.Height),
            }.Min();

            Assert.True(
                !former.View.Contains(about.Grown(Margin / scale)) || scale < (LeastShare * best) + 0.01,
                $"{next.FileName} moves the view without need"
            );
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void Words_OfEachFrame_LieInTheSafeArea(string name) => AssertSafe(Framed.Example(name).Sequence);

    [Theory]
    [InlineData("1280x720")]
    [InlineData("960x720")]
    [InlineData("1080x1920")]
    [InlineData("720x1280")]
    [InlineData("3840x2160")]
    public void Words_OfAnotherSize_LieInTheSafeArea(string size)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", "9-four-pole-lever.wiring"));
        var framed = Framed.Steps(text, FrameSize.Read(size).Value!);

        AssertSafe(framed.Sequence);
        Every.Item(
            framed.Sequence.Frames.SelectMany(frame => new FrameSvg(frame, framed.Sequence.Size).NameHeights),
            height => Assert.True(height >= LeastNamePixels)
        );
        Every.Item(
            framed.Sequence.Frames,
            frame => Every.Item(Every.Of(PlacesOf(frame)), at => Assert.True(frame.View.Contains(at), frame.FileName))
        );
    }

    /// <summary>Names and a title as long and as odd as the language lets them be.</summary>
    [Fact]
    public void Words_ThatAreHostile_StayWordsInTheSafeArea()
    {
        var longName = new string('W', 60);
        var framed = Framed.Steps(
            $"""
            circuit "</text><script>alert(1)</script> {new string('M', 200)} \u202E漢字漢字漢字"
            pickup {longName} single-coil
            pickup ünï-漢字 single-coil
            pot    vol 250k audio
            jack   out mono
            wire {longName}.hot to vol.3 white
            wire ünï-漢字.hot to vol.3 yellow
            wire {longName}.ground to vol.case black
            wire ünï-漢字.ground to vol.case black
            wire vol.1 to vol.case bare
            wire vol.2 to out.tip red
            wire vol.case to out.sleeve black
            """,
            FrameSize.FullHd
        );

        AssertSafe(framed.Sequence);
        Every.Item(
            framed.Sequence.Frames,
            frame =>
            {
                var svg = SvgWriter.Write(frame.Picture);
                Assert.DoesNotContain("<script", svg, StringComparison.Ordinal);
                Assert.DoesNotContain("\u202E", svg, StringComparison.Ordinal);
            }
        );
    }

    [Theory, MemberData(nameof(Examples))]
    public void Caption_OfEachFrame_IsWhole(string name) =>
        Every.Item(
            Framed.Example(name).Sequence.Frames,
            frame => Assert.Equal(frame.Caption, new FrameSvg(frame, FrameSize.FullHd).Caption)
        );

    [Fact]
    public void Frames_OfAMod_AreItsStepsAlone()
    {
        var stock = new Stock();
        var framed = Framed.Steps(
            stock.Compile(
                $"""
                base "{Stock.Path}"
                lift vol.2 to out.tip
                button mute momentary
                wire vol.2 to mute.1 red
                wire mute.1 to out.tip red
                wire mute.2 to out.sleeve black
                """
            ),
            FrameSize.FullHd
        );

        var frames = framed.Sequence.Frames;
        var circuit = framed.Compiled.Circuit!;
        var first = new FrameSvg(frames[0], FrameSize.FullHd).Wires;
        Assert.Equal(framed.Order.Steps.Length, frames.Length);
        Assert.StartsWith("Lift the ", frames[0].Caption, StringComparison.Ordinal);
        Assert.DoesNotContain(frames, frame => frame.Caption.Contains("neck", StringComparison.Ordinal));
        Assert.Equal(
            circuit.Wires.Select(wire => wire.Id).Order(StringComparer.Ordinal),
            first.Concat(frames.SelectMany(frame => frame.Wires)).Order(StringComparer.Ordinal)
        );
    }

    [Theory, MemberData(nameof(Examples))]
    public void Positions_OfAnExample_AreAFrameEach(string name)
    {
        var framed = Framed.Positions(File.ReadAllText(Repository.PathOf("examples", name)), FrameSize.FullHd);
        var views = PositionViews.Of(framed.Compiled.Circuit!, framed.Compiled.Study!);

        AssertSafe(framed.Sequence);
        Assert.Equal(
            views.Select(view => $"{view.Heading}: {view.Says}"),
            framed.Sequence.Frames.Select(frame => frame.Caption)
        );
        Every.Item(
            framed.Sequence.Frames,
            (frame, i) =>
            {
                Assert.Equal(framed.Sequence.Frames[0].View, frame.View);
                Assert.Equal(
                    views[i].Controls.Select(at => $"{at.Name} = {at.Position}"),
                    frame.Names.Select(named => named.Text)
                );
                Assert.Equal(framed.Layout.Wires.Length, DrawnOf(frame));
            }
        );

        int DrawnOf(Frame frame) =>
            framed.Layout.Wires.Count(wire => new FrameSvg(frame, FrameSize.FullHd).Wires.Contains(wire.Wire.Id));
    }

    [Fact]
    public void Frames_UnderAnotherCulture_HaveTheSameBytes()
    {
        Assert.Equal(Draw(), OtherCulture.Run(Draw));

        static string Draw() =>
            string.Concat(
                Framed
                    .Steps(File.ReadAllText(Repository.PathOf("examples", "1-one-pickup.wiring")), FrameSize.FullHd)
                    .Sequence.Frames.Select(frame => SvgWriter.Write(frame.Picture))
            );
    }

    [Fact]
    public void List_OfAnExample_IsAsAccepted()
    {
        var framed = Framed.Example("1-one-pickup.wiring");

        Snap.Match(FramesJson.Write(framed.Sequence, framed.Compiled.Circuit!.Title), "frames.json");
    }

    /// <summary>1 s to look, and 2.5 words a second: 8 words are 4.2 s, and 4.5 when rounded up to halves.</summary>
    [Fact]
    public void Seconds_OfAFrame_FollowItsWords()
    {
        var frame = Framed
            .Example("1-one-pickup.wiring")
            .Sequence.Frames.First(one => one.Caption == "Lay the bare wire from vol.1 to vol.case.");

        Assert.Equal(4.5, frame.Seconds);
    }

    [Theory]
    [InlineData("1920x1080", true)]
    [InlineData("4096x4096", true)]
    [InlineData("960x720", true)]
    [InlineData("720x1280", true)]
    [InlineData("720x720", false)]
    [InlineData("4097x1080", false)]
    [InlineData("1920", false)]
    [InlineData("-1920x1080", false)]
    [InlineData("1920x1080x2", false)]
    public void Size_IsReadOrRefused(string text, bool isGood)
    {
        var read = FrameSize.Read(text);

        Assert.Equal(isGood, read.Value is not null);
        Assert.Equal(isGood ? null : "a size is a width and a height in pixels such as 1920x1080", read.Problem?[..58]);
    }

    [Fact]
    public void Steps_BeyondTheBound_AreRefused()
    {
        var framed = Framed.Example("1-one-pickup.wiring");
        var plan = framed.Compiled.PlanFor(LayoutEffort.Quick)!;
        var step = framed.Order.Steps[0];
        var order = framed.Order with { Steps = [.. Enumerable.Repeat(step, FrameSequence.Most + 1)] };

        Assert.Throws<ArgumentOutOfRangeException>(() =>
            FrameSequence.OfSteps(
                framed.Compiled.Circuit!,
                order,
                plan.Faces,
                plan.Layout,
                Theme.Light,
                FrameSize.FullHd
            )
        );
    }

    private static IEnumerable<Point> PlacesOf(Frame frame) => frame.Names.SelectMany(name => name.Places);

    /// <summary>What a step is about, from the layout: its places and the way of its wires, and a part that is mounted.</summary>
    private static Box AboutOf(Framed framed, Frame frame)
    {
        var extent = framed.Layout.Extent.Grown(Tokens.LabelMargin);
        var moved = new Point(-extent.X, -extent.Y);
        var ways = framed
            .Layout.Wires.Where(route => frame.Wires.Contains(route.Wire.Id))
            .SelectMany(route => route.Points)
            .Concat(
                framed
                    .Layout.Braids.Where(braid => frame.Wires.Contains(braid.Cable.BraidId ?? ""))
                    .SelectMany(braid => braid.Tails.SelectMany(tail => tail.Points))
            );
        return ways.Select(at => at + moved)
            .Concat(PlacesOf(frame))
            .Select(at => Box.Around(at, 0, 0))
            .Aggregate(Box.Union);
    }

    private static void AssertSafe(FrameSequence sequence)
    {
        foreach (var frame in Every.Of(sequence.Frames))
        {
            var page = frame.Picture.Page;
            var safe = new Box(
                page.Width * Safe,
                page.Height * Safe,
                page.Width * (1 - (2 * Safe)),
                page.Height * (1 - (2 * Safe))
            ).Grown(0.001);
            var words = Every.Of(frame.Picture.Items.OfType<TextItem>().Where(text => Words.Contains(text.Class)));

            Every.Item(words, word => Assert.True(safe.Contains(word.Ink), $"{frame.FileName}: {word.Text}"));
            Assert.Contains(words, word => word.Class == "caption");
        }
    }
}
