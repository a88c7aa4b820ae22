using CsCheck;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Responses;
using WireText.Electrical.Studies;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Circuits;

/// <summary>Whatever is typed behind an option gives a value or a problem in one line, never an exception.</summary>
public class SpokenTextTests
{
    private static readonly Circuit TwoPickups = Bench.CompileText(
        File.ReadAllText(Repository.PathOf("examples", "2-two-pickups-mute.wiring"))
    );

    private static readonly string[] Pieces =
    [
        "sel",
        "vol",
        "tone",
        "mute",
        "dark",
        "bridge.l",
        "cable",
        "input",
        "=",
        "==",
        ",",
        " ",
        "..",
        ":",
        "0",
        "5",
        "10",
        "11",
        "-1",
        "1e9",
        "NaN",
        "∞",
        "٣",
        "neck",
        "both",
        "22n",
        "500k",
        "2H",
        "1e999k",
        "any",
        "rest",
        "\0",
        "\n",
        "sel=neck",
        "vol=7",
        "tone=0..10:5",
        "dark=22n",
        "cable=1n",
    ];

    /// <summary>Pieces of right texts and of wrong ones, in any order; and any text at all.</summary>
    private static readonly Gen<string> Texts = Gen.OneOf(
        Gen.Int[0, Pieces.Length - 1]
            .Array[0, 7]
            .Select(places => string.Concat(places.Select(place => Pieces[place]))),
        Gen.String
    );

    [Fact]
    public void AnyText_IsAStateOrAProblem() =>
        Samples.Each(
            Texts,
            100,
            text =>
            {
                var read = StateReader.Read(TwoPickups, text);
                Assert.True(read.Value is null != read.Problem is null);
                if (read.Value is { } state)
                {
                    Every.Item(state.Travels, travel => Assert.InRange(travel, 0, 10));

                    // What was understood is understood again.
                    var again = StateReader.Read(TwoPickups, StateText.AsSaid(state)).Value!;
                    Assert.Equal(state, again);
                }
            }
        );

    [Fact]
    public void AnyText_IsASweepOrAProblem() =>
        Samples.Each(
            Texts,
            100,
            text =>
            {
                var read = Sweep.Read(TwoPickups, text);
                Assert.True(read.Value is null != read.Problem is null);
                if (read.Value is { } sweep)
                {
                    Assert.InRange(sweep.Over(State.Rest(TwoPickups)).Count(), 2, Sweep.MostSteps);
                }
            }
        );

    [Fact]
    public void AnyText_IsAChangeThatCanBeComputedOrAProblem() =>
        Samples.Each(
            Texts,
            100,
            text =>
            {
                var read = CircuitChange.Read(TwoPickups, text);
                Assert.True(read.Value is null != read.Problem is null);
                if (read.Value is { } change)
                {
                    var network = Network.Of(change.Circuit)!;
                    var study = ResponseStudy.Of(Study.Of(network), [State.Rest(change.Circuit)], [], [])!;
                    Every.Item(study.Curves[0].Decibels!.Value, level => Assert.True(double.IsFinite(level)));
                }
            }
        );
}
