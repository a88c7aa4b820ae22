using System.Text.Json;
using WireText.Electrical.Positions;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Output;

/// <summary>The verdicts on numbered circuits were worked out by two other solvers; see <see cref="RightVerdicts"/>.</summary>
public class PositionWriterTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.Examples);

    [Theory]
    [InlineData(1, "neck", "6.24 kΩ")]
    [InlineData(11, "neck parallel bridge", "3.34 kΩ (3.17–3.52)", "cancelled (−2")]
    [InlineData(15, "hb", "7.75 kΩ (7.32–8.17)")]
    [InlineData(15, "hb.n", "3.94 kΩ", "−5.9 dB", "full")]
    [InlineData(17, "6.01 kΩ", "−10.4 dB left over")]
    [InlineData(5, "dead: only 250 kΩ stay on the jack", "250 kΩ")]
    [InlineData(6, "open: the jack floats", "no reading")]
    [InlineData(8, "bridge", "neck hangs on the signal by one end: an antenna", "7.00 kΩ")]
    [InlineData(25, "neck through 100n", "250 kΩ")]
    public void Text_OfAWorkedCircuit_SaysItsVerdict(int number, params string[] words)
    {
        var text = PositionText.Write(TableOf(RightVerdicts.Of(number)));

        Every.Item(words, word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_WhereCoilsCancel_ShowsNoHeightOfThePeak()
    {
        // Circuit 12 is out of phase: its level is 23.5 dB down, and a height over what cancels means nothing.
        var text = PositionText.Write(TableOf(RightVerdicts.Of(12)));

        Assert.Contains("out of phase", text, StringComparison.Ordinal);
        Assert.Contains("cancels in the model: real strings leave a thin sound", text, StringComparison.Ordinal);
        Assert.DoesNotMatch("kHz, [+−]", text);
    }

    [Fact]
    public void Text_WindingNotStated_IsMarkedAndSaid()
    {
        const string two =
            "pickup a single-coil dcr=6k; pickup b single-coil dcr=6k; jack out; a.hot ~ out.tip; b.hot ~ out.tip; a.ground ~ out.sleeve; b.ground ~ out.sleeve";

        Assert.Contains(
            "* assumed: a, b wound clockwise",
            PositionText.Write(TableOf(Bench.Of(two))),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("assumed", PositionText.Write(TableOf(RightVerdicts.Of(11))), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_JackThatShortsWithoutAPlug_SaysWhatProbesRead()
    {
        var text = PositionText.Write(
            TableOf(
                Bench.Of(
                    "pickup p single-coil dcr=6k; jack out mono-switched; p.hot ~ out.tip; p.ground ~ out.sleeve; out.tip-break ~ out.sleeve"
                )
            )
        );

        Assert.Contains("probes on the bare jack, no plug in it: 0 Ω\n", text, StringComparison.Ordinal);
        Assert.Contains("6.00 kΩ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_JackThatReadsTheSameWithoutAPlug_SaysNothingOfIt() =>
        Assert.DoesNotContain("probes", PositionText.Write(TableOf(RightVerdicts.Of(35))), StringComparison.Ordinal);

    [Fact]
    public void Text_OfAnotherLoadAndDay_NamesThem()
    {
        var text = PositionText.Write(
            TableOf(
                Bench.Of(
                    "load cable=1n input=500k mains=60 temperature=15..30; pickup p single-coil; jack out; p.hot ~ out.tip; p.ground ~ out.sleeve"
                )
            )
        );

        Assert.Contains("into 1.00 nF of cable and 500 kΩ; hum at 60 Hz", text, StringComparison.Ordinal);
        Assert.Contains("meter at 15 to 30 °C", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_LocalControls_HaveLinesOfTheirOwn()
    {
        var text = "jack out";
        for (var i = 0; i < 7; i++)
        {
            text +=
                $"; pickup p{i} humbucker-4 dcr={7 + i}k; switch s{i} spdt; p{i}.n-start ~ out.tip; p{i}.n-finish ~ p{i}.s-finish;"
                + $"p{i}.s-start ~ out.sleeve; s{i}.A0 ~ p{i}.n-finish; s{i}.A2 ~ out.sleeve";
        }

        var written = PositionText.Write(TableOf(Bench.Of(text)));

        Assert.Contains("s6 changes p6 alone", written, StringComparison.Ordinal);
        Assert.Matches("p6\\.n", written);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void EveryForm_OfAnExample_IsTheSameInAnotherCultureAndFitsASheet(string path)
    {
        var table = TableOf(new Bench(Bench.CompileText(File.ReadAllText(path))));
        var expected = Forms(table);

        Assert.Equal(expected, OtherCulture.Run(() => Forms(table)));
        Every.Item(expected[0].Split('\n'), line => Assert.InRange(line.Length, 0, 120));
    }

    [Fact]
    public void Json_HoldsTheFiguresInSiUnits()
    {
        using var json = JsonDocument.Parse(PositionData.WriteJson(TableOf(RightVerdicts.Of(11))));
        var row = Assert.Single(json.RootElement.GetProperty("rows").EnumerateArray());

        Assert.Equal("neck parallel bridge", row.GetProperty("heard").GetString());
        Assert.Equal(3340, row.GetProperty("readsOhms").GetDouble(), 10.0);
        Assert.Equal(-24.5, row.GetProperty("humDecibels").GetDouble(), 0.1);
        Assert.Equal(0, row.GetProperty("levelDecibels").GetDouble());
    }

    [Fact]
    public void Csv_HasAHeadingAndAsManyCellsInEachRow()
    {
        var lines = PositionData.WriteCsv(TableOf(RightVerdicts.Of(6))).TrimEnd('\n').Split('\n');

        Assert.StartsWith("sel,heard,outcome,level_db", lines[0], StringComparison.Ordinal);
        Assert.Equal("2,open: the jack floats,open,,,,none,none,none,,,no,", lines[2]);
        Every.Item(lines, line => Assert.Equal(12, line.Count(c => c == ',')));
    }

    [Fact]
    public void Markdown_EscapesWhatWouldBeMarkup()
    {
        var text = PositionText.WriteMarkdown(
            TableOf(
                Bench.Of(
                    "pickup p single-coil; switch s spdt; positions s a|b c*d; jack out; p.hot ~ s.A1; s.A0 ~ out.tip; p.ground ~ out.sleeve"
                )
            )
        );

        Assert.Contains("| a\\|b | p |", text, StringComparison.Ordinal);
        Assert.Contains("| c\\*d | open: the jack floats |", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Forms_OfTwoJacks_NameTheJackOfEachRow()
    {
        const string two =
            "pickup neck single-coil; pickup bridge single-coil; jack main mono; jack second mono; neck.hot ~ main.tip; "
            + "neck.ground ~ main.sleeve; bridge.hot ~ second.tip; bridge.ground ~ second.sleeve; main.sleeve ~ second.sleeve";
        var table = Study.Of(Bench.Of(two).Circuit)!.PositionsAtJacks;

        var text = PositionText.Write(table);
        using var json = JsonDocument.Parse(PositionData.WriteJson(table));
        var rows = json.RootElement.GetProperty("rows").EnumerateArray();

        Assert.Matches(@"(?m)^jack +heard .*\n-+\nmain +neck .*\nsecond +bridge ", text);
        Assert.Contains("nothing loads the others", text, StringComparison.Ordinal);
        Assert.Contains("| second | bridge", PositionText.WriteMarkdown(table), StringComparison.Ordinal);
        Assert.Equal(
            ["jack", "main", "second"],
            PositionData
                .WriteCsv(table)
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(row => row.Split(',')[0])
        );
        Assert.Equal(["main", "second"], rows.Select(row => row.GetProperty("jack").GetString()));
    }

    private static string[] Forms(PositionTable table) =>
        [
            PositionText.Write(table),
            PositionText.WriteMarkdown(table),
            PositionData.WriteCsv(table),
            PositionData.WriteJson(table),
        ];

    private static PositionTable TableOf(Bench bench) => Study.Of(bench.Circuit)!.Positions;
}
