using WireText.Comparing;
using WireText.Editing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Editing;

public class NewNameTests
{
    [Theory]
    [InlineData(
        "pickup [|neck|] single-coil\nwire [|neck|].hot to neck2.tip white\narrange\n    [|NECK|] .\nexpect rest: reversed [|neck|] series a",
        "pickup neck2 single-coil"
    )]
    [InlineData("switch [|sel|] lever-3way\npositions [|sel|] a b c\nexpect [|sel|]=a: silence\nrest [|sel|]=b", "")]
    [InlineData(
        "switch sel lever-3way\npositions sel [|a|] b c\nexpect sel=[|A|] x=a: a\nrest sel=[|a|]",
        "switch x lever-3way"
    )]
    [InlineData(
        "switch [|sel|] lever-3way\nfind [|sel|] at tone.1\nwire [|sel|].A0 to tone.1 red",
        "pot tone 500k audio"
    )]
    [InlineData("switch sel lever-3way\nfind sel at [|tone|].1\npot [|tone|] 500k audio", "")]
    [InlineData(
        "switch [|sel|] lever-3way\nfound [|sel|]=1 [|sel|].A0 to tone.1: reads open\nfound [|sel|]=2 turning tone: at most 60k",
        "pot tone 500k audio"
    )]
    [InlineData(
        "pickup [|neck|] single-coil\nfound [|neck|] alone: reads 6k\nfound rest: heard [|neck|]\nfound joint a.1 of [|neck|].hot: reads 0",
        "pot tone 500k audio"
    )]
    [InlineData("cap [|dark|] 22n from tone.2 to tone.1\nexpect rest: neck through [|dark|]", "pot tone 500k audio")]
    [InlineData("colour [|cream|] CR #efe3c2\nwire a.1 to b.1 [|cream|]/black", "wire a.2 to b.2 white")]
    [InlineData("define pot [|mine|]\n    lugs 1 0,0 2 1,1\npot vol [|mine|]", "switch mine lever-3way")]
    [InlineData(
        "define switch own\n    lugs 1 0,0 2 5,0\n    position [|pull|]=in 1+2\n    position [|pull|]=out\n    rest [|pull|]=out\nswitch s own\nexpect s.[|pull|]=in: open",
        "switch t lever-3way"
    )]
    [InlineData(
        "define switch own\n    lugs 1 0,0 2 5,0\n    position [|in|] 1+2\n    position out\nswitch s own\nexpect s=[|in|]: open",
        ""
    )]
    public void Places_OfWhatIsMarked_AreTheMarks(string marked, string beside)
    {
        var example = MarkedText.Parse($"{marked}\n{beside}");
        var table = TableOf(("a.wiring", example.Text));

        Every.Item(
            example.Spans,
            span =>
            {
                var use = table.At(span.Start)!;
                Assert.Equal(example.Spans, NewName.Places(use, [table]).Select(at => at.Span));
                Assert.Equal(use, table.At(span.End));
            }
        );
    }

    [Fact]
    public void NewName_OfAPartBelowAMod_GoesThroughBothFiles()
    {
        var texts = new Texts(
            (
                "stock.wiring",
                "cap dark 22n from tone.2 to tone.1\npot tone 500k audio\nswitch sel toggle-3way\npositions sel a b c\n"
            ),
            (
                "mod.wiring",
                "base \"stock.wiring\"\nreplace dark 47n\nlift dark\nexpect sel=b: open\npot vol 500k audio\n"
            )
        );
        var table = NameTable.Of(texts["mod.wiring"]);

        Assert.Equal(["mod.wiring:28", "mod.wiring:42", "stock.wiring:4"], PlacesOf("replace [|dark|]"));
        Assert.Equal(["mod.wiring:58", "stock.wiring:94"], PlacesOf("expect sel=[|b|]"));
        Assert.Equal("'tone' is taken in line 2 of 'stock.wiring'", Problem("pot [|vol|]", "tone"));

        IEnumerable<string> PlacesOf(string marked) =>
            NewName.Places(UseAt(marked), [table]).Select(at => $"{at.Source.Path}:{at.Span.Start}");

        string? Problem(string marked, string name) => NewName.Of(UseAt(marked), name, [table]).Problem;

        NameUse UseAt(string marked)
        {
            var example = MarkedText.Parse(marked);
            var line = texts["mod.wiring"].Source.Content.IndexOf(example.Text, StringComparison.Ordinal);
            return table.At(line + example.Spans[0].Start)!;
        }
    }

