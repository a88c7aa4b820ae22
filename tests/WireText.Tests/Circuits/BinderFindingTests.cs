using WireText.Circuits.Binding;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Circuits;

public class BinderFindingTests
{
    [Theory]
    [InlineData("name-taken", "pot vol 250k audio\npot [|vol|] 250k audio")]
    [InlineData("name-taken", "pot vol 250k audio\nsplice [|VOL|]")]
    [InlineData(
        "name-taken",
        "pot a 250k audio\njack [|a|] mono\njack out\nwire a.tip to out.tip red\nwire a.2 to out.tip red"
    )]
    [InlineData("name-taken", "pot tone 250k audio\ncap [|tone|] 22n from tone.2 to tone.case")]
    [InlineData("name-taken", "jack sel mono\nswitch [|sel|] lever-3way\npositions sel a b c\nexpect sel=a: silence")]
    [InlineData("wrong-count", "switch sel lever-3way\npositions sel [|a b|]\nrest sel=a\nexpect sel=b: silence")]
    [InlineData("said-twice", "switch sel lever-3way\npositions sel a b [|a|]\nexpect sel=a: silence")]
    [InlineData("unknown-lug", "pot duo concentric 250k audio\njack out\nwire duo.[|w|] to out.tip red")]
    [InlineData("unknown-kind", "[|pikup|] neck single-coil")]
    [InlineData("missing-model", "switch [|sel|]")]
    [InlineData("unknown-model", "switch sel [|lever-3wy|]")]
    [InlineData("unknown-word", "pickup neck [|singel-coil|]")]
    [InlineData("unknown-word", "pot vol 250k [|auido|]")]
    [InlineData("unknown-word", "pickup neck single-coil [|6k|]")]
    [InlineData("said-twice", "pot vol 250k [|500k|] audio")]
    [InlineData("missing-value", "pot [|vol|] audio")]
    [InlineData("missing-value", "cap [|dark|]")]
    [InlineData("missing-value", "pot vol 250k audio [|measured|]")]
    [InlineData("missing-value", "pot vol 250k [|measured|] tol=5%")]
    [InlineData("bad-value", "pot vol 250k measured [|lots|]")]
    [InlineData("said-twice", "pot vol 250k measured 262k measured [|263k|]")]
    [InlineData("bad-value", "pot vol [|500k..250k|] audio")]
    [InlineData("bad-value", "pot vol [|250k..lots|] audio")]
    [InlineData("bad-value", "battery b [|9V..12V|]")]
    [InlineData("unknown-key", "battery b 9V [|measured|]=8V")]
    [InlineData("bad-value", "battery b [|?|]")]
    [InlineData("bad-value", "pot vol [|500m|] audio")]
    [InlineData("bad-value", "pot vol [|250|] audio")]
    [InlineData("bad-value", "cap dark code=[|47k3|]")]
    [InlineData("bad-value", "pickup neck single-coil wind=[|clockwise|]")]
    [InlineData("bad-value", "pickup neck single-coil magnet=[|up|]")]
    [InlineData("bad-value", "pot vol 250k tol=[|20|]")]
    [InlineData("bad-value", "pot vol 250k taper=[|0:0%,5|]")]
    [InlineData("bad-value", "pickup neck humbucker-4 dcr=[|8|]")]
    [InlineData("bad-value", "pickup neck single-coil awg=42 turn-length=152mm turns=[|many|]")]
    [InlineData("bad-value", "pot vol 250k hole=[|8cm|]")]
    [InlineData("bad-value", "pot vol 250k hole=[|0|]")]
    [InlineData("bad-value", "jack out mono hole=[|101mm|]")]
    [InlineData("bad-value", "switch sel lever-3way hole=[|-3|]")]
    [InlineData("unknown-key", "cap dark 22n [|hole|]=8mm")]
    [InlineData("unknown-key", "pickup neck single-coil [|hole|]=8mm")]
    [InlineData("unknown-key", "pickup neck single-coil [|drc|]=6k")]
    [InlineData("unknown-key", "switch sel lever-3way [|value|]=6k")]
    [InlineData("unknown-key", "pickup neck humbucker-4 [|x.dcr|]=4k")]
    [InlineData("said-twice", "pickup neck humbucker-4 [|wind=cw|]")]
    [InlineData("bare-taper-letter", "pot vol 250k [|A|]")]
    [InlineData("bare-taper-letter", "pot vol [|A|]500k")]
    [InlineData("unknown-part", "jack out\nwire [|uot|].tip to out.sleeve red")]
    [InlineData("unknown-lug", "jack out\nwire out.[|tpi|] to out.sleeve red")]
    [InlineData("unknown-lug", "metal saddle\njack out\nwire saddle.[|case|] to out.sleeve red")]
    [InlineData("which-lug", "jack out\npot vol 250k audio\nwire [|vol|] to out.sleeve red")]
    [InlineData("unknown-colour", "jack out\nwire out.tip to out.sleeve [|rde|]")]
    [InlineData("unknown-key", "jack out\nwire out.tip to out.sleeve red [|lenght|]=12mm")]
    [InlineData("bad-value", "jack out\nwire out.tip to out.sleeve red length=[|12|]")]
    [InlineData("bad-value", "jack out\nwire out.tip to out.sleeve red awg=[|thin|]")]
    [InlineData("lead-in-a-run", "jack out\npickup neck single-coil\nwire out.tip to [|neck.hot|] to out.sleeve red")]
    [InlineData(
        "lead-ends-twice",
        "jack out\npickup neck single-coil\nwire neck.hot to out.tip red\nwire [|neck.hot|] to out.sleeve red"
    )]
    [InlineData(
        "lead-to-lead",
        "pickup neck single-coil\npickup bridge single-coil\nwire [|neck.hot to bridge.ground|] red"
    )]
    [InlineData("not-two-leads", "jack out\npot vol 250k audio [|from out.tip to out.sleeve|]")]
    [InlineData("no-positions", "pot vol 250k audio\npositions [|vol|] a b")]
    [InlineData("unknown-part", "positions [|sel|] a b")]
    [InlineData("wrong-count", "switch sel lever-3way\npositions sel [|neck bridge|]")]
    [InlineData("reserved-name", "switch sel lever-3way\npositions sel neck [|any|] bridge")]
    [InlineData("said-twice", "switch sel lever-3way\npositions sel neck both [|neck|]")]
    [InlineData("unknown-position", "switch sel lever-3way\nrest sel=[|4|]")]
    [InlineData("unknown-position", "pot vol 250k audio\nrest vol=[|11|]")]
    [InlineData("unknown-part", "arrange\n    [|neck|]")]
    [InlineData("said-twice", "jack out\narrange\n    out [|out|]")]
    [InlineData("bad-turn", "jack out\n[|place out at 1,2 turned 45|]")]
    [InlineData("said-twice", "jack out\nplace out at 1,2\nplace [|out|] at 3,4")]
    [InlineData("said-twice", "about job \"one\"\nabout [|JOB|] \"two\"")]
    [InlineData("said-twice", "circuit \"one\"\ncircuit [|\"two\"|]")]
    [InlineData("model-taken", "define switch [|lever-3way|]\n    lugs a 0,0 b 1,1\n    position 1 a+b")]
    [InlineData("bad-definition", "define switch mine\n    lugs a 0,0 b 1,1\n    position 1 a+[|c|]")]
    [InlineData("bad-definition", "define switch [|mine|]\n    body box 1,1")]
    [InlineData("bad-definition", "define switch mine\n    lugs a 0,0 b 1,1\n    [|hole round 120|]")]
    [InlineData("bad-definition", "define switch mine\n    lugs a 0,0 b 1,1\n    [|hole slot -26,2 at 3,0|]")]
    [InlineData("bad-definition", "define switch mine\n    lugs a 0,0 [|a|] 1,1")]
    [InlineData("cannot-include", "include [|\"mine.wiring\"|]")]
    [InlineData("unknown-part", "jack out\nexpect [|sel|]=1: silence")]
    [InlineData("no-positions", "jack out\nexpect [|out|]=1: silence")]
    [InlineData("unknown-position", "switch sel lever-3way\nexpect sel=[|4|]: silence")]
    [InlineData("unknown-position", "pot vol 250k audio\nexpect vol=[|11|]: silence")]
    [InlineData("unknown-position", "pot vol 250k audio\nexpect vol=[|any|]: silence")]
    [InlineData("unknown-position", "jack out\nexpect others=[|up|]: silence")]
    [InlineData("said-twice", "pot vol 250k audio\nexpect vol=1 [|vol|]=2: silence")]
    [InlineData("unknown-part", "jack out\nexpect rest: [|neck|]")]
    [InlineData("unknown-part", "pot vol 250k audio\nexpect rest: [|vol|]")]
    [InlineData("unknown-part", "pickup hb humbucker-4\nexpect rest: [|hb.x|]")]
    [InlineData("unknown-part", "pickup p single-coil\nexpect rest: p through [|mix|]")]
    [InlineData("bad-value", "jack out\nexpect rest: reads [|6|]")]
    [InlineData("bad-value", "jack out\nexpect rest: reads [|6nF|]")]
    [InlineData("bad-value", "jack out\nexpect rest: reads 6k ±[|1dB|]")]
    [InlineData("bad-value", "jack out\nexpect rest: level [|-6|]")]
    [InlineData("bad-value", "jack out\nexpect rest: level -6dB +-[|1%|]")]
    [InlineData("not-on-base", "jack out\n[|lift out.tip|]")]
    [InlineData("cannot-read-base", "base [|\"stock.wiring\"|]\nlift out.tip")]
    public void Bind_OneSlip_IsReportedAtItsPlace(string id, string marked)
    {
        var (text, spans) = MarkedText.Parse(marked);

        var found = Bind(text).Findings;

        var finding = found[0];
        Assert.Equal((id, spans.Single()), (finding.Id, finding.Location.Span));
        Assert.Single(found);
    }

