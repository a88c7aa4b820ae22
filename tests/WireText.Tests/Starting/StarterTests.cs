using WireText.Drawing.Layout;
using WireText.Starting;
using WireText.Syntax;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Starting;

/// <summary>Whatever a new wiring is begun with, it is right as it stands.</summary>
public class StarterTests
{
    private const string File = "guitar.wiring";

    /// <summary>Each by its words, as they are given to <c>wiretext new</c>.</summary>
    public static TheoryData<string> Choices => Rows.Of(Starter.All.Select(WordsOf));

    [Theory]
    [MemberData(nameof(Choices))]
    public void Text_OfEachChoice_HasNothingThatIsFound(string words) =>
        Assert.Empty(Compile(words).Findings.Select(finding => finding.Message));

    [Theory]
    [MemberData(nameof(Choices))]
    public void Text_OfEachChoice_IsFormatted(string words)
    {
        var text = Find(words).Write();

        Assert.Equal(text, Formatter.Format(WiringParser.Parse(new SourceText(File, text))));
        Assert.Contains(text.Split('\n'), line => line.StartsWith("# ", StringComparison.Ordinal));
    }

    /// <summary>Held to the judge, in every state that the line means and with no coil that is a mere trace.</summary>
    [Theory]
    [MemberData(nameof(Choices))]
    public void Claims_OfEachChoice_AreProven(string words)
    {
        var study = Compile(words).Study!;

        Every.Item(
            study.Circuit.Expectations,
            claim => Assert.True(study.JudgeOf(claim).Holds(claim, mayNameTraces: false))
        );
    }

    /// <summary>A pickup that no claim names might as well not be wired.</summary>
    [Theory]
    [MemberData(nameof(Choices))]
    public void Claims_OfEachChoice_NameEveryPickup(string words)
    {
        var starter = Find(words);
        var claims = starter
            .Write()
            .Split('\n')
            .Where(line => line.StartsWith("expect", StringComparison.Ordinal))
            .ToList();

        Every.Item(
            starter.Pickups.Pickups,
            pickup =>
                Assert.Contains(claims, claim => claim.Split(':')[1].Contains(pickup.Name, StringComparison.Ordinal))
        );
    }

    [Theory]
    [MemberData(nameof(Choices))]
    public void Picture_OfEachChoice_CanBeDrawn(string words) =>
        Assert.NotNull(Compile(words).PlanFor(LayoutEffort.Quick));

    private static Compilation Compile(string words) =>
        Compilation.Of(new SourceText(File, Find(words).Write()), NoSources.Instance, withHarmless: true);

    private static Starter Find(string words) => Starter.All.First(starter => WordsOf(starter) == words);

    private static string WordsOf(Starter starter) =>
        $"{starter.Pickups.Word} {starter.Selector.Word} {starter.Controls.Word} {starter.Jack.Word}";
}
