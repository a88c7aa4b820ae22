using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Circuits;

/// <summary>Statements of two files in one circuit: each place lies in the file where its line stands.</summary>
public class SeveralSourcesTests
{
    /// <summary>The longer of the two, so that no span of it fits into the other.</summary>
    private static readonly SourceText Stock = new(
        "stock.wiring",
        """
        # A comment that moves every place of this file behind the end of the other one, line for line and word for word.
        pickup neck single-coil
        pot    vol  250k audio
        jack   out  mono
        wire   neck.hot to vol.3 white
        wire   vol.2    to out.tip red
        """
    );

    private static readonly SourceText Mod = new(
        "mod.wiring",
        """
        cap bleed 1n from vol.3 to vol.2
        wire vol.1 to out.sleeve black
        cable neck.ground to vol.case black twisted
        """
    );

    [Fact]
    public void Bind_StatementsOfTwoFiles_MakesOneCircuit()
    {
        var bound = Bind(Stock, Mod);

        Assert.Empty(bound.Findings);
        Assert.Equal(["neck", "vol", "out", "bleed"], bound.Circuit!.Parts.Select(part => part.Name));
    }

    [Fact]
    public void Place_OfEachPart_LiesInItsOwnFile()
    {
        var circuit = Bind(Stock, Mod).Circuit!;

        Every.Item(circuit.Parts, part => Assert.Equal(part.Name, part.NameAt.Text));
        Assert.Equal([Stock, Stock, Stock, Mod], circuit.Parts.Select(part => part.NameAt.Source));
    }

    [Fact]
    public void Ends_OfEachWire_LieOnItsLine()
    {
        var circuit = Bind(Stock, Mod).Circuit!;

        Assert.Equal(
            [
                ("stock.wiring:5", "neck.hot", "vol.3"),
                ("stock.wiring:6", "vol.2", "out.tip"),
                ("mod.wiring:1", null, "vol.3"),
                ("mod.wiring:1", null, "vol.2"),
                ("mod.wiring:2", "vol.1", "out.sleeve"),
                ("mod.wiring:3", "neck.ground", "vol.case"),
            ],
            circuit.Wires.Select(Written)
        );

        static (string Line, string? From, string? To) Written(Wire wire) =>
            ($"{wire.DeclaredAt.Source.Path}:{wire.DeclaredAt.Position.Line}", wire.FromAt?.Text, wire.ToAt?.Text);
    }

    [Theory]
    [InlineData("wire vol.2 to out.rign red", "unknown-lug", "rign")]
    [InlineData("pot tone 250 audio", "bad-value", "250")]
    [InlineData("pickup bridge single-coil drc=6k", "unknown-key", "drc")]
    [InlineData("rest vol=11", "unknown-position", "11")]
    [InlineData("expect rest: neck series bridge", "unknown-part", "bridge")]
    [InlineData("load mains=55", "bad-value", "55")]
    [InlineData("place neck turned 45", "bad-turn", "place neck turned 45")]
    [InlineData("include \"parts.wiring\"", "cannot-include", "\"parts.wiring\"")]
    [InlineData("define pot wide\n    lugs 1 0,0\n    spare 2", "bad-definition", "2")]
    public void Finding_InASecondFile_StandsThere(string line, string id, string marked)
    {
        var second = new SourceText("mod.wiring", line);

        var finding = Assert.Single(Bind(Stock, second).Findings);

        Assert.Equal((id, second, marked), (finding.Id, finding.Location.Source, finding.Location.Text));
    }

    [Fact]
    public void NameTaken_ByAnotherFile_NamesBothPlaces()
    {
        var second = new SourceText("mod.wiring", "pot Vol 500k audio");

        var finding = Assert.Single(Bind(Stock, second).Findings);

        Assert.Equal(("name-taken", second), (finding.Id, finding.Location.Source));
        Assert.Equal((Stock, "vol"), (finding.Related[0].Location.Source, finding.Related[0].Location.Text));
    }

    private static BoundCircuit Bind(SourceText first, SourceText second)
    {
        var trees = new[] { WiringParser.Parse(first), WiringParser.Parse(second) };
        Every.Item(trees, tree => Assert.Empty(tree.Findings));
        return Binder.Bind([.. trees.SelectMany(tree => tree.Statements)], NoSources.Instance);
    }
}