    [Fact]
    public void Bind_UnknownLug_SaysWhatThereIsAndWhatWasMeant()
    {
        var finding = Bind("switch sel lever-3way\njack out\nwire sel.A4 to out.tip red").Findings.Single();

        Assert.Equal("no lug 'A4' on 'sel', a lever-3way switch: it has A0–A3, B0–B3", finding.Message);
        Assert.Equal("did you mean 'A3'?", finding.Help);
    }

    [Fact]
    public void Bind_PartThatCouldNotBeBuilt_SilencesWhatLeadsToIt()
    {
        var found = Bind("switch sel lever-9way\njack out\nwire sel.A1 to out.tip red\npositions sel a b c").Findings;

        Assert.Equal("unknown-model", Assert.Single(found).Id);
    }

    [Fact]
    public void Bind_AllLinesInAnyOrder_MakesTheSameNets()
    {
        string[] lines = ["wire vol.2 to out.tip red", "jack out", "pot vol 250k audio", "wire vol.1 to vol.case bare"];

        var forward = Bind(string.Join('\n', lines)).Circuit!;
        var backward = Bind(string.Join('\n', lines.Reverse())).Circuit!;

        Assert.Equal(NetNames(forward), NetNames(backward));

        static IEnumerable<string> NetNames(WireText.Circuits.Circuit circuit) =>
            circuit
                .Nets.Members.Select(m => string.Join(' ', m.Select(circuit.NameOf).Order(StringComparer.Ordinal)))
                .Order(StringComparer.Ordinal);
    }

    private static BoundCircuit Bind(string text)
    {
        var tree = WiringParser.Parse(new SourceText("test.wiring", text));
        Assert.Empty(tree.Findings);
        return Binder.Bind(tree, NoSources.Instance);
    }
}
