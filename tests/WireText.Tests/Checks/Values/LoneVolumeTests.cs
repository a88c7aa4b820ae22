using WireText.Checks;
using WireText.Checks.Controls;
using WireText.Electrical.Studies;
using WireText.Tests.Electrical;

namespace WireText.Tests.Checks.Values;

/// <summary>What a lone volume should be, and how it should be fed. Common practice.</summary>
public class LoneVolumeTests
{
    private const string Rest = """
        jack out
        neck.ground ~ vol.case ~ out.sleeve; vol.1 ~ vol.case

        """;

    /// <summary>
    /// Of a single coil of 2.9 H with 585 pF across (its own and a usual cable), sqrt(L/C) is 70 kΩ: across 250k it resonates
    /// with a quality of 3.5, across 100k of 1.4, across 50k of 0.7, the least that still reaches to its end; across 25k of 0.36.
    /// </summary>
    [Theory]
    [InlineData("250k", 0)]
    [InlineData("100k", 0)]
    [InlineData("50k", 0)]
    [InlineData("25k", 1)]
    public void HeavyLoad_ByTheVolumesValue_IsToldWhereNoPeakIsLeft(string value, int count) =>
        Assert.Equal(
            count,
            Found
                .Of(
                    "heavy-load",
                    $"pickup neck single-coil dcr=7.1k l=2.9H c=115p\npot vol {value} audio\n{Rest}neck.hot ~ vol.3; vol.2 ~ out.tip"
                )
                .Count
        );

    [Theory]
    [InlineData("neck.hot ~ vol.3; vol.2 ~ out.tip", 0)]
    [InlineData("neck.hot ~ vol.2; vol.3 ~ out.tip", 1)]
    public void FedOnTheWiper_ByTheLugOfThePickup_IsTold(string wires, int count) =>
        Assert.Equal(
            count,
            Found.Of("fed-on-the-wiper", $"pickup neck single-coil\npot vol 250k audio\n{Rest}{wires}").Count
        );

    /// <summary>With more pots than are looked at nothing is said of them.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    public void FedOnTheWiper_AmongManyPots_IsToldUpToTheBound(int past, int count)
    {
        var most = (int)Bounds.All.Single(bound => bound.Counted == "pots told apart by where their lugs lead").Most;
        var others = most - 1 + past;
        var pots = string.Concat(Enumerable.Range(0, others).Select(i => $"pot p{i} 1M linear; p{i}.1 ~ vol.case\n"));

        var circuit = Bench.CompileText(
            Bench.Expand(
                $"pickup neck single-coil\npot vol 250k audio\n{Rest}neck.hot ~ vol.2; vol.3 ~ out.tip\n{pots}"
            )
        );

        // Asked alone: what is found of the other pots would silence it.
        Assert.Equal(count, new FedOnTheWiper().Find(new StudyContext(circuit, Study.Of(circuit)!)).Count());
    }

    /// <summary>Two that share an output are fed on their wipers so that one does not silence the other.</summary>
    [Fact]
    public void FedOnTheWiper_OfTwoVolumesWithOneOutput_FindsNothing() =>
        Assert.Empty(
            Found.Of(
                "fed-on-the-wiper",
                $"""
                pickup neck single-coil; pickup bridge single-coil
                pot vol 250k audio; pot other 250k audio
                {Rest}neck.hot ~ vol.2; vol.3 ~ other.3 ~ out.tip; bridge.hot ~ other.2
                bridge.ground ~ other.case ~ vol.case; other.1 ~ other.case
                """
            )
        );
}
