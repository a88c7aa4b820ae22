using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using WireText.Circuits;
using WireText.Drawing.Charts;
using WireText.Drawing.Lettering;
using WireText.Electrical.Responses;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Parts;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Electrical;

/// <summary>A figure that rests on what nobody knows is told from the least to the most, and a claim on it is not judged.</summary>
public class DoubtfulFigureTests
{
    /// <summary>A circuit with a coil of 6.2 kΩ ±5 %, a volume and a tone control, whose values are to be filled in.</summary>
    private const string Wires = """
        pickup neck single-coil dcr=6.2k l=2.2H c=110p wind=ccw magnet=south
        jack   out  mono
        wire   neck.hot    to vol.3 to tone.1 white
        wire   vol.2       to out.tip red
        wire   neck.ground to vol.case black
        wire   vol.1       to vol.case to tone.case to out.sleeve bare

        """;

    private const string Known =
        "pot vol 250k audio\npot tone 250k audio\ncap dark 22n film from tone.2 to tone.case\n";

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    /// <summary>By hand: the coil and the track in parallel, with the coil at the ends of its ±5 % and the track at the ends of its range.</summary>
    [Theory]
    [InlineData("pot vol ?", 25e3, 1e6)]
    [InlineData("pot vol 200k..300k", 200e3, 300e3)]
    [InlineData("pot vol 250k measured 236k", 236e3 * 0.99, 236e3 * 1.01)]
    public void Reading_OverAnUnknownTrack_IsTheBandOfItsEnds(string pot, double least, double most)
    {
        var reading = Study(pot + "\npot tone 250k\n")
            .Analyse(State.Rest(Study(pot + "\npot tone 250k\n").Circuit))
            .Reading!;

        Assert.Equal(Parallel(6200 * 0.95, least), reading.Value.Least, 1e-6);
        Assert.Equal(Parallel(6200 * 1.05, most), reading.Value.Most, 1e-6);
    }

    /// <summary>By hand, at half travel: coil and upper section in series, the lower across; every taper that has a name lies within.</summary>
    [Fact]
    public void Reading_OverAnUnknownTaper_HoldsThatOfEveryTaper()
    {
        var study = Study("pot vol 250k taper=? tol=0%\npot tone 250k\n");
        var reading = study.Analyse(State.Rest(study.Circuit).AtAll(5)).Reading!.Value;

        Assert.True(reading.IsInDoubt);
        Every.Item(
            Taper.Named,
            taper =>
            {
                var low = 250e3 * taper.FractionAt(5);
                Assert.InRange(Parallel(6200 + 250e3 - low, low), reading.Least, reading.Most);
            }
        );
        Assert.False(study.Analyse(State.Rest(study.Circuit)).Reading!.Value.IsInDoubt);
    }

    /// <summary>The band of five steps of each value beside curves of values taken by chance between: how far one comes out was measured, 0.4 dB.</summary>
    [Theory]
    [InlineData("pot vol ? audio\npot tone 250k audio\ncap dark 22n from tone.2 to tone.case\n")]
    [InlineData("pot vol 250k audio\npot tone 250k audio\ncap dark 10n..100n from tone.2 to tone.case\n")]
    [InlineData("pot vol 250k..500k audio\npot tone 250k audio\ncap dark 22n..47n from tone.2 to tone.case\n")]
    public void Band_OfACurve_HoldsTheCurveOfAnyValue(string parts)
    {
        var study = Study(parts);
        var state = State.Rest(study.Circuit).At(study.Circuit.FindDial("tone")!, 2);
        var band = Assert.Single(ResponseStudy.Of(study, [state], [], [])!.Curves);
        const double Outside = 0.5;

        Samples.Each(
            Gen.Double[0, 1].Array[4],
            40,
            shares =>
            {
                var circuit = study.Circuit;
                foreach (var element in DoubtVariants.InDoubt(circuit))
                {
                    var doubt = element.Doubt!;
                    var value = doubt.Least * Math.Pow(doubt.Most / doubt.Least, shares[element.Index % 4]);
                    circuit = circuit with { Elements = circuit.Elements.SetItem(element.Index, With(element, value)) };
                }

                var curve = ResponseStudy.Of(WireText.Electrical.Studies.Study.Of(circuit)!, [state], [], [])!.Curves[
                    0
                ];
                for (var i = 0; i < ResponseStudy.Hertz.Length; i++)
                {
                    Assert.InRange(
                        curve.Decibels!.Value[i],
                        band.Least!.Value[i] - Outside,
                        band.Most!.Value[i] + Outside
                    );
                }
            }
        );
    }

    [Theory]
    [InlineData("reads 6k", "pot vol ?", "expect-unknown")] // 4.8k to 6.5k
    [InlineData("reads 6k ±30%", "pot vol ?", null)]
    [InlineData("reads 9k", "pot vol ?", "expect")]
    [InlineData("reads 6k", "pot vol 220k..280k", null)]
    [InlineData("neck", "pot vol ?", null)]
    [InlineData("silence", "pot vol ?", "expect")]
    [InlineData("resonates 4kHz", "pot vol ?", "expect-unknown")]
    public void Claim_IsJudgedOnlyWhereItTurnsOnNothingUnknown(string claim, string pot, string? id)
    {
        var text = Wires + Known.Replace("pot vol 250k", pot, StringComparison.Ordinal) + $"expect rest: {claim}\n";

        var found = Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance).Findings;

