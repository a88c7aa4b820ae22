using WireText.Checks;
using WireText.Testing;
using WireText.Tests.Checks.Slips;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>A message is under 100 characters and its help under three lines; <c>MutantTests</c> holds those of the mutants to it.</summary>
public class ShortWordTests
{
    [Fact]
    public void Words_OfExamplesAndMistakes_AreShort() =>
        AreShort(Repository.RightAndWrongExamples.Select(File.ReadAllText));

    [Fact]
    public void Words_OfSlips_AreShort() =>
        AreShort(
            SlipList.All.Select(slip =>
                slip.ApplyTo(File.ReadAllText(Repository.PathOf("docs", "slips", slip.Circuit + ".wiring")))
            )
        );

    [Fact]
    public void Words_OfThePagesOfTheChecks_AreShort() =>
        AreShort(
            FindingCatalogue
                .All.Where(description => description.HasExamples)
                .SelectMany(description => new[] { MarkedText.Parse(description.Bad).Text, description.Good })
        );

    private static void AreShort(IEnumerable<string> texts) =>
        ShortWords.Hold(
            texts.SelectMany(text => Compilation.Of(new SourceText("short.wiring", text), NoSources.Instance).Findings)
        );
}
