using System.Text.Json;
using WireText.Circuits;
using WireText.Drawing.Charts;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Networks;
using WireText.Electrical.Responses;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Tests.Drawing.Pictures;
using WireText.Text;

namespace WireText.Tests.Output;

/// <summary>What rests on a value of a coil that nobody gave is marked wherever it shows, and what does not is not.</summary>
public class AssumedValueTests
{
    private const string Given = "dcr=6k l=2.4H c=100p wind=cw magnet=north";

    /// <summary>What two pickups say of themselves, and the coils that the response then assumes something of.</summary>
    public static TheoryData<string, string, string> Pickups =>
        new()
        {
            { Given, Given, "" },
            { "", Given, "neck" },
            { "dcr=6k l=2.4H wind=cw magnet=north", Given, "neck" },
            { "l=2.4H c=100p wind=cw magnet=north", Given, "neck" },
            { Given, "dcr=6k l=2.4H c=100p magnet=north", "bridge" },
            { "", "", "neck bridge" },
        };

    [Theory]
    [MemberData(nameof(Pickups))]
    public void Response_OfTwoPickups_NamesTheCoilsWhoseValuesAreAssumed(string neck, string bridge, string coils)
    {
        var study = ResponseOf(neck, bridge, "sel=2");
        var words = coils.Split(' ', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(words, Assert.Single(study.Curves).AssumedCoils);
        Assert.Equal(words.Length > 0, ChartTexts(study).Contains('*', StringComparison.Ordinal));
        Assert.Equal(words.Length > 0, ResponseSketch.Draw(study).Contains('*', StringComparison.Ordinal));
        Assert.Equal(words.Length > 0, ResponseTable.Write(study).Split('\n')[0].EndsWith('*'));
        Assert.Equal(words, AssumedIn(ResponseJson.Write(study)));
        Assert.Equal(
            words.Length == 0
                ? null
                : $"* with assumed values of {string.Join(", ", words)}: dcr= l= c= wind= magnet= on a pickup's line give them",
            study.Assumption
        );
    }

    /// <summary>The mark stands at the very figure: the pickup that is given keeps its peak without one.</summary>
    [Fact]
    public void Chart_WithOneAssumedPickup_MarksItsPeakAlone()
    {
        var study = ResponseOf("", Given, "sel=1", "sel=3");

        Assert.Equal([true, false], study.Curves.Select(curve => CurveLabelEnds(study, curve).EndsWith('*')));
    }

    [Fact]
    public void Response_OfAPickupAlone_DoesNotAskHowItIsWound() =>
        Assert.Null(ResponseOf("dcr=6k l=2.4H c=100p", "", "sel=1").Assumption);

    [Fact]
    public void Response_WithAnotherValueInThought_TakesItForGiven()
    {
        var circuit = Circuit("dcr=6k c=100p wind=cw magnet=north", Given);
        var change = CircuitChange.Read(circuit, "neck.l=2.4H").Value!;
        var study = ResponseStudy.Of(
            Study.Of(Network.Of(circuit)!),
            [StateReader.Read(circuit, "sel=1").Value!],
            [],
            [change]
        )!;

        Assert.Equal(["neck", ""], study.Curves.Select(curve => string.Join(' ', curve.AssumedCoils)));
    }

    /// <summary>The winding alone changes the sign of what both give, and the hum; the meter's figure needs the resistance.</summary>
    [Theory]
    [InlineData(Given, "no no no")]
    [InlineData("dcr=6k l=2.4H c=100p", "no yes no")]
    [InlineData("l=2.4H c=100p wind=cw magnet=north", "yes yes no")]
    [InlineData("dcr=6k l=2.4H wind=cw magnet=north", "yes yes no")]
    public void PositionData_OfARowThatRestsOnAnAssumedValue_SaysSo(string neck, string perRow)
    {
        var table = Study.Of(Network.Of(Circuit(neck, Given))!).Positions;
        var lines = PositionData.WriteCsv(table).TrimEnd('\n').Split('\n');
        var column = Array.IndexOf(lines[0].Split(','), "assumed");
        using var json = JsonDocument.Parse(PositionData.WriteJson(table));

        Assert.Equal(perRow, string.Join(' ', lines.Skip(1).Select(line => line.Split(',')[column])));
        Assert.Equal(
            perRow,
            string.Join(
                ' ',
                json.RootElement.GetProperty("rows")
                    .EnumerateArray()
                    .Select(row => row.GetProperty("assumed").GetBoolean() ? "yes" : "no")
            )
        );
    }

    /// <summary>A small picture says what is heard, and so whether it is in phase.</summary>
    [Fact]
    public void Views_WhereThePhaseIsAssumed_AreMarked()
    {
        var circuit = Circuit("dcr=6k l=2.4H c=100p", Given);

        Assert.Equal(
            ["neck", "neck parallel bridge (phase assumed)", "bridge"],
            PositionViews.Of(circuit, Study.Of(Network.Of(circuit)!)).Select(view => view.Says)
        );
    }

    /// <summary>What is there by an assumed value is said so where a claim is refuted, and no figure that is given is.</summary>
    [Theory]
    [InlineData("", "sel=1: resonates 9kHz", true)]
    [InlineData("dcr=6k", "sel=1: reads 9k", false)]
    [InlineData("l=2.4H c=100p", "sel=1: reads 9k", true)]
    [InlineData("dcr=6k l=2.4H", "sel=1: resonates 9kHz", true)]
    [InlineData("l=2.4H c=100p", "sel=1: resonates 9kHz", false)]
    [InlineData("l=2.4H c=100p", "sel=1: level -30dB at 1kHz", true)]
    [InlineData(Given, "sel=1: level -30dB at 1kHz", false)]
    [InlineData("dcr=6k l=2.4H c=100p", "sel=2: neck", true)]
    [InlineData(Given, "sel=2: neck", false)]
    [InlineData("dcr=6k l=2.4H c=100p", "sel=1: bridge", false)]
    public void RefutedClaim_ByAnAssumedValue_SaysSo(string neck, string claim, bool isAssumed)
    {
        var text = $"{TextOf(neck, Given)}\nexpect {claim}";
        var findings = Compilation.Of(new SourceText("assumed.wiring", text), NoSources.Instance).Findings;

        var refuted = Assert.Single(findings, finding => finding.Id == "expect");

        Assert.Equal(isAssumed, refuted.Message.Contains(", by assumed values", StringComparison.Ordinal));
    }

    /// <summary>The lines that pin what is there are marked once, below, in a comment that reads.</summary>
    [Theory]
    [InlineData("", true)]
    [InlineData(Given, false)]
    public void ExpectLines_ByAssumedValues_NameTheCoilsBelow(string neck, bool isAssumed)
    {
        var lines = ExpectLines.Write(Study.Of(Network.Of(Circuit(neck, Given))!));

        Assert.Equal(isAssumed, lines.Contains("\n# by assumed values of neck: dcr=", StringComparison.Ordinal));
        Assert.DoesNotContain(
            Compilation
                .Of(new SourceText("pinned.wiring", $"{TextOf(neck, Given)}\n{lines}"), NoSources.Instance)
                .Findings,
            finding => finding.Severity > Severity.Note
        );
    }

    private static string CurveLabelEnds(ResponseStudy study, ResponseCurve curve) =>
        TextsOf(ResponseChart.Build(study with { Curves = [curve] }, Theme.Light, null)).Single(IsPeak);

    private static bool IsPeak(string text) => text.Contains("kHz +", StringComparison.Ordinal);

    private static string ChartTexts(ResponseStudy study) =>
        string.Join('\n', TextsOf(ResponseChart.Build(study, Theme.Light, null)));

    private static IEnumerable<string> TextsOf(Picture picture) =>
        PictureItems.In(picture.Items).OfType<TextItem>().Select(text => text.Text);

    private static IEnumerable<string> AssumedIn(string json)
    {
        using var document = JsonDocument.Parse(json);
        return
        [
            .. document
                .RootElement.GetProperty("curves")[0]
                .GetProperty("assumed")
                .EnumerateArray()
                .Select(coil => coil.GetString()!),
        ];
    }

    private static ResponseStudy ResponseOf(string neck, string bridge, params string[] states)
    {
        var circuit = Circuit(neck, bridge);
        return ResponseStudy.Of(
            Study.Of(Network.Of(circuit)!),
            [.. states.Select(state => StateReader.Read(circuit, state).Value!)],
            [],
            []
        )!;
    }

    private static Circuit Circuit(string neck, string bridge) =>
        Compilation.Of(new SourceText("assumed.wiring", TextOf(neck, bridge)), NoSources.Instance).Circuit!;

    private static string TextOf(string neck, string bridge) =>
        $"""
            pickup neck single-coil {neck}
            pickup bridge single-coil {bridge}
            switch sel toggle-3way
            jack out mono
            wire neck.hot to sel.A1 white
            wire bridge.hot to sel.B1 yellow
            wire sel.A0 to sel.B0 to out.tip red
            wire sel.case to out.sleeve black
            wire neck.ground to out.sleeve black
            wire bridge.ground to out.sleeve black
            """;
}
