using WireText.Editing;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class CompletionsTests
{
    private const string Circuit = """
        pickup  neck  humbucker-4
        pot     vol   250k audio
        switch  sel   lever-3way
        jack    out   mono
        colour  cream CR #efe3c2
        positions sel bridge both neck

        """;

    [Theory]
    [InlineData("wire [||]", "neck,vol,sel,out", "to,white")]
    [InlineData("wire vol.[||]", "1,2,3,case", "vol,a")]
    [InlineData("wire vol.1 [||]", "to", "white,vol")]
    [InlineData("wire vol.1 to neck.n-start [||]", "to,white,cream,bare", "sleeved,vol")]
    [InlineData("wire vol.1 to neck.n-start white [||]", "sleeved,length=,awg=", "to,white")]
    [InlineData("cable vol.1 to vol.2 white [||]", "and,twisted,braid", "to")]
    [InlineData("cable vol.1 to vol.2 white braid [||]", "cut,vol", "to")]
    [InlineData("splice link [||]", "neck,sleeved", "to")]
    [InlineData("splice [||]", "", "neck")]
    [InlineData("expect [||]", "sel=,vol=,others=any,rest", "silence,neck")]
    [InlineData("expect sel=[||]", "bridge,both,neck,any", "sel=,silence")]
    [InlineData("expect sel=both [||]", "vol=,others=any", "silence,rest")]
    [InlineData("expect sel=both:[||]", "silence,battery,neck,reads", "sel=")]
    [InlineData("expect rest: neck [||]", "parallel,series,through", "silence")]
    [InlineData("expect rest: neck parallel [||]", "neck,reversed", "silence,parallel")]
    [InlineData("expect rest: neck.[||]", "neck.n,neck.s", "neck")]
    [InlineData("expect rest: neck through [||]", "vol", "silence")]
    [InlineData("expect rest: battery [||]", "on,off", "neck")]
    [InlineData("drop expect sel=[||]", "bridge,both,neck,any", "sel")]
    [InlineData("positions [||]", "sel", "vol,neck")]
    [InlineData("find [||]", "sel", "vol,neck")]
    [InlineData("find sel at [||]", "vol,out", "white")]
    [InlineData("rest sel=[||]", "bridge,both,neck", "any")]
    [InlineData("allow [||]", "floating-ground,hot-case", "at")]
    [InlineData("allow hot-case at vol.[||]", "case,1", "vol")]
    [InlineData("pot tone [||]", "standard,push-pull,audio,linear,value=,taper=", "from,film,sel")]
    [InlineData("pot tone 250k taper=[||]", "audio,linear", "250k")]
    [InlineData("cap dark 47n [||]", "film,ceramic,from,code=", "audio")]
    [InlineData("cap dark 47n from [||]", "vol", "to")]
    [InlineData("cap dark 47n from vol.2 [||]", "to", "vol,film")]
    [InlineData("pickup x single-coil wind=[||]", "cw,ccw", "north")]
    [InlineData("pickup x single-coil [||]", "dcr=,magnet=,heat-sensitive", "humbucker-4,n.dcr=")]
    [InlineData("[||]", "wire,expect,pickup,pot,define", "note,neck")]
    [InlineData("arrange\n    neck [||]", "vol,out,.", "wire")]
    [InlineData("define switch x\n    [||]", "lugs,position,track", "wire")]
    [InlineData("define switch x\n    lugs A 0,0 B 5,0\n    position 1 [||]", "A,B", "lugs")]
    [InlineData("remark \"wire [||]", "", "neck,wire")]
    [InlineData("wire vol.1 # [||]", "", "to,neck")]
    [InlineData("frobnicate x [||]", "", "wire,neck")]
    public void Words_ThatAreOffered_AreThoseOfThePlace(string marked, string offered, string others)
    {
        var example = MarkedText.Parse(Circuit + marked);

        var words = At(example.Text, example.Spans[0].Start).Select(one => one.Word).ToList();

        Assert.Empty(offered.Split(',', StringSplitOptions.RemoveEmptyEntries).Except(words));
        Assert.Empty(others.Split(',').Intersect(words));
        Assert.Equal(words.Distinct(Naming.Comparer), words);
    }

    [Theory]
    [InlineData("wire vol.2[||]", "2", "wiper")]
    [InlineData("wire neck.[||]", "n-start", "start of the coil n")]
    [InlineData("wire sel.[||]", "A1", "bridge: A0")]
    [InlineData("wire v[||]", "vol", "pot 250k audio")]
    [InlineData("pot x push[||]", "push-pull", "")]
    public void Word_ThatIsOffered_SaysWhatItIs(string marked, string word, string detail)
    {
        var example = MarkedText.Parse(Circuit + marked);

        var found = At(example.Text, example.Spans[0].Start).Single(one => one.Word == word);

        Assert.Contains(detail, found.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Colour_OfTheFileAndOfTheStandard_HasItsPaint()
    {
        var words = At(Circuit + "wire vol.1 to vol.2 ", Circuit.Length + "wire vol.1 to vol.2 ".Length);

        Assert.Equal("#efe3c2", words.Single(one => one.Word == "cream").Paint);
        Every.Item(
            words.Where(one => one.Kind == CompletionKind.Colour),
            one => Assert.Matches("^#[0-9A-Fa-f]{6}$", one.Paint!)
        );
    }

    /// <summary>What somebody wrote in a right file was offered where it was begun.</summary>
    [Fact]
    public void EachWordOfEachExample_IsOfferedWhereItStarts()
    {
        Every.Item(
            Repository.Examples,
            path =>
            {
                var compiled = Compilation.Of(new SourceText("a.wiring", File.ReadAllText(path)), NoSources.Instance);
                Every.Item(
                    WordTokens.Of(compiled).Where(token => IsToBeOffered(compiled.Source, token)),
                    token =>
                        Assert.True(
                            Completions
                                .At(compiled, token.At.Start)
                                .Any(one => Begins(one.Word, compiled.Source.Content[one.At.Start..token.At.End])),
                            $"'{compiled.Source.Slice(token.At)}' in line {compiled.Source.PositionOf(token.At.Start).Line} of {path}"
                        )
                );
            }
        );

        static bool Begins(string offered, string written) =>
            Naming.Alike(offered, written)
            || offered.StartsWith(written + "=", StringComparison.OrdinalIgnoreCase)
            || offered.StartsWith(written + ":", StringComparison.OrdinalIgnoreCase)
            || offered.StartsWith(written + ".", StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void EachWordThatStartsALine_SaysWhatItIs()
    {
        const string block = "define switch x\n    ";
        var words = At("", 0).Concat(At(block, block.Length)).ToList();

        Assert.Equal(
            Keywords.Statements.Except(["note"]).Concat(Keywords.StandardKinds).Concat(Keywords.Insides),
            words.Select(one => one.Word)
        );
        Every.Item(words, one => Assert.True(one.Detail.Length > 0, one.Word));
    }

    /// <summary>All but names that are given here, figures, and what is in quotes or a comment.</summary>
    private static bool IsToBeOffered(SourceText source, WordToken token) =>
        token is { IsDeclaration: false, Kind: not (WordKind.Number or WordKind.Text or WordKind.Comment) }
        && source.Slice(source.LineSpan(source.PositionOf(token.At.Start).Line)) is var line
        && !line.StartsWith("finish", StringComparison.Ordinal)
        && !line.StartsWith("about", StringComparison.Ordinal);

    private static IReadOnlyList<Completion> At(string text, int offset) =>
        Completions.At(Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance), offset);
}
