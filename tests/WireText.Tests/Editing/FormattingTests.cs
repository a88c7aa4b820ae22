using System.Collections.Immutable;
using WireText.Editing;
using WireText.Syntax;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class FormattingTests
{
    [Theory]
    [InlineData("jack out mono")]
    [InlineData("jack out mono\n\n\n")]
    [InlineData("\n\njack   out mono  \n")]
    [InlineData("jack out mono\r\n  \r\nwire a to b white\r\n")]
    [InlineData("jack out mono\r\nwire  a to b white\n")]
    [InlineData("jack out mono\rwire  a to b white\r")]
    [InlineData("\n\n")]
    [InlineData("")]
    public void Edits_OfAText_GiveWhatTheFormatterGives(string text) => AssertFormats(text);

    [Fact]
    public void Edits_OfEachExampleWithSingleBlanks_GiveWhatTheFormatterGives()
    {
        Every.Item(
            Repository.RightAndWrongExamples,
            path =>
            {
                var lines = File.ReadAllText(path).Split('\n');
                var edits = AssertFormats(string.Join('\n', lines.Select(line => line.Replace("  ", " "))));

                // Each stays in its line: a cursor elsewhere is where it was.
                Every.Item(edits, edit => Assert.DoesNotContain('\n', edit.At.Text));
            }
        );
    }

    private static ImmutableArray<TextEdit> AssertFormats(string text)
    {
        var tree = WiringParser.Parse(new SourceText("a.wiring", text));

        var edits = Formatting.EditsOf(tree);

        Assert.Equal(Formatter.Format(tree), TextEdit.Apply(text, edits));
        Assert.True(TextEdit.AreApart(edits));
        return edits;
    }
}
