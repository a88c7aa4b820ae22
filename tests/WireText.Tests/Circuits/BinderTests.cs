using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Circuits;

public class BinderTests
{
    [Fact]
    public void Bind_PlainValuesOfATwoCoilPickup_AreSharedByItsCoilsInSeries()
    {
        // n_s identical coils in series: R = n R1, L = n L1, C = C1/n (Paiva, Pakarinen, Välimäki 2012, eq. 54).
        var circuit = Bind("pickup hb humbucker-4 dcr=8k l=6H c=100p");

        Every.Item(
            circuit.Elements.Cast<Coil>(),
            coil =>
            {
                Assert.Equal(4e3, coil.Ohms, 9);
                Assert.Equal(3, coil.Henries, 12);
                Assert.Equal(200e-12, coil.Farads, 1e-20);
            }
        );
        Assert.Equal(["hb.n", "hb.s"], circuit.Elements.Select(e => e.Name));
    }

    /// <summary>In series they make what the plain key says: resistances, inductances and turns add, capacitances by their inverses.</summary>
    [Fact]
    public void Bind_SectionKey_LeavesTheRestOfThePlainKeyToTheOtherCoil()
    {
        var circuit = Bind(
            "pickup hb humbucker-4 dcr=8.4k n.dcr=4.3k l=5H s.l=2H c=40p n.c=60p turns=10000 s.turns=5200"
        );
        var coils = circuit.Elements.Cast<Coil>().ToList();

        Assert.Equal([4.3e3, 4.1e3], coils.Select(coil => coil.Ohms));
        Assert.Equal([3.0, 2.0], coils.Select(coil => coil.Henries));
        // 1/40 − 1/60 = 1/120.
        Assert.Equal([60e-12, 120e-12], coils.Select(coil => Math.Round(coil.Farads, 15)));
        Assert.Equal([4800, 5200], coils.Select(coil => coil.Turns));
    }

    [Theory]
    [InlineData("dcr=8k n.dcr=9k", "'dcr=8k' is the whole pickup's and leaves nothing for coil 's'")]
    [InlineData("l=4H s.l=4H", "'l=4H' is the whole pickup's and leaves nothing for coil 'n'")]
    [InlineData("c=40p n.c=36p", "'c=40p' is the whole pickup's and leaves nothing for coil 's'")]
    [InlineData("turns=5000 n.turns=5200", "'turns=5000' is the whole pickup's and leaves nothing for coil 's'")]
    public void Bind_SectionKeyThatTakesTheWhole_IsReported(string keys, string message)
    {
        var source = new SourceText("a.wiring", $"pickup hb humbucker-4 {keys}\n");

        Assert.Equal(
            message,
            Assert.Single(Compilation.Of(source, NoSources.Instance).Findings, f => f.Id == "bad-value").Message
        );
    }

    [Fact]
    public void Bind_CoilByItsWinding_HasTheResistanceOfItsWire()
    {
        // 8000 turns of AWG 42, mean turn 120.3 mm: 5265 Ω with the exact diameter (ASTM B258, IEC 60028).
        var circuit = Bind("pickup neck single-coil turns=8000 awg=42 turn-length=120.3mm");

        Assert.Equal(5265, circuit.Elements.Cast<Coil>().Single().Ohms, 3.0);
    }

    [Fact]
    public void Bind_ConcentricPot_HasTwoDialsAndTwoValues()
    {
        var circuit = Bind("pot duo concentric 250k audio bottom.value=500k bottom.taper=linear");

        Assert.Equal(["duo.top", "duo.bottom"], circuit.Dials.Select(d => d.Name));
        Assert.Equal([250e3, 500e3], circuit.Elements.Cast<Track>().Select(t => t.Ohms));
        Assert.Equal([Taper.Audio, Taper.Linear], circuit.Elements.Cast<Track>().Select(t => t.Taper));
        Assert.Equal("250k/500k", circuit.Parts[0].ValueLabel);
    }

    [Theory]
    [InlineData("log", "audio")]
    [InlineData("LOG", "audio")]
    [InlineData("logarithmic", "audio")]
    [InlineData("lin", "linear")]
    [InlineData("reverse-log", "reverse-audio")]
    public void Bind_TaperInAWordOfTheTrade_IsTheTaperOfTheLanguage(string said, string taper)
    {
        var circuit = Bind($"pot vol 250k {said}\npot tone 250k taper={said}");

        Assert.Equal([taper, taper], circuit.Elements.Cast<Track>().Select(track => track.Taper.Name));
        Assert.Equal([taper, taper], circuit.Parts.Select(part => part.TaperLabel));
    }

    [Theory]
    [InlineData("vol.W", "vol.2")]
    [InlineData("vol.wiper", "vol.2")]
    [InlineData("duo.top.w", "duo.top.2")]
    [InlineData("duo.bottom.wiper", "duo.bottom.2")]
    [InlineData("mine.W", "mine.W")]
    public void Bind_WiperByItsWord_IsTheLugOfTheWiper(string said, string lug)
    {
        var circuit = Bind(
            $"""
            define pot lettered
                lugs L W H
                track L W H
            pot vol 250k audio
            pot duo concentric 250k audio
            pot mine lettered 250k audio
            jack out mono
            wire {said} to out.tip red
            """
        );

        Assert.Equal(lug, circuit.NameOf(circuit.Wires[0].From));
    }

