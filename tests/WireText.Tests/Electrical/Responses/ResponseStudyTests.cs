using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Responses;
using WireText.Electrical.Sound;
using WireText.Testing;

namespace WireText.Tests.Electrical.Responses;

public class ResponseStudyTests
{
    private static readonly string TwoPickups = File.ReadAllText(
        Repository.PathOf("examples", "2-two-pickups-mute.wiring")
    );

    [Fact]
    public void Hertz_Are400FromEndToEndInEqualRatios()
    {
        var hertz = ResponseStudy.Hertz;

        Assert.Equal(400, hertz.Length);
        Assert.Equal(20, hertz[0], 1e-9);
        Assert.Equal(20_000, hertz[^1], 1e-6);
        // Three decades in 399 steps.
        Every.Item(
            hertz.Zip(hertz.Skip(1)),
            pair => Assert.Equal(Math.Pow(1000, 1 / 399.0), pair.Second / pair.First, 1e-8)
        );
    }

    /// <summary>A second-order low pass in closed form: L and R against C and the load, from the EMF.</summary>
    [Fact]
    public void Levels_OfAPickupStraightToTheJack_AreThoseOfTheClosedForm()
    {
        var study = Study(
            "pickup p single-coil dcr=6k l=2.5H c=100p\njack out\n"
                + "wire p.hot to out.tip white\nwire p.ground to out.sleeve black\n",
            "rest"
        );

        // H = 1/(1 + (R + jωL)(1/Rl + jωC)), C = 100 pF + 470 pF, Rl = 1 MΩ.
        for (var i = 0; i < 400; i++)
        {
            var omega = 2 * Math.PI * ResponseStudy.Hertz[i];
            var series = new System.Numerics.Complex(6e3, omega * 2.5);
            var across = new System.Numerics.Complex(1e-6, omega * 570e-12);
            var level = 20 * Math.Log10(1 / (1 + (series * across)).Magnitude);
            Assert.Equal(level, study.Curves[0].Decibels!.Value[i], 1e-6);
        }
    }

    [Theory]
    [InlineData("mute=down", Outcome.Short, "silence: tip and sleeve are joined")]
    [InlineData("vol=0", Outcome.Short, "silence: tip and sleeve are joined")]
    public void State_InWhichNothingSounds_HasItsReasonAndNoCurve(string state, Outcome outcome, string reason)
    {
        var curve = Study(TwoPickups, state).Curves.Single();

        Assert.Equal((outcome, reason), (curve.Outcome, curve.Heard));
        Assert.Null(curve.Decibels);
        Assert.Null(curve.Peak);
    }

    [Fact]
    public void State_WithTheHotOpen_IsOpenAndHasNoCurve()
    {
        var curve = Study("pickup p single-coil\njack out\nwire p.ground to out.sleeve black\n", "rest")
            .Curves.Single();

        Assert.Equal((Outcome.Open, "open: the jack floats"), (curve.Outcome, curve.Heard));
        Assert.Null(curve.Decibels);
    }

    [Fact]
    public void Labels_NameWhatDiffers()
    {
        var states = Study(TwoPickups, "sel=neck,vol=7", "sel=neck", "sel=neck,tone=0");

        Assert.Equal<string>(["sel=neck"], states.Common);
        Assert.Equal(["vol=7", "rest", "tone=0"], states.Curves.Select(curve => curve.Label));
        Assert.Equal(["sel=neck vol=7"], Study(TwoPickups, "sel=neck,vol=7").Curves.Select(curve => curve.Label));
    }

    [Fact]
    public void Changes_StandBesideTheCircuitAsWired()
    {
        var network = Network.Of(Bench.CompileText(TwoPickups))!;
        var change = CircuitChange.Read(network.Circuit, "dark=22n").Value!;
        var state = StateReader.Read(network.Circuit, "tone=0").Value!;

        var study = ResponseStudy.Of(WireText.Electrical.Studies.Study.Of(network), [state], [], [change])!;

        Assert.Equal(["as wired", "dark=22n"], study.Curves.Select(curve => curve.Label));
        var rewritten = TwoPickups.Replace("47n", "22n", StringComparison.Ordinal);
        Assert.Equal<double>(Study(TwoPickups, "tone=0").Curves[0].Decibels!.Value, study.Curves[0].Decibels!.Value);
        Assert.Equal<double>(Study(rewritten, "tone=0").Curves[0].Decibels!.Value, study.Curves[1].Decibels!.Value);
    }

    [Fact]
    public void Study_OfMoreCurvesThanCanBeToldApart_IsRefused()
    {
        var network = Network.Of(Bench.CompileText(TwoPickups))!;
        var sweep = Sweep.Read(network.Circuit, "tone=0..10:24").Value!;
        var rest = State.Rest(network.Circuit);

        Assert.NotNull(ResponseStudy.Of(WireText.Electrical.Studies.Study.Of(network), [rest], [sweep], []));
        Assert.Null(ResponseStudy.Of(WireText.Electrical.Studies.Study.Of(network), [rest, rest], [sweep], []));
        Assert.Null(
            ResponseStudy.Of(
                WireText.Electrical.Studies.Study.Of(network),
                [rest],
                [.. Enumerable.Repeat(sweep, 40)],
                []
            )
        );
    }

    private static ResponseStudy Study(string text, params string[] states)
    {
        var network = Network.Of(Bench.CompileText(text))!;
        return ResponseStudy.Of(
            WireText.Electrical.Studies.Study.Of(network),
            [.. states.Select(state => StateReader.Read(network.Circuit, state).Value!)],
            [],
            []
        )!;
    }
}
