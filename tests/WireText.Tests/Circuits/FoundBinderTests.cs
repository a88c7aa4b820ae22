using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Circuits;

/// <summary>What was found at the bench is bound to lugs, states and elements, and what cannot be found there is told.</summary>
public class FoundBinderTests
{
    private const string Guitar = """
        pickup    neck    humbucker-4  dcr=7.9k
        pickup    bridge  single-coil  dcr=6.6k
        pot       vol     250k audio
        pot       tone    250k audio
        cap       dark    47n  from tone.2 to tone.case
        battery   bat     9V
        metal     saddle
        switch    sel     toggle-3way
        jack      out     mono
        positions sel     neck both bridge
        wire      neck.n-start  to sel.A1           white
        wire      sel.A0        to vol.3 to tone.3  white
        wire      vol.2         to out.tip          white

        """;

    [Fact]
    public void Bind_EveryPlace_IsWhatTheLineSays()
    {
        var found = Found(
            """
            found  worked
            found  sel=bridge vol=5:  reads 7.05k, heard neck.n and bridge
            found  out: sel=neck turning vol:  at most 64.2k
            found  sleeve to saddle:  reads 0
            found  sel=both vol.3 to vol.case:  reads open
            found  joint vol.3 of sel.A0:  reads open
            found  joint tone.3 of sel.A0:  reads 0
            found  neck.n alone:  reads 3.9k
            found  dark alone:  leaky
            found  lead:  good
            found  cell:  8.9V
            """,
            out var circuit
        );

        Assert.True(((FoundPast)found[0].At).Worked);
        var plug = Assert.IsType<FoundAtPlug>(found[1].At);
        Assert.Equal((2, 5.0), (plug.State[0] ?? -1, plug.State.Travels[0]));
        Assert.Equal(
            ["neck.n", "bridge"],
            ((FoundCoils)found[1].What[1]).Coils.Select(coil => circuit.Elements[coil].Name)
        );
        Assert.Equal(0, ((FoundAtPlug)found[2].At).Turning);
        Assert.Equal("saddle", circuit.NameOf(((FoundAtMetal)found[3].At).Metal));
        var between = Assert.IsType<FoundBetween>(found[4].At);
        Assert.Equal(("vol.3", "vol.case"), (circuit.NameOf(between.From), circuit.NameOf(between.To)));
        Assert.Equal([5.0, 5.0], between.State.Travels.ToArray());
        Assert.Equal("vol.3", circuit.NameOf(((FoundAtJoint)found[5].At).Lug));
        Assert.Equal(((FoundAtJoint)found[5].At).Lug, circuit.Wires[((FoundAtJoint)found[5].At).Wire].To);
        Assert.Equal("tone.3", circuit.NameOf(((FoundAtJoint)found[6].At).Lug));
        Assert.Equal("neck.n", circuit.Elements[((FoundAlone)found[7].At).Element].Name);
        Assert.Equal(FoundSign.Leaky, ((FoundWord)found[8].What[0]).Sign);
        Assert.IsType<FoundAtLead>(found[9].At);
        Assert.Equal(8.9, ((FoundVolts)found[10].What[0]).Volts, 9);
    }

    /// <summary>The digits that are written are the meter's.</summary>
    [Theory]
    [InlineData("7.05k", 7050, 10)]
    [InlineData("7.1k", 7100, 100)]
    [InlineData("245k", 245e3, 1000)]
    [InlineData("4k7", 4700, 100)]
    [InlineData("812R", 812, 1)]
    [InlineData("1.003M", 1.003e6, 1000)]
    [InlineData("0", 0, 0)]
    [InlineData("open", double.PositiveInfinity, 0)]
    public void Bind_AReading_HasTheStepOfItsDigits(string written, double ohms, double step)
    {
        var reading = (FoundReading)Found($"found rest: reads {written}", out _)[0].What[0];

        Assert.Equal(ohms, reading.Ohms, 1e-6);
        Assert.Equal(step, reading.Step, 1e-6);
    }

    [Theory]
    [InlineData("found sel=[|middle|]: silence", "unknown-position")]
    [InlineData("found [|sle|]=neck: silence", "unknown-part")]
    [InlineData("found rest turning [|treble|]: at most 60k", "no-positions")]
    [InlineData("found rest: [|at most 60k|]", "bad-found")]
    [InlineData("found rest turning vol: [|reads 60k|]", "bad-found")]
    [InlineData("found rest: [|good|]", "bad-found")]
    [InlineData("found lead: [|dead|]", "bad-found")]
    [InlineData("found dark alone: [|reads 2k|]", "bad-found")]
    [InlineData("found bridge alone: [|shorted|]", "bad-found")]
    [InlineData("found [|joint vol.3 of bridge.hot|]: reads 0", "bad-found")]
    [InlineData("found [|saddle|] alone: reads 0", "unknown-part")]
    [InlineData("found [|neck|] alone: reads 8k", "unknown-part")]
    [InlineData("found vol.[|7|] to vol.case: reads 0", "unknown-lug")]
    [InlineData("found rest: reads [|7.05|]", "bad-value")]
    [InlineData("found rest: heard [|vol|]", "unknown-part")]
    [InlineData("found worked\n[|found fresh|]", "said-twice")]
    public void Bind_WhatTheCircuitLacks_IsTold(string lines, string id)
    {
        var marked = MarkedText.Parse(Guitar + lines.Replace("\\n", "\n", StringComparison.Ordinal));
        var compiled = Compilation.Of(new SourceText("g.wiring", marked.Text), NoSources.Instance);

        var finding = Assert.Single(compiled.ReadingFindings);
        Assert.Equal(id, finding.Id);
        Assert.Equal(marked.Spans, [finding.Location.Span]);
    }

    /// <summary>The checks look at the instrument as it should be.</summary>
    [Fact]
    public void Check_FoundLines_ChangeNothing()
    {
        var without = Compilation.Of(new SourceText("g.wiring", Guitar), NoSources.Instance);
        var with = Compilation.Of(
            new SourceText("g.wiring", Guitar + "found worked\nfound sel=neck: reads open\n"),
            NoSources.Instance
        );

        Assert.Equal(without.Findings.Select(one => one.Message), with.Findings.Select(one => one.Message));
    }

    private static ImmutableArray<Found> Found(string lines, out Circuit circuit)
    {
        var compiled = Compilation.Of(new SourceText("g.wiring", Guitar + lines), NoSources.Instance);
        Assert.Empty(compiled.ReadingFindings);
        circuit = compiled.Circuit!;
        return circuit.Found;
    }
}
