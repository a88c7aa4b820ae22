using WireText.Editing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class QuickFixesTests
{
    [Fact]
    public void Slip_OfOneLetter_IsWrittenAnew()
    {
        const string text = "pot vol 250k audio\nwire vol.cas to vol.1 bare";

        var fix = Assert.Single(FixesOf(text));

        Assert.Equal("write 'case'", fix.Title);
        Assert.True(fix.IsCertain);
        Assert.Equal("pot vol 250k audio\nwire vol.case to vol.1 bare", TextEdit.Apply(text, fix.Edits));
    }

    /// <summary>Of each example with a mistake: what an edit promises to mend is gone once it is made.</summary>
    [Fact]
    public void Fix_OfEachMistake_TakesItsFindingAway()
    {
        var fixes =
            from path in Repository.Mistakes
            let text = File.ReadAllText(path)
            from fix in FixesOf(text)
            select (Path: path, Text: text, Fix: fix);
        Every.Item(
            fixes,
            one =>
            {
                Assert.True(TextEdit.AreApart(one.Fix.Edits));
                Assert.DoesNotContain(
                    Compiled(TextEdit.Apply(one.Text, one.Fix.Edits)).Findings,
                    left => left.Id == one.Fix.Finding.Id && left.Message == one.Fix.Finding.Message
                );
            }
        );
    }

    [Fact]
    public void Fix_OfAPlaceElsewhere_IsNotOffered() =>
        Assert.Empty(QuickFixes.In(Compiled("pot vol 250k audio\nwire vol.cas to vol.1 bare"), new TextSpan(0, 5)));

    private static IReadOnlyList<QuickFix> FixesOf(string text) =>
        QuickFixes.In(Compiled(text), new TextSpan(0, text.Length));

    private static Compilation Compiled(string text) =>
        Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance);
}