        Assert.Equal(id is null ? [] : [id], found.Select(finding => finding.Id));
        if (id == "expect-unknown")
        {
            Assert.Equal($"'{claim}' cannot be judged: 'vol' is not known", found[0].Message);
        }
    }

    [Fact]
    public void Claim_ThatTurnsOnOneOfTwo_NamesThatOne()
    {
        var text =
            Wires
            + "pot vol ? audio\npot tone 250k audio\ncap dark ? from tone.2 to tone.case\nexpect rest: reads 6k\n";

        var finding = Assert.Single(Compilation.Of(new SourceText("a.wiring", text), NoSources.Instance).Findings);

        Assert.Equal("'reads 6k' cannot be judged: 'vol' is not known", finding.Message);
    }

    /// <summary>Of each example, with its first pot and its first capacitor unknown: what is claimed of it holds, and turns on nothing.</summary>
    [Theory, MemberData(nameof(Examples))]
    public void WrittenClaims_OfACircuitInDoubt_AreAllProved(string name)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", name));
        var known = Bench.CompileText(text);
        foreach (var kind in new[] { "pot", "cap" })
        {
            if (known.Parts.FirstOrDefault(part => part.Kind == kind) is { ValueLabel: { } label } part)
            {
                text = string.Join(
                    '\n',
                    text.Split('\n')
                        .Where(line => !line.StartsWith("expect", StringComparison.Ordinal))
                        .Select(line =>
                            line.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var word, var called, ..]
                            && word == kind
                            && called == part.Name
                                ? Regex.Replace(
                                    line,
                                    $@"(?<=\s){label}(?=\s|$)",
                                    "?",
                                    RegexOptions.None,
                                    TimeSpan.FromSeconds(5)
                                )
                                : line
                        )
                );
            }
        }

        var circuit = Bench.CompileText(text);
        Assert.NotEmpty(DoubtVariants.InDoubt(circuit));
        var lines = ExpectLines.Write(WireText.Electrical.Studies.Study.Of(circuit)!);

        var found = Compilation.Of(new SourceText("a.wiring", text + "\n" + lines), NoSources.Instance).Findings;
        Assert.DoesNotContain(
            found,
            finding => finding.Id is "expect" or "expect-unknown" || finding.Description.Group == FindingGroup.Text
        );
    }

    [Fact]
    public void Table_SaysWhatRestsOnTheUnknown_AndWhich()
    {
        var study = Study("pot vol ? audio\npot tone 250k audio\n");

        var table = PositionText.Write(study.Positions);

        Assert.Contains("4.77 to 6.47 kΩ *", table, StringComparison.Ordinal);
        Assert.Contains("* not known: vol (25.0 kΩ to 1.00 MΩ)", table, StringComparison.Ordinal);
        Assert.Contains("\"unknown\": [", PositionData.WriteJson(study.Positions), StringComparison.Ordinal);
    }

    [Fact]
    public void Chart_HasABand_AndSaysWhy()
    {
        var study = Study("pot vol ? audio\npot tone 250k audio\n");
        var curves = ResponseStudy.Of(study, [State.Rest(study.Circuit)], [], [])!;

        var svg = SvgWriter.Write(ResponseChart.Build(curves, Theme.Light, null));

        Assert.Contains("class=\"band\"", svg, StringComparison.Ordinal);
        Assert.Contains("* not known: vol", svg, StringComparison.Ordinal);
        Assert.StartsWith("Hz,rest *,rest least,rest most\n", ResponseTable.Write(curves), StringComparison.Ordinal);
        Assert.Contains("\"leastDecibels\"", ResponseJson.Write(curves), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIf_PutsAValueInPlaceOfAnUnknownOne()
    {
        var circuit = Study("pot vol ? audio\npot tone 250k audio\n").Circuit;

        var change = CircuitChange.Read(circuit, "vol=500k").Value!;

        Assert.Empty(DoubtVariants.InDoubt(change.Circuit));
    }

    [Fact]
    public void Netlist_SaysWhatIsTakenForUsual()
    {
        var study = Study("pot vol ? audio\npot tone 250k audio\n");

        Assert.Contains(
            "* not known, and taken for what is usual: vol (25.0 kΩ to 1.00 MΩ)",
            SpiceWriter.Write(study, State.Rest(study.Circuit)),
            StringComparison.Ordinal
        );
    }

    private static Study Study(string parts) => WireText.Electrical.Studies.Study.Of(Bench.CompileText(Wires + parts))!;

    private static double Parallel(double one, double other) => one * other / (one + other);

    private static Element With(Element element, double value) =>
        element switch
        {
            Track track => track with { Ohms = value, Doubt = null },
            Capacitor capacitor => capacitor with { Farads = value, Doubt = null },
            _ => throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"element {element.Index}"),
                nameof(element)
            ),
        };
}
