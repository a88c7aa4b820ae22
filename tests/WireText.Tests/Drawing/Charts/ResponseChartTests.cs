using WireText.Circuits;
using WireText.Drawing.Charts;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Networks;
using WireText.Electrical.Responses;
using WireText.Geometry;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Drawing.Pictures;
using WireText.Tests.Electrical;
using static WireText.Tests.Drawing.Lettering.ColourDifference;

namespace WireText.Tests.Drawing.Charts;

public class ResponseChartTests
{
    private static readonly IReadOnlyList<Theme> Themes = Every.Of(Theme.All);

    /// <summary>One, two, five, eleven, twelve and twenty-four curves; silence among them and alone; before and after.</summary>
    public static TheoryData<string, string, string, string> Charts =>
        new()
        {
            { "1-one-pickup", "rest", "", "" },
            { "1-one-pickup", "rest|vol=5", "", "" },
            { "2-two-pickups-mute", "rest", "sel", "" },
            { "2-two-pickups-mute", "sel=neck", "tone=0..10:5", "" },
            { "2-two-pickups-mute", "sel=neck", "tone=0..10:11", "" },
            { "2-two-pickups-mute", "rest|mute=down|sel=both,tone=5", "", "" },
            { "2-two-pickups-mute", "mute=down", "", "" },
            { "2-two-pickups-mute", "rest", "", "cable=1n" },
            { "2-two-pickups-mute", "sel=neck|sel=neck,tone=0", "", "dark=22n|dark=10n" },
            { "4-three-pickups-5way", "rest", "sel", "" },
            { "5-bass-two-volumes", "rest", "vol-n=0..10:24", "" },
            { "6-series-phase", "rest", "tone", "" },
            { "7-active-buffer", "rest", "mix=0..10:3", "" },
            { "8-twin-coil-cut", "rest", "tog|vol-n.pull|vol-b.pull", "" },
            { "9-four-pole-lever", "rest", "sel", "" },
        };

    [Theory]
    [MemberData(nameof(Charts))]
    public void Chart_OfAnyStudy_HasNoWordOverAnotherNorOverACurveNorOffThePage(
        string example,
        string states,
        string sweeps,
        string changes
    )
    {
        foreach (var theme in Themes)
        {
            var picture = ResponseChart.Build(Study(example, states, sweeps, changes), theme, example + ".wiring");
            var items = PictureItems.In(picture.Items).ToList();
            var texts = items.OfType<TextItem>().ToList();

            for (var i = 0; i < texts.Count; i++)
            {
                var box = texts[i].Bounds;
                Assert.True(
                    box.X >= 0 && box.Y >= 0 && box.Right <= picture.Page.Width && box.Bottom <= picture.Page.Height,
                    $"'{texts[i].Text}' is off the page"
                );
                Assert.DoesNotContain(texts.Skip(i + 1), other => Touch(box, other.Bounds));
            }

            var peaks = texts.Where(text => text.Class == "peak-text").ToList();
            var curves = items.OfType<PathShape>().Where(shape => shape.Class == "curve").ToList();
            Assert.DoesNotContain(
                peaks,
                text => curves.Exists(curve => curve.Steps.Any(step => Holds(text.Bounds, step.To)))
            );
        }
    }

    [Theory]
    [MemberData(nameof(Charts))]
    public void Chart_OfAnyStudy_DrawsWhatSoundsAndSaysWhyTheRestDoesNot(
        string example,
        string states,
        string sweeps,
        string changes
    )
    {
        var study = Study(example, states, sweeps, changes);

        var items = PictureItems.In(ResponseChart.Build(study, Theme.Light, null).Items).ToList();

        var drawn = items.OfType<PictureGroup>().Where(group => group.Class == "response");
        Assert.Equal(
            study
                .Curves.Where(curve => curve.Decibels is not null)
                .Select(curve => curve.Label)
                .Order(StringComparer.Ordinal),
            drawn.Select(group => group.Shows.Single().Value).Order(StringComparer.Ordinal)
        );
        var texts = items.OfType<TextItem>().Select(text => text.Text).ToList();
        Every.Item(study.Curves, curve => Assert.Contains(curve.Label, texts));
        Assert.DoesNotContain(
            study.Curves,
            curve => curve.Decibels is null && !texts.Contains(curve.Heard, StringComparer.Ordinal)
        );

        // Every peak in the plot is marked and told once: at its dot or behind its label.
        var told = texts.Count(text =>
            text.Contains("Hz +", StringComparison.Ordinal) || text.Contains("Hz −", StringComparison.Ordinal)
        );
        Assert.Equal(study.Curves.Count(curve => curve.Peak is not null), told);
    }