    [Fact]
    public void NewName_OfAModelInAnIncludedFile_GoesThroughBothFiles()
    {
        var texts = new Texts(
            (
                "parts.wiring",
                "define switch own\n    lugs 1 0,0 2 5,0\n    position in 1+2\n    position out\ncolour cream CR #efe3c2\n"
            ),
            ("a.wiring", "include \"parts.wiring\"\nswitch s own\nexpect s=in: open\nwire s.1 to s.2 cream\n")
        );
        var table = NameTable.Of(texts["a.wiring"]);
        var source = texts["a.wiring"].Source.Content;

        foreach (var word in (string[])["own", "in", "cream"])
        {
            var use = table.At(source.LastIndexOf(word, StringComparison.Ordinal))!;
            Assert.Equal(["a.wiring", "parts.wiring"], NewName.Places(use, [table]).Select(at => at.Source.Path));
            Assert.Equal("parts.wiring", use.DeclaredAt!.Value.Source.Path);
        }
    }

    [Theory]
    [InlineData("pot [|vol|] 500k audio\npot tone 500k audio", "tone", "'tone' is taken in line 2 of 'a.wiring'")]
    [InlineData(
        "pot [|vol|] 500k audio",
        "to",
        "'to' means something else in this language: add a letter or a number to the name"
    )]
    [InlineData("pot [|vol|] 500k audio", "2", "a name starts with a letter")]
    [InlineData("pot vol 500k audio\nwire vol.[|2|] to a.1 white", "x", "a lug has the name that its part gives it")]
    [InlineData("switch sel lever-3way\npositions sel [|a|] b c", "b", "'b' is taken in line 2 of 'a.wiring'")]
    [InlineData(
        "switch sel lever-3way\npositions sel [|a|] b c",
        "any",
        "'any' means each of the positions; it names none"
    )]
    [InlineData("switch sel lever-3way\npositions sel [|a|] b c", "a b", "a position is one word")]
    [InlineData("wire a to b [|white|]", "x", "no file says where 'white' gets its name")]
    [InlineData("colour [|cream|] CR #efe3c2", "white", "'white' is a colour already")]
    public void NewName_ThatCannotBe_SaysWhy(string marked, string name, string problem)
    {
        var example = MarkedText.Parse(marked);
        var table = TableOf(("a.wiring", example.Text));

        Assert.Equal(problem, NewName.Of(table.At(example.Spans[0].Start)!, name, [table]).Problem);
    }

    /// <summary>What is compared is the circuit, and not by the code that renames.</summary>
    [Fact]
    public void NewName_OfEachPartOfEachExample_LeavesTheCircuitAsItWas()
    {
        Every.Item(
            Repository.Examples,
            path =>
            {
                var before = Compilation.Of(new SourceText("a.wiring", File.ReadAllText(path)), NoSources.Instance);
                var table = NameTable.Of(before);
                var names = table.Own.Where(use =>
                    use is { IsDeclaration: true, Kind: NameKind.Part or NameKind.Position }
                );
                Every.Item(
                    names,
                    use =>
                    {
                        var edits = NewName.Of(use, use.At.Text + "-x", [table]).Edits;
                        var after = Compilation.Of(
                            new SourceText("a.wiring", TextEdit.Apply(before.Source.Content, edits)),
                            NoSources.Instance
                        );
                        var change = CircuitComparison.Of(before.Circuit!, after.Circuit!);
                        Assert.Empty(change.Dropped);
                        Assert.Empty(change.Changed);
                        Assert.Empty(change.Wires);
                        Assert.Equal(use.Kind == NameKind.Part, change.Names.IsEmpty);
                        Assert.Equal(before.Circuit!.Expectations.Length, after.Circuit!.Expectations.Length);
                        Assert.Empty(after.ReadingFindings);
                    }
                );
            }
        );
    }

    [Fact]
    public void Declaration_OfALug_IsThatOfItsPart()
    {
        var example = MarkedText.Parse("pot [|vol|] 500k audio\nwire vol.2 to out.tip white");
        var table = TableOf(("a.wiring", example.Text));

        Assert.Equal(
            example.Spans[0],
            table.DeclarationAt(example.Text.IndexOf("2 to", StringComparison.Ordinal))!.Value.Span
        );
        Assert.Null(table.DeclarationAt(example.Text.IndexOf("tip", StringComparison.Ordinal)));
    }

    private static NameTable TableOf(params (string Path, string Content)[] texts) =>
        NameTable.Of(new Texts(texts)[texts[0].Path]);
}
