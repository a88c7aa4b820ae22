using System.Text.Json;
using WireText.Electrical.Positions;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Output;

/// <summary>The coils below the table of positions: what is given, computed and assumed is never told as the same.</summary>
public class CoilTableTests
{
    // The winding: 8000 turns of AWG 42, mean turn 120.3 mm, have 5265 Ω with the exact diameter of ASTM B258 and copper
    // of IEC 60028; at 35 °C 15 · 0.393 % more. The usual coil, 2.5 H and 100 pF, resonates at 10 066 Hz: 1/(2π√(LC)).
    private const string Wound = "turns=8000 awg=42 turn-length=120.3mm";

    [Fact]
    public void Coil_KnownByItsWindingAlone_IsComputedAndTheRestAssumed()
    {
        var text = Text($"pickup p single-coil {Wound}");

        Assert.Matches("p +5\\.2[67] kΩ +2\\.50 H \\* +100 pF \\* +10\\.1 kHz \\* +cw \\* +north \\*", text);
        Assert.Contains(
            "resistance computed: 8,000 turns of AWG 42, 120.3 mm each; the rest assumed, usual for a single coil",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("* assumed, not measured", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Coil_WithItsInductance_ResonatesWithoutAStarOnceItsCapacitanceIsSaidToo()
    {
        // Published: 2.4 H with 300 pF resonates near 6000 Hz; exactly at 5931 Hz.
        Assert.Contains("5.93 kHz  ", Text($"pickup p single-coil {Wound} l=2.4H c=300p"), StringComparison.Ordinal);
        Assert.Contains("10.3 kHz *", Text($"pickup p single-coil {Wound} l=2.4H"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("temperature=35", "at 35 °C", "5.58 kΩ")] // 5265 Ω · 1.05895 = 5575 Ω
    [InlineData("temperature=15..35", "at 15 to 35 °C", "5.16 kΩ to 5.58 kΩ")] // 5265 Ω · 0.98035 = 5162 Ω
    public void Coil_OnAnotherDay_HasItsResistanceThenToo(string day, string heading, string ohms)
    {
        var text = Text($"load {day}; pickup p single-coil {Wound}");

        Assert.Contains(heading, text, StringComparison.Ordinal);
        Assert.Contains(ohms, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Coil_OnTheUsualDay_HasOneResistance() =>
        Assert.Matches("coil +at 20 °C +inductance", Text($"pickup p single-coil {Wound}"));

    [Fact]
    public void Coil_GivenAndWound_IsAsGivenAndSaysWhatTheWindingWouldGive()
    {
        // 5265 Ω is 4.3 % above 5050 Ω.
        var text = Text($"pickup p single-coil dcr=5.05k {Wound}");

        Assert.Matches("p +5\\.05 kΩ +2\\.50", text);
        Assert.Matches(
            "its\\s+winding\\s+would\\s+give\\s+5\\.2[67] kΩ,\\s+4\\.[23]\\s+%\\s+more\\s+than\\s+given",
            text
        );
    }

    [Fact]
    public void Coil_WithoutAGauge_SaysWhatIsMissingForItsResistance() =>
        Assert.Contains(
            "its winding gives a resistance once awg= and turn-length= is said too",
            Text("pickup p single-coil turns=8000"),
            StringComparison.Ordinal
        );

    [Fact]
    public void Coils_OfOnePickup_ShareWhatIsGivenForTheWhole()
    {
        var bench = Bench.Of(
            "pickup p humbucker-4 dcr=8k n.l=3H; jack out; p.n-start ~ out.tip; p.s-start ~ out.sleeve; splice m p.n-finish p.s-finish; p.shield ~ out.sleeve"
        );
        using var json = JsonDocument.Parse(PositionData.WriteJson(Study.Of(bench.Circuit)!.Positions));

        var coils = json.RootElement.GetProperty("coils").EnumerateArray().ToList();

        Assert.Equal(["p.n", "p.s"], coils.Select(coil => coil.GetProperty("name").GetString()));
        Every.Item(coils, coil => Assert.Equal(4000, coil.GetProperty("ohms").GetDouble()));
        Every.Item(coils, coil => Assert.Equal("shared", coil.GetProperty("ohmsOrigin").GetString()));
        Assert.Equal(["given", "assumed"], coils.Select(coil => coil.GetProperty("henriesOrigin").GetString()));
        Every.Item(coils, coil => Assert.Equal("model", coil.GetProperty("windingOrigin").GetString()));
    }

    [Fact]
    public void Coil_AllGiven_SaysSoAndHasNoStar()
    {
        var text = Text("pickup p single-coil dcr=6k l=2.2H c=110p wind=cw magnet=north");

        Assert.Contains("every value of the coils is given by the text", text, StringComparison.Ordinal);
        Assert.DoesNotContain("*", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ReadingAndPeak_OfAnAssumedCoil_AreMarked()
    {
        Assert.Matches("kΩ \\(.*\\) \\*  .* dB \\*\n", Text("pickup p single-coil"));
        Assert.Matches("kΩ \\([^*]*\\)  .* dB \\*\n", Text("pickup p single-coil dcr=6k wind=cw magnet=north"));
    }

    [Fact]
    public void Json_OfAWoundCoil_HoldsItsWireAndTheOrigins()
    {
        using var json = JsonDocument.Parse(PositionData.WriteJson(TableOf($"pickup p single-coil {Wound} l=2.4H")));

        var coil = Assert.Single(json.RootElement.GetProperty("coils").EnumerateArray());

        Assert.Equal(5265, coil.GetProperty("ohms").GetDouble(), 3.0);
        Assert.Equal(5265, coil.GetProperty("windingOhms").GetDouble(), 3.0);
        Assert.Equal("computed", coil.GetProperty("ohmsOrigin").GetString());
        Assert.Equal("given", coil.GetProperty("henriesOrigin").GetString());
        Assert.Equal("assumed", coil.GetProperty("faradsOrigin").GetString());
        Assert.Equal(JsonValueKind.Null, coil.GetProperty("winding").ValueKind);
        Assert.Equal(0.1203, coil.GetProperty("turnMetres").GetDouble());
    }

    private static string Text(string pickup) => PositionText.Write(TableOf(pickup));

    private static PositionTable TableOf(string pickup) =>
        Study.Of(Bench.Of($"{pickup}; jack out; p.hot ~ out.tip; p.ground ~ out.sleeve").Circuit)!.Positions;
}