    [Fact]
    public void Curve_OnTheAxes_LiesWhereItsNumbersSay()
    {
        var study = Study("1-one-pickup", "rest", "", "");

        var items = PictureItems.In(ResponseChart.Build(study, Theme.Light, null).Items).ToList();

        // From the frame and two ticks alone: 20 Hz at the left edge, 20 kHz at the right; 6 dB from line to line.
        var frame = ((RectangleShape)items.Single(item => item.Class == "frame")).Box;
        var curve = (PathShape)items.Single(item => item.Class == "curve");
        var ticks = items.OfType<TextItem>().Where(text => text.Class == "tick").ToList();
        var zero = ticks.Single(text => text.Text == "0").Bounds.Centre.Y;
        var six = ticks.Single(text => text.Text == "+6").Bounds.Centre.Y;
        Assert.Equal(400, curve.Steps.Length);
        for (var i = 0; i < 400; i++)
        {
            Assert.Equal(frame.X + (frame.Width * i / 399), curve.Steps[i].To.X, 1e-6);
            Assert.Equal(zero + ((six - zero) * study.Curves[0].Decibels!.Value[i] / 6), curve.Steps[i].To.Y, 1e-6);
        }
    }

    [Fact]
    public void Landmarks_AreTheOpenStringsOfEqualTemperament()
    {
        // ISO 16: A4 is 440 Hz. E2 A2 D3 G3 B3 E4 lie 29, 24, 19, 14, 10 and 5 semitones below it.
        double[] strings = [.. new[] { 29, 24, 19, 14, 10, 5 }.Select(below => 440 * Math.Pow(2, -below / 12.0))];
        var items = PictureItems
            .In(ResponseChart.Build(Study("1-one-pickup", "rest", "", ""), Theme.Light, null).Items)
            .ToList();
        var frame = ((RectangleShape)items.Single(item => item.Class == "frame")).Box;
        var marks = items.OfType<PathShape>().Where(shape => shape.Class == "landmark").ToList();

        Assert.Equal(6, marks.Count);
        for (var i = 0; i < 6; i++)
        {
            var x = frame.X + (frame.Width * Math.Log10(strings[i] / 20) / 3);
            Assert.Equal(x, marks[i].Steps[0].To.X, 0.01);
        }
    }

    [Fact]
    public void Curves_OfDifferentKinds_AreToldApartByEveryEye()
    {
        foreach (var theme in Themes)
        {
            foreach (var sight in Eyes)
            {
                var colours = Every.Of(theme.Curves);
                for (var i = 0; i < colours.Count; i++)
                {
                    Assert.DoesNotContain(colours.Skip(i + 1), other => Between(colours[i], other, sight) < 10);
                    Assert.True(Between(colours[i], theme.Paper, sight) >= 25, $"{theme.Name} {colours[i]} on paper");
                }
            }
        }
    }

    [Fact]
    public void Ramp_InGrey_GoesOneWay()
    {
        foreach (var theme in Themes)
        {
            var lightness = theme.Ramp.Select(colour => Lab(colour, Sight.Normal).L).ToList();

            Every.Item(lightness.Zip(lightness.Skip(1)), pair => Assert.True(pair.Second > pair.First + 10));
        }
    }

    [Fact]
    public void Curves_WithinOneChart_DifferInColourOrDashes()
    {
        foreach (var row in Charts)
        {
            var study = Study((string)row[0], (string)row[1], (string)row[2], (string)row[3]);
            var curves = PictureItems
                .In(ResponseChart.Build(study, Theme.Light, null).Items)
                .OfType<PathShape>()
                .Where(shape => shape.Class == "sample")
                .Select(shape => $"{shape.Paint.Line} {string.Join(' ', shape.Paint.Dashes)}")
                .ToList();

            Assert.Equal(curves.Count, curves.Distinct(StringComparer.Ordinal).Count());
        }
    }

    [Theory]
    [InlineData("2-positions.svg", "rest", "sel")]
    [InlineData("2-tone.svg", "sel=neck", "tone=0..10:11")]
    public void ExampleChart_IsFresh(string name, string states, string sweep) =>
        AcceptedFile.Check(
            $"examples/response/{name}",
            SvgWriter.Write(
                ResponseChart.Build(
                    Study("2-two-pickups-mute", states, sweep, ""),
                    Theme.Light,
                    "2-two-pickups-mute.wiring"
                )
            )
        );

    private static ResponseStudy Study(string example, string states, string sweeps, string changes)
    {
        var network = Network.Of(
            Bench.CompileText(File.ReadAllText(Repository.PathOf("examples", example + ".wiring")))
        )!;
        var circuit = network.Circuit;
        return ResponseStudy.Of(
            WireText.Electrical.Studies.Study.Of(network),
            [.. Words(states).Select(text => StateReader.Read(circuit, text).Value!)],
            [.. Words(sweeps).Select(text => Sweep.Read(circuit, text).Value!)],
            [.. Words(changes).Select(text => CircuitChange.Read(circuit, text).Value!)]
        )!;

        static string[] Words(string text) => text.Split('|', StringSplitOptions.RemoveEmptyEntries);
    }

    private static bool Touch(Box a, Box b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;

    private static bool Holds(Box box, Point at) =>
        at.X > box.X && at.X < box.Right && at.Y > box.Y && at.Y < box.Bottom;
}
