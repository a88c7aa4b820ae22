using WireText.Parts;
using WireText.Testing;

namespace WireText.Tests.Parts;

public class StandardPartsTests
{
    /// <summary>Contacts a position, as lugs joined with '-', groups apart by a blank; positions apart by '/'.</summary>
    /// <remarks>
    /// Sources: standard meaning of on-on and on-off-on; the centre of a split on-on-on after the lug proof printed in an
    /// interface handbook (linking lugs 3 and 5 gives one pole of three); leaf toggle and half-way stops: common practice.
    /// </remarks>
    [Theory]
    [InlineData("switch", "spdt", "A0-A1 / A0-A2")]
    [InlineData("switch", "spdt-on-off-on", "A0-A1 / - / A0-A2")]
    [InlineData("switch", "dpdt", "A0-A1 B0-B1 / A0-A2 B0-B2")]
    [InlineData("switch", "dpdt-on-off-on", "A0-A1 B0-B1 / - / A0-A2 B0-B2")]
    [InlineData("switch", "slide-dpdt", "A0-A1 B0-B1 / A0-A2 B0-B2")]
    [InlineData("switch", "dpdt-on-on-on-a-first", "A0-A1 B0-B1 / A0-A2 B0-B1 / A0-A2 B0-B2")]
    [InlineData("switch", "dpdt-on-on-on-b-first", "A0-A1 B0-B1 / A0-A1 B0-B2 / A0-A2 B0-B2")]
    [InlineData("switch", "dpdt-on-on-on-bridging", "A0-A1 B0-B1 / A0-A1-A2 B0-B1-B2 / A0-A2 B0-B2")]
    [InlineData("switch", "toggle-3way", "A0-A1 / A0-A1 B0-B1 / B0-B1")]
    [InlineData("switch", "lever-3way", "A0-A1 B0-B1 / A0-A2 B0-B2 / A0-A3 B0-B3")]
    [InlineData("switch", "lever-4way", "A0-A1 B0-B1 / A0-A2 B0-B2 / A0-A3 B0-B3 / A0-A4 B0-B4")]
    [InlineData(
        "switch",
        "lever-5way",
        "A0-A1 B0-B1 / A0-A1-A2 B0-B1-B2 / A0-A2 B0-B2 / A0-A2-A3 B0-B2-B3 / A0-A3 B0-B3"
    )]
    [InlineData("pot", "push-pull", "A0-A1 B0-B1 / A0-A2 B0-B2")]
    [InlineData("button", "momentary", "- / 1-2")]
    [InlineData("button", "latching", "- / 1-2")]
    [InlineData("button", "momentary-nc", "1-2 / -")]
    [InlineData("button", "latching-nc", "1-2 / -")]
    // IEC 60603-11: a two-contact plug joins ring and sleeve; a break contact is lifted by the plug.
    [InlineData("jack", "stereo", "ring-sleeve / - / -")]
    [InlineData("jack", "mono-switched", "- / tip-tip-break")]
    public void Contacts_OfAStandardPart_AreThoseOfItsTable(string kind, string model, string table)
    {
        var control = StandardParts.Catalogue.Find(kind, model)!.Controls.Single();

        var actual = control.Positions.Select(p =>
            p.Closed.IsEmpty ? "-" : string.Join(' ', p.Closed.Select(g => string.Join('-', g.Terminals)))
        );

        Assert.Equal(table, string.Join(" / ", actual));
    }

    // IEC-style rotary: position k joins the common of each pole to its throw k, and nothing else.
    [Theory]
    [InlineData("rotary-1x6", "A", 6)]
    [InlineData("rotary-2x6", "AB", 6)]
    [InlineData("rotary-1x12", "A", 12)]
    [InlineData("lever-5way-4pole", "ABCD", 5)]
    public void Contacts_OfAManyThrowSwitch_JoinTheCommonToThatThrow(string model, string poles, int throws)
    {
        var control = StandardParts.Catalogue.Find("switch", model)!.Controls.Single();

        Assert.Equal(throws, control.Positions.Length);
        for (var k = 1; k <= throws; k++)
        {
            Assert.Equal(
                poles.Select(pole => $"{pole}0-{pole}{k}"),
                control.Positions[k - 1].Closed.Select(g => string.Join('-', g.Terminals))
            );
        }
    }

