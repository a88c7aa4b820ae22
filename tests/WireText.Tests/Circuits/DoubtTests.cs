using WireText.Circuits;
using WireText.Parts;
using WireText.Testing;
using WireText.Tests.Electrical;

namespace WireText.Tests.Circuits;

/// <summary>Values that nobody knows, and values that a meter read: how they are written, and what they are taken for.</summary>
public class DoubtTests
{
    [Theory]
    [InlineData("pot r ? audio", 250e3, 25e3, 1e6, "?")]
    [InlineData("pot r 100k..400k audio", 200e3, 100e3, 400e3, "100k..400k")]
    [InlineData("cap r ? film", 22e-9, 100e-12, 1e-6, "?")]
    [InlineData("cap r 10n..40n", 20e-9, 10e-9, 40e-9, "10n..40n")]
    [InlineData("resistor r value=?", 47e3, 1e3, 2.2e6, "?")]
    [InlineData("inductor r 1H..4H", 2, 1, 4, "1H..4H")]
    public void Value_ThatNobodyKnows_IsTakenForTheUsualOrTheMiddle(
        string text,
        double value,
        double least,
        double most,
        string label
    )
    {
        var circuit = Bench.CompileText(text);

        var element = Assert.Single(circuit.Elements);
        Assert.Equal(value, ValueOf(element), value * 1e-9);
        Assert.Equal((least, most), (element.Doubt!.Least, element.Doubt.Most));
        Assert.Equal(label, circuit.Parts[0].ValueLabel);
    }

    [Theory]
    [InlineData("pot r 250k audio measured 262k", 262e3, 0.01, "250k (262k)")]
    [InlineData("pot r measured 262k audio", 262e3, 0.01, "262k")]
    [InlineData("pot r 250k measured=262k tol=2%", 262e3, 0.02, "250k (262k)")]
    [InlineData("pot r ? measured 262k", 262e3, 0.01, "262k")]
    [InlineData("cap r code=473 measured 44n", 44e-9, 0.01, "47n (44n)")]
    [InlineData("resistor r 4k7 measured 4.61k", 4610, 0.01, "4.7k (4.61k)")]
    public void Value_ThatAMeterRead_IsComputedWith(string text, double value, double tolerance, string label)
    {
        var circuit = Bench.CompileText(text);

        var element = Assert.Single(circuit.Elements);
        Assert.Equal(value, ValueOf(element), value * 1e-9);
        Assert.Equal((tolerance, null), (element.Tolerance, element.Doubt));
        Assert.Equal(label, circuit.Parts[0].ValueLabel);
    }

    [Fact]
    public void Gang_OfAConcentricPot_HasAValueOfItsOwn()
    {
        var circuit = Bench.CompileText(
            "pot duo concentric 250k audio bottom.value=? top.measured=241k bottom.taper=?"
        );

        var (top, bottom) = (Track(circuit, "duo.top"), Track(circuit, "duo.bottom"));
        Assert.Equal((241e3, null, false), (top.Ohms, top.Doubt, top.IsTaperUnknown));
        Assert.Equal((250e3, 25e3, true), (bottom.Ohms, bottom.Doubt!.Least, bottom.IsTaperUnknown));
    }

    [Fact]
    public void Taper_ThatNobodyKnows_IsSaidOnTheDrawing()
    {
        var circuit = Bench.CompileText("pot vol 250k taper=?");

        Assert.Equal("taper ?", circuit.Parts[0].TaperLabel);
        Assert.Equal((Taper.Linear, true), (Track(circuit, "vol").Taper, Track(circuit, "vol").IsTaperUnknown));
    }

    /// <summary>By hand: 5 steps of one value, 5 by 5 of two, 3 by 3 by 3 of three; of more each at its ends, and all together.</summary>
    [Theory]
    [InlineData("pot a 250k", 0)]
    [InlineData("pot a ?", 5)]
    [InlineData("pot a 250k taper=?", 3)]
    [InlineData("pot a ?\npot b ?", 25)]
    [InlineData("pot a ? taper=?", 15)]
    [InlineData("pot a ?\npot b ?\ncap c ?", 27)]
    [InlineData("pot a ?\npot b ?\ncap c ?\ncap d ?\ncap e ?", 32)]
    [InlineData("pot a ?\npot b ?\ncap c ?\ncap d ?\ncap e ?\ncap f ?", 14)]
    public void Variants_AreSpreadOverAllThatMayBe_AndAreFew(string text, int count)
    {
        var circuit = Bench.CompileText(text);

        var variants = DoubtVariants.Of(circuit);

        Assert.Equal(count, variants.Length);
        foreach (var element in DoubtVariants.InDoubt(circuit).Where(element => element.Doubt is not null))
        {
            var values = Every.Of(variants.Select(variant => ValueOf(variant.Elements[element.Index])));
            Assert.Equal((element.Doubt!.Least, element.Doubt.Most), (values.Min(), values.Max()));
        }
    }

    [Fact]
    public void Variants_OfManyUnknownValues_StayWithinTheBound()
    {
        var text = string.Join('\n', Enumerable.Range(0, 40).Select(i => $"pot p{i} ?"));

        Assert.InRange(DoubtVariants.Of(Bench.CompileText(text)).Length, 2, DoubtVariants.Most);
    }

    private static Track Track(Circuit circuit, string name) =>
        circuit.Elements.OfType<Track>().Single(track => track.Name == name);

    private static double ValueOf(Element element) =>
        element switch
        {
            Track track => track.Ohms,
            Resistor resistor => resistor.Ohms,
            Capacitor capacitor => capacitor.Farads,
            Inductor inductor => inductor.Henries,
            _ => throw new ArgumentException("it has no value", nameof(element)),
        };
}
