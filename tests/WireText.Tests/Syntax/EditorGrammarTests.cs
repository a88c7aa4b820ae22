using TextMateSharp.Grammars;
using TextMateSharp.Internal.Grammars.Reader;
using TextMateSharp.Internal.Themes.Reader;
using TextMateSharp.Internal.Types;
using TextMateSharp.Registry;
using TextMateSharp.Themes;
using WireText.Syntax.Parsing;
using WireText.Testing;

namespace WireText.Tests.Syntax;

/// <summary>The editors' grammar colours every word of every committed file.</summary>
public class EditorGrammarTests
{
    private const string RootScope = "source.wiring";

    private static readonly IGrammar Grammar = new Registry(new OneGrammar()).LoadGrammar(RootScope);

    public static TheoryData<string> Files => Rows.Of(Repository.WiringFiles);

    [Theory]
    [MemberData(nameof(Files))]
    public void Tokenize_EveryLine_LeavesNoWordWithoutAScope(string path)
    {
        foreach (var line in File.ReadAllLines(path))
        {
            foreach (var (text, scopes) in Tokens(line))
            {
                Assert.True(string.IsNullOrWhiteSpace(text) || scopes.Count > 1, $"'{text}' in: {line}");
            }
        }
    }

    [Fact]
    public void Tokenize_EveryStatement_IsAKeyword()
    {
        foreach (var keyword in Keywords.Statements)
        {
            Assert.Contains("keyword.control.wiring", Tokens($"{keyword} neck").First().Scopes);
        }
    }

    [Theory]
    [InlineData("wire neck.hot to sel.A1 white/black", "white/black", "constant.language.colour.wiring")]
    [InlineData("wire neck.hot to sel.A1 white # why", "# why", "comment.line.number-sign.wiring")]
    [InlineData("pot vol 250k audio", "250k", "constant.numeric.wiring")]
    [InlineData("pickup neck single-coil \"a # b\"", "\"a # b\"", "string.quoted.double.wiring")]
    [InlineData("wire neck.hot to sel.A1 white", "neck.hot", "variable.other.lug.wiring")]
    [InlineData("colour cream CR #efe3c2", "#efe3c2", "constant.other.paint.wiring")]
    [InlineData("colour cream CR #efe3c2", "cream", "entity.name.colour.wiring")]
    [InlineData("colour cream CR #efe3c2 #cloth", "#cloth", "comment.line.number-sign.wiring")]
    [InlineData("expect second: rest: neck", "second", "entity.name.part.wiring")]
    [InlineData("expect rest: neck", "neck", "variable.other.lug.wiring")]
    public void Tokenize_AWord_HasItsScope(string line, string word, string scope) =>
        Assert.Contains(scope, Tokens(line).Single(t => t.Text == word).Scopes);

    private static IEnumerable<(string Text, IReadOnlyList<string> Scopes)> Tokens(string line)
    {
        var result = Grammar.TokenizeLine(line);
        return result
            .Tokens.Select(t =>
                (
                    line[Math.Min(t.StartIndex, line.Length)..Math.Min(t.EndIndex, line.Length)],
                    (IReadOnlyList<string>)t.Scopes
                )
            )
            .Where(t => t.Item1.Length > 0);
    }

    private sealed class OneGrammar : IRegistryOptions
    {
        public IRawTheme GetTheme(string scopeName) => null!;

        public IRawGrammar GetGrammar(string scopeName)
        {
            using var reader = new StreamReader(Repository.PathOf("grammar", "wiretext.tmLanguage.json"));
            return GrammarReader.ReadGrammarSync(reader);
        }

        public ICollection<string> GetInjections(string scopeName) => [];

        public IRawTheme GetDefaultTheme()
        {
            using var theme = new StreamReader(new MemoryStream("""{"name":"none","settings":[]}"""u8.ToArray()));
            return ThemeReader.ReadThemeSync(theme);
        }
    }
}