    // The lug proof of the split centre: with lugs 1-2-3 / 4-5-6 (commons 2 and 5), linking 3 with 5 and taking lug 2 as
    // common turns the switch into one pole of three, with outputs 6, 4, 1 in lever order.
    [Fact]
    public void SplitCentre_WithThePublishedLink_IsOnePoleOfThree()
    {
        var names = new Dictionary<int, string>
        {
            [1] = "A2",
            [2] = "A0",
            [3] = "A1",
            [4] = "B2",
            [5] = "B0",
            [6] = "B1",
        };
        var control = StandardParts.Catalogue.Find("switch", "dpdt-on-on-on-b-first")!.Controls.Single();
        var outputs = control.Positions.Select(position =>
        {
            var sets = new WireText.Circuits.DisjointSets(7);
            sets.Unite(3, 5);
            foreach (var group in position.Closed)
            {
                var lugs = group.Terminals.Select(t => names.Single(n => n.Value == t).Key).ToList();
                sets.Unite(lugs[0], lugs[1]);
            }

            return new[] { 1, 4, 6 }.Single(lug => sets.Find(lug) == sets.Find(2));
        });

        Assert.Equal([6, 4, 1], outputs);
    }

    // Common practice: 1 is the lug at which the wiper is turned fully down, 3 fully up, on each gang of a pot; so a blend has its
    // two pickups on opposite outer lugs, 3 of one gang and 1 of the other (from memory).
    [Fact]
    public void Track_OfEveryPot_HasItsWiperOnLug1At0AndOnLug3At10()
    {
        var tracks = StandardParts
            .Catalogue.Definitions.SelectMany(definition => definition.Insides.OfType<Inside.TrackInside>())
            .ToList();

        Assert.NotEmpty(tracks);
        Every.Item(
            tracks,
            track =>
            {
                Assert.EndsWith("1", track.Low, StringComparison.Ordinal);
                Assert.EndsWith("3", track.High, StringComparison.Ordinal);
                Assert.Equal(0, (track.Taper ?? Taper.Linear).FractionAt(0));
                Assert.Equal(1, (track.Taper ?? Taper.Linear).FractionAt(10));
            }
        );
    }

    [Theory]
    [InlineData("pickup", "single-coil", "hot ground")]
    [InlineData("pickup", "single-coil-cover", "hot ground cover")]
    [InlineData("pickup", "humbucker", "hot ground")]
    [InlineData("pickup", "humbucker-4", "n-start n-finish s-finish s-start shield")]
    [InlineData("pot", "standard", "1 2 3 case")]
    [InlineData("pot", "mini", "1 2 3 case")]
    [InlineData("pot", "no-load", "1 2 3 case")]
    [InlineData("pot", "concentric", "top.1 top.2 top.3 bottom.1 bottom.2 bottom.3 case")]
    [InlineData("pot", "blend", "a.1 a.2 a.3 b.1 b.2 b.3 case")]
    [InlineData("cap", "standard", "1 2")]
    [InlineData("resistor", "standard", "1 2")]
    [InlineData("inductor", "standard", "1 2")]
    [InlineData("battery", "standard", "plus minus")]
    [InlineData("preamp", "buffer", "in out plus common")]
    [InlineData("metal", "standard", "metal")]
    [InlineData("jack", "mono", "tip sleeve")]
    public void Lugs_OfAStandardPart_AreThere(string kind, string model, string lugs) =>
        Assert.Equal(
            lugs,
            string.Join(
                ' ',
                StandardParts
                    .Catalogue.Find(kind, model)!
                    .Terminals.Where(t => t.Kind != TerminalKind.Inner)
                    .Select(t => t.Name)
            )
        );

    [Fact]
    public void EveryPart_HasItsFace() =>
        Every.Item(
            StandardParts.Catalogue.Definitions,
            definition =>
            {
                Every.Item(
                    definition.Terminals.Where(t => t.Kind != TerminalKind.Inner),
                    terminal => Assert.NotNull(terminal.At)
                );
                var places = definition.Terminals.Where(t => t.At is not null).Select(t => t.At!.Value).ToList();
                Assert.Equal(places.Count, places.Distinct().Count());
            }
        );

    // Make before break: levers, leaf toggle, slide and bridging centre; the rest break first (common practice).
    [Theory]
    [InlineData("lever-3way", SwitchOver.MakeBeforeBreak)]
    [InlineData("lever-5way", SwitchOver.MakeBeforeBreak)]
    [InlineData("toggle-3way", SwitchOver.MakeBeforeBreak)]
    [InlineData("dpdt", SwitchOver.BreakBeforeMake)]
    [InlineData("rotary-2x6", SwitchOver.BreakBeforeMake)]
    public void Between_OfASwitch_IsStated(string model, SwitchOver between) =>
        Assert.Equal(between, StandardParts.Catalogue.Find("switch", model)!.Between);
}
