using WireText.Circuits;
using WireText.Electrical.Responses;
using WireText.Testing;

namespace WireText.Tests.Electrical.Responses;

public class CircuitChangeTests
{
    private static readonly string Text = File.ReadAllText(Repository.PathOf("examples", "2-two-pickups-mute.wiring"));

    private static readonly Circuit TwoPickups = Bench.CompileText(Text);

    /// <summary>A change in thought is the circuit of the text with that value in it.</summary>
    [Theory]
    [InlineData("dark=22n", "47n film", "22n film", "dark=22n")]
    [InlineData("DARK=.022uF", "47n film", "22n film", "dark=22n")]
    [InlineData("vol=500k", "vol     250k", "vol     500k", "vol=500k")]
    [InlineData("bridge.l=3.5H", "l=2.8H", "l=3.5H", "bridge.l=3.5H")]
    [InlineData(
        "neck.c=200p,neck.dcr=5k",
        "dcr=6.1k l=2.15H c=115p",
        "dcr=5k l=2.15H c=200p",
        "neck.c=200p neck.dcr=5k"
    )]
    public void Change_OfAValue_IsTheCircuitWithThatValueInItsText(string change, string old, string now, string words)
    {
        var read = CircuitChange.Read(TwoPickups, change);

        Assert.Null(read.Problem);
        Assert.Equal(words, read.Value!.Words);
        Assert.Contains(old, Text, StringComparison.Ordinal);
        var rewritten = Bench.CompileText(Text.Replace(old, now, StringComparison.Ordinal));
        Assert.Equal(rewritten.Elements.Select(Values), read.Value.Circuit.Elements.Select(Values));
    }

    [Fact]
    public void Change_OfTheLoad_IsTheLoadOfTheText()
    {
        var changed = CircuitChange.Read(TwoPickups, "cable=1n,input=500k").Value!.Circuit;

        Assert.Equal(Bench.CompileText("load cable=1n input=500k\n" + Text).Surroundings, changed.Surroundings);
    }

    [Fact]
    public void Change_OfABlendByItsName_ChangesBothTracks()
    {
        var circuit = Bench.Of("pot mix blend 500k; jack out").Circuit;

        var changed = CircuitChange.Read(circuit, "mix=250k").Value!.Circuit;

        Assert.Equal([250e3, 250e3], changed.Elements.OfType<Track>().Select(track => track.Ohms));
    }

    [Theory]
    [InlineData("drak=22n", "nothing called 'drak' has a value; did you mean 'dark'?")]
    [InlineData(
        "dark=22",
        "dark: '22' needs a letter: '22p' is 22 picofarads, '22n' is 22 nanofarads, '22u' is 22 microfarads; did you mean '22n'?"
    )]
    [InlineData("dark", "'dark' is no change; write NAME=VALUE, such as cable=700p")]
    [InlineData("dark=", "'dark=' is no change; write NAME=VALUE, such as cable=700p")]
    [InlineData("", "no change is given; write NAME=VALUE, such as cable=700p")]
    [InlineData("neck=7k", "'neck' is a coil; write neck.l=, neck.dcr= or neck.c=")]
    public void Change_Wrong_SaysWhatAndWhatIsMeant(string text, string problem)
    {
        var read = CircuitChange.Read(TwoPickups, text);

        Assert.Null(read.Value);
        Assert.Equal(problem, read.Problem);
    }

    private static (string, double, double, double) Values(Element element) =>
        element switch
        {
            Coil coil => (coil.Name, coil.Ohms, coil.Henries, coil.Farads),
            Track track => (track.Name, track.Ohms, 0, 0),
            Capacitor capacitor => (capacitor.Name, capacitor.Farads, 0, 0),
            _ => (element.Name, 0, 0, 0),
        };
}