    [Fact]
    public void Bind_BlendPot_HasOneDialForBothTracksThatRestsInTheMiddle()
    {
        var circuit = Bind("pot mix blend 500k");

        Assert.Equal([0, 0], circuit.Elements.Cast<Track>().Select(t => t.Dial));
        Assert.Equal(5, circuit.Dials.Single().Rest);
    }

    [Fact]
    public void Bind_RunOverSeveralLugs_IsOneStretchFromEachToTheNext()
    {
        var circuit = Bind("switch sel lever-3way\njack out\nwire sel.A0 to sel.B0 to out.tip red");

        Assert.Equal(["sel.A0--sel.B0", "sel.B0--out.tip"], circuit.Wires.Select(w => w.Id));
        Assert.True(circuit.Nets.SameNet(LugOf(circuit, "sel.A0"), LugOf(circuit, "out.tip")));
        Assert.Single(circuit.Wires.Select(w => w.Run).Distinct());
    }

    [Theory]
    [InlineData("wire [|vol.2|] to [|out.tip|] red")]
    [InlineData("wire [|VOL.2|] to [|out.TIP|] red")]
    [InlineData("wire [|vol.2|] to [|vol.2|] red")]
    [InlineData("cable [|vol.2|] to [|out.tip|] red twisted")]
    [InlineData("cable vol.2 to out.tip red braid [|vol.case|] to [|out.sleeve|]")]
    [InlineData("cable vol.2 to out.tip red braid cut to [|out.sleeve|]")]
    [InlineData("splice link [|vol.2|]")]
    [InlineData("cap dark 22n from vol.2 to [|out.tip|]")]
    public void Bind_AnyWire_KeepsWhereItsLineNamesItsEnds(string marked)
    {
        var (text, spans) = MarkedText.Parse("pot vol 250k audio\njack out\n" + marked);

        var wire = Bind(text).Wires[^1];

        Assert.Equal(spans, new[] { wire.FromAt, wire.ToAt }.OfType<SourceLocation>().Select(place => place.Span));
    }

    [Fact]
    public void Bind_TouchingMetal_IsOneNetButNotSoldered()
    {
        var circuit = Bind("pot vol 250k audio\nmetal plate\ntouch vol.case plate");

        var (pot, plate) = (LugOf(circuit, "vol.case"), LugOf(circuit, "plate"));
        Assert.True(circuit.Nets.SameNet(pot, plate));
        Assert.False(circuit.Nets.SameSolder(pot, plate));
    }

    [Fact]
    public void Bind_CableWithBraid_JoinsCoreAndBraidApart()
    {
        var circuit = Bind("pot vol 250k audio\njack out\ncable vol.2 to out.tip white braid vol.case to out.sleeve");

        Assert.True(circuit.Nets.SameNet(LugOf(circuit, "vol.2"), LugOf(circuit, "out.tip")));
        Assert.True(circuit.Nets.SameNet(LugOf(circuit, "vol.case"), LugOf(circuit, "out.sleeve")));
        Assert.False(circuit.Nets.SameNet(LugOf(circuit, "out.tip"), LugOf(circuit, "out.sleeve")));
        Assert.Equal(circuit.Cables.Single().Braid, circuit.Wires.Single(w => w.Kind == WireKind.Braid).Index);
    }

    [Fact]
    public void Bind_BraidCutAtOneEnd_JoinsNothingThere()
    {
        var circuit = Bind("pot vol 250k audio\njack out\ncable vol.2 to out.tip white braid vol.case to cut");

        Assert.Equal(-1, circuit.Wires.Single(w => w.Kind == WireKind.Braid).To);
        Assert.DoesNotContain(circuit.Joins, j => j.Wire == circuit.Cables.Single().Braid);
    }

    [Fact]
    public void Bind_PartBetweenTwoLugs_HangsByItsLeads()
    {
        var circuit = Bind("pot tone 250k audio\ncap dark 47n from tone.2 to tone.case");

        Assert.Equal((LugOf(circuit, "tone.2"), LugOf(circuit, "tone.case")), circuit.FindPart("dark")!.HangsOn);
        Assert.True(circuit.Nets.SameNet(LugOf(circuit, "dark.1"), LugOf(circuit, "tone.2")));
        Assert.Equal("47n", circuit.FindPart("dark")!.ValueLabel);
    }

    [Fact]
    public void Bind_Splice_IsALugOfItsOwn()
    {
        var circuit = Bind(
            "pickup hb humbucker-4\nswitch cut spdt\nsplice link hb.n-finish hb.s-finish\nwire link to cut.A0 violet"
        );

        Assert.True(circuit.Nets.SameNet(LugOf(circuit, "hb.n-finish"), LugOf(circuit, "cut.A0")));
        Assert.Equal("link", circuit.FindLug("link")!.Name);
    }

