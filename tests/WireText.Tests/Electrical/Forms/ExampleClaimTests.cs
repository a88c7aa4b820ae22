using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Electrical.Forms;

/// <summary>
/// The examples' own claims. What is heard was written by hand before anything could compute it; the peaks are those of ngspice,
/// from a sweep of 2,000 points a decade.
/// </summary>
public class ExampleClaimTests
{
    public static TheoryData<string> ExampleNames => Rows.Of(Repository.ExampleNames);

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void Claims_OfEachExample_Hold(string name)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", name));
        var circuit = Bench.CompileText(text);
        var claims = WiringParser.Parse(new SourceText(name, text)).Statements.OfType<ExpectSyntax>().ToList();
        Assert.NotEmpty(claims);

        foreach (var claim in claims)
        {
            var named = claim
                .State.Where(pair => pair.Value.Text != "any")
                .Select(pair => $"{pair.Key.Text}={pair.Value.Text}");
            var bench = new Bench(circuit).At(string.Join(' ', named));
            Every.Item(claim.Claims, each => AssertHolds(bench, each, string.Join(' ', named)));
        }
    }

    private static void AssertHolds(Bench bench, ClaimSyntax claim, string state)
    {
        switch (claim)
        {
            case CoilsClaimSyntax coils:
                var form = bench.Form();
                Assert.True(
                    FormEquality.Matches(form, ClaimReader.Read(bench.Circuit, coils.Coils)),
                    $"{state}: {FormText.ForPeople(bench.Circuit, form)}"
                );
                break;
            case WordClaimSyntax { Word.Text: "silence" }:
                Assert.True(bench.Sound().Outcome.IsSilence(), state);
                break;
            case WordClaimSyntax { Word.Text: "dead" }:
                Assert.Equal(Outcome.Dead, bench.Sound().Outcome);
                break;
            case WordClaimSyntax { Word.Text: "hum-cancelling" }:
                Assert.Equal(HumWord.Cancelled, bench.Sound().Hum!.Word);
                break;
            case ValueClaimSyntax { Quantity.Text: "reads" } reads:
                var ohms = ValueReader.Read(reads.Value.Text, ValueUse.Resistor).Value!.Value;
                Assert.InRange(bench.Reading().Ohms / ohms, 0.97, 1.03);
                break;
            case ValueClaimSyntax { Quantity.Text: "resonates" } resonates:
                var hertz = ValueReader.Read(resonates.Value.Text, ValueUse.Resonance).Value!.Value;
                Assert.InRange(Resonance.Find(bench.Response())!.Hertz / hertz, 0.97, 1.03);
                break;
            case BatteryClaimSyntax battery:
                var drawn = bench
                    .Circuit.Elements.OfType<Battery>()
                    .Any(each => BatteryLoop.IsClosed(bench.Network, bench.State, each));
                Assert.Equal(battery.IsOn, drawn);
                break;
            default:
                Assert.Fail(string.Create(CultureInfo.InvariantCulture, $"nothing judges {claim}"));
                break;
        }
    }
}
