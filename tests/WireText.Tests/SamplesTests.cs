using System.Text.RegularExpressions;
using CsCheck;
using WireText.Testing;
using Xunit.Sdk;

namespace WireText.Tests;

public partial class SamplesTests
{
    private static readonly Gen<int[]> Numbers = Gen.Int.Array[0, 9];

    [Fact]
    public void Take_FromOneSeedTwice_GivesTheSameSamples() =>
        Assert.Equal(
            Samples.Take(Numbers, "0000KSTAtOJ4", 20).Select(sample => (sample.Seed, string.Join(' ', sample.Value))),
            Samples.Take(Numbers, "0000KSTAtOJ4", 20).Select(sample => (sample.Seed, string.Join(' ', sample.Value)))
        );

    [Fact]
    public void Take_FromTheSeedOfASample_GivesThatSampleFirst()
    {
        var samples = Samples.Take(Numbers, "0000KSTAtOJ4", 20).ToList();

        Every.Item(samples, sample => Assert.Equal(sample.Value, Samples.Take(Numbers, sample.Seed, 1).Single().Value));
        Assert.Equal(20, samples.Select(sample => sample.Seed).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Each_WithASampleThatFails_SaysItsValueItsSeedAndHowToReplayIt()
    {
        var failure = Assert.Throws<XunitException>(() =>
            Samples.Each(Gen.Int[0, 999], 100, value => Assert.Fail("it is wrong"))
        );

        var said = Said().Match(failure.Message);
        Assert.True(said.Success, failure.Message);
        var again = Samples.Take(Gen.Int[0, 999], said.Groups["seed"].Value, 1).Single();
        Assert.Equal(said.Groups["value"].Value, $"{again.Value}");
    }

    [Fact]
    public void Each_WithoutAFailure_JudgesAsManyAsAreAskedFor()
    {
        var judged = 0;

        Samples.Each(Numbers, 7, _ => judged++);

        Assert.Equal(Samples.Replayed is null ? 7 : 1, judged);
    }

    [GeneratedRegex(
        @"^(?<value>\d+)\nit is wrong\nseed (?<seed>\S+); again: WIRETEXT_SEED=\k<seed> dotnet test --filter "
            + @"'FullyQualifiedName~SamplesTests\.Each_WithASampleThatFails_SaysItsValueItsSeedAndHowToReplayIt'$",
        RegexOptions.None,
        1000
    )]
    private static partial Regex Said();
}