    [Fact]
    public void Bind_OwnPositionsAndRest_AreTheControls()
    {
        var circuit = Bind("switch sel lever-3way\npositions sel bridge both neck\nrest sel=neck");

        Assert.Equal(["bridge", "both", "neck"], circuit.Controls.Single().Positions.Select(p => p.Name));
        Assert.Equal(2, circuit.Controls.Single().Rest);
    }

    [Fact]
    public void Bind_OwnPart_WorksLikeAStandardOne()
    {
        var circuit = Bind(
            """
            define switch bench-slide "two rows of four"
                body     box 32,12
                lugs     L1 -12,-5  L2 -4,-5  R1 -12,5  R2 -4,5
                position 1  L1+L2  R1+R2
                position 2
                between  make-before-break
                spare    L1 R1
            switch one bench-slide
            jack   out
            wire   one.L1 to out.tip red
            """
        );

        var control = circuit.Controls.Single(c => c.Name == "one");
        Assert.Equal(SwitchOver.MakeBeforeBreak, control.Between);
        Assert.Equal(2, control.Positions[0].Closed.Length);
        Assert.Empty(control.Positions[1].Closed);
    }

    [Fact]
    public void Bind_NamesInAnotherCase_AreTheSame()
    {
        var circuit = Bind("POT Vol 250K Audio\nJack OUT\nwire VOL.2 to out.TIP RED");

        Assert.Equal("Vol.2--OUT.tip", circuit.Wires.Single().Id);
    }

    [Fact]
    public void Bind_Include_TakesItsDefinitions()
    {
        var sources = new Sources(
            ("shop.wiring", "include \"deeper.wiring\""),
            ("deeper.wiring", "define switch mine\n    lugs a 0,0 b 5,0\n    position 1 a+b\n    position 2")
        );

        var bound = Binder.Bind(Parse("include \"shop.wiring\"\nswitch sel mine"), sources);

        Assert.Empty(bound.Findings);
        Assert.Equal("mine", bound.Circuit!.Parts.Single().Definition.Model);
    }

    [Fact]
    public void Bind_IncludeWithMoreThanDefinitions_IsReportedThere()
    {
        var sources = new Sources(("shop.wiring", "jack out"));

        var finding = Binder.Bind(Parse("include \"shop.wiring\""), sources).Findings.Single();

        Assert.Equal(("only-definitions", "shop.wiring"), (finding.Id, finding.Location.Source.Path));
    }

    [Fact]
    public void Bind_IncludesInACircle_EndsAndReadsEachOnce()
    {
        var sources = new Sources(
            ("a.wiring", "include \"b.wiring\"\ndefine switch one\n    lugs a 0,0 b 5,0"),
            ("b.wiring", "include \"a.wiring\"\ndefine switch two\n    lugs a 0,0 b 5,0")
        );

        var bound = Binder.Bind(Parse("include \"a.wiring\"\ninclude \"b.wiring\""), sources);

        Assert.Empty(bound.Findings);
        Assert.NotNull(bound.Catalogue.Find("switch", "two"));
    }

    [Fact]
    public void Bind_IncludesSeventeenDeep_IsReported()
    {
        var files = Enumerable.Range(1, 17).Select(i => ($"{i}.wiring", $"include \"{i + 1}.wiring\"")).ToArray();

        var bound = Binder.Bind(Parse("include \"1.wiring\""), new Sources(files));

        Assert.Equal("include-too-deep", bound.Findings.Single().Id);
    }

    [Theory]
    [InlineData(CircuitLimits.MaxParts, false)]
    [InlineData(CircuitLimits.MaxParts + 1, true)]
    public void Bind_PartsPastTheLimit_AreReported(int count, bool isTooLarge)
    {
        var text = string.Join('\n', Enumerable.Range(1, count).Select(i => $"metal m{i}"));

        var bound = Binder.Bind(Parse(text), NoSources.Instance);

        Assert.Equal(isTooLarge, bound.Findings.Any(f => f.Id == "too-large"));
    }

    private static Circuit Bind(string text)
    {
        var bound = Binder.Bind(Parse(text), NoSources.Instance);
        Assert.Empty(bound.Findings);
        return bound.Circuit!;
    }

    private static WiringTree Parse(string text)
    {
        var tree = WiringParser.Parse(new SourceText("test.wiring", text));
        Assert.Empty(tree.Findings);
        return tree;
    }

    private static int LugOf(Circuit circuit, string name) => circuit.FindLug(name)!.Index;

    private sealed class Sources(params (string Path, string Text)[] files) : ISourceProvider
    {
        public SourceLoad Load(string path, SourceText from) =>
            files.FirstOrDefault(f => f.Path == path) is { Path: not null } file
                ? SourceLoad.Found(new SourceText(file.Path, file.Text))
                : SourceLoad.Missing("there is no such file");
    }
}
