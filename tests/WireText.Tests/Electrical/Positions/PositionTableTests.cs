using System.Collections.Immutable;
using CsCheck;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Testing;

namespace WireText.Tests.Electrical.Positions;

public class PositionTableTests
{
    public static TheoryData<string> ExampleNames => Rows.Of(Repository.ExampleNames);

    [Fact]
    public void PhaseSwitchBehindASelector_MakesFiveSituationsFourRows()
    {
        // The sign of the whole is not told: a pickup alone is the same with its leads turned.
        var table = TableOf(RightVerdicts.Of(13));

        Assert.Equal(
            [
                "ph=any sel=1: neck",
                "ph=any sel=3: bridge",
                "ph=1 sel=2: neck parallel bridge",
                "ph=2 sel=2: neck parallel bridge, out of phase",
            ],
            Lines(table)
        );
    }

    [Fact]
    public void MuteAcrossTheJack_IsOneRow_WhateverTheOthersDo()
    {
        var table = TableOf(Example("2-two-pickups-mute.wiring"));

        Assert.Equal(
            [
                "sel=any mute=down: silence: tip and sleeve are joined",
                "sel=bridge mute=up: bridge",
                "sel=both mute=up: neck parallel bridge",
                "sel=neck mute=up: neck",
            ],
            Lines(table)
        );
    }

    [Fact]
    public void SelectorWithNothingInTheMiddle_LeavesTheJackOnItsPot()
    {
        var table = TableOf(RightVerdicts.Of(5));

        Assert.Equal("sel=2: dead: only 250 kΩ stay on the jack", Lines(table)[1]);
        Assert.Null(table.Rows[1].LevelDecibels);
    }

    [Fact]
    public void LoudestRow_IsTheReference()
    {
        var table = TableOf(Example("8-twin-coil-cut.wiring"));

        Assert.Equal(0, table.Rows.Max(row => row.LevelDecibels));
    }

    [Fact]
    public void ControlThatChangesNothing_HasNoColumn()
    {
        var table = TableOf(
            Bench.Of("button spare momentary; jack out; pickup p single-coil; p.hot ~ out.tip; p.ground ~ out.sleeve")
        );

        Assert.Empty(table.Columns);
        Assert.Single(table.Rows);
    }

    [Fact]
    public void SevenCutsInParallel_AreLocal_AndHaveLinesOfTheirOwn()
    {
        var table = TableOf(Cuts(7));

        // 128 situations: one row with all switches in their first position, and a line for each switch's other position.
        Assert.Single(table.Rows);
        Assert.Equal(7, table.Local.Length);
        Every.Item(table.Local, (local, i) => Assert.Equal($"p{i}", table.Circuit.Parts[local.Pickup].Name));
        Every.Item(table.Local, local => Assert.Single(local.Rows));
    }

    /// <summary>Behind the selector it changes whatever is heard: no pickup's own, however many rows there are.</summary>
    [Fact]
    public void RotaryOfCapacitorsBehindAllPickups_IsNoPickupsOwn()
    {
        var caps = Enumerable.Range(2, 11).Select(i => $"cap c{i} {i}n; c{i}.1 ~ voice.A{i}; c{i}.2 ~ out.sleeve");
        var cuts = Enumerable
            .Range(0, 3)
            .Select(i =>
                $"pickup p{i} humbucker-4 dcr={7 + i}k; switch s{i} spdt; p{i}.n-start ~ out.tip; p{i}.n-finish ~ p{i}.s-finish; "
                + $"p{i}.s-start ~ out.sleeve; s{i}.A0 ~ p{i}.n-finish; s{i}.A2 ~ out.sleeve"
            );
        var table = TableOf(
            Bench.Of($"jack out; switch voice rotary-1x12; voice.A0 ~ out.tip; {string.Join("; ", caps.Concat(cuts))}")
        );

        Assert.Equal(["s0", "s1", "s2"], table.Local.Select(local => local.Control.Name));
        Assert.Equal(12, table.Rows.Length);
    }

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void Rows_OfEachExample_HoldEveryStateOnceAsSolvedAlone(string name)
    {
        // The table is made from situations, memoised and merged; each state solved on its own must say the same.
        var bench = Example(name);
        var table = TableOf(bench);
        foreach (var state in RandomCircuits.StatesOf(bench.Network).Where(state => IsPlugged(bench, state)))
        {
            var row = Assert.Single(table.Rows, row => Holds(row, state));
            var alone = new Analyst(bench.Network).Analyse(state);

            Assert.Equal(alone.Outcome, row.Analysis.Outcome);
            Assert.Equal(
                new PositionRow(state, alone, null).WhatIsHeard(bench.Circuit),
                row.WhatIsHeard(bench.Circuit)
            );
            Assert.Equal(alone.Sound.LevelDecibels, row.Analysis.Sound.LevelDecibels, 0.1);
            Assert.Equal(
                alone.Reading?.Ohms ?? 0,
                row.Analysis.Reading?.Ohms ?? 0,
                (row.Analysis.Reading?.Ohms ?? 0) * 0.01
            );
        }
    }

    [Theory]
    [MemberData(nameof(ExampleNames))]
    public void Rows_WithTheWiresInReverseOrder_AreTheSame(string name)
    {
        var lines = File.ReadAllLines(Repository.PathOf("examples", name));
        var wires = lines.Where(line => line.StartsWith("wire", StringComparison.Ordinal)).Reverse();
        var others = lines.Where(line => !line.StartsWith("wire", StringComparison.Ordinal));
        var turned = new Bench(Bench.CompileText(string.Join('\n', [.. others, .. wires]) + "\n"));

        Assert.Equal(Lines(TableOf(Example(name))), Lines(TableOf(turned)));
    }

    [Fact]
    public void SeventeenCuts_AreTooManyToList_AndNamed()
    {
        var table = TableOf(Cuts(17));

        Assert.Empty(table.Rows);
        Assert.Equal(17, table.Crowding.Length);
    }

    [Fact]
    public void LadderOfThousandsOfParts_IsAnsweredWithoutAForm()
    {
        var text = "jack out; pickup p single-coil; p.ground ~ out.sleeve; p.hot ~ m0; metal m0";
        for (var i = 0; i < 1500; i++)
        {
            text +=
                $"; metal m{i + 1}; resistor r{i} 10R from m{i} to m{i + 1}; resistor q{i} 10M from m{i + 1} to out.sleeve";
        }

        var row = Assert.Single(TableOf(Bench.Of(text + "; m1500 ~ out.tip")).Rows);

        Assert.Equal(Outcome.Sound, row.Analysis.Outcome);
        Assert.Equal(WireText.Electrical.Forms.FormKind.Bridge, row.Analysis.Form.Kind);
    }

    [Fact]
    public void Analyst_OfRandomCircuits_GivesWhatADirectSolveGives() =>
        Samples.Each(
            Gen.Select(RandomCircuits.Any, Gen.OneOf(Gen.Const(0.0), Gen.Const(3.0), Gen.Const(10.0)).Array[8]),
            200,
            (made, travels) =>
            {
                var network = made.ToNetwork();
                ImmutableArray<double> turned = [.. travels.Take(network.Circuit.Dials.Length)];
                var analyst = new Analyst(network);
                foreach (var state in RandomCircuits.StatesOf(network).Take(12).Select(one => one.At(turned)))
                {
                    var known = analyst.Analyse(state);
                    var direct = JackSound.Of(network, state);
                    Assert.Equal(direct.Outcome, known.Outcome);
                    Assert.Equal(direct.LevelDecibels, known.Sound.LevelDecibels, 1e-9);
                    Assert.Equal(direct.Hum, known.Sound.Hum);
                    Assert.Equal(WireText.Electrical.Solving.Ohmmeter.Read(network, state), known.Reading);
                }
            }
        );

    /// <summary>Two-coil pickups in parallel, each with a cut to one coil.</summary>
    private static Bench Cuts(int count)
    {
        var text = "jack out";
        for (var i = 0; i < count; i++)
        {
            text +=
                $"; pickup p{i} humbucker-4 dcr={7 + i}k; switch s{i} spdt; p{i}.n-start ~ out.tip; p{i}.n-finish ~ p{i}.s-finish;"
                + $"p{i}.s-start ~ out.sleeve; s{i}.A0 ~ p{i}.n-finish; s{i}.A2 ~ out.sleeve";
        }

        return Bench.Of(text);
    }

    private static PositionTable TableOf(Bench bench) => Study.Of(bench.Circuit)!.Positions;

    private static Bench Example(string name) =>
        new(Bench.CompileText(File.ReadAllText(Repository.PathOf("examples", name))));

    private static List<string> Lines(PositionTable table) =>
        [
            .. table.Rows.Select(row =>
                string.Join(
                    ' ',
                    table.Columns.Select(control => $"{control.Name}={StateText.PositionOf(control, row.State)}")
                )
                + ": "
                + row.WhatIsHeard(table.Circuit)
            ),
        ];

    private static bool Holds(PositionRow row, State state) => row.State.Holds(state);

    private static bool IsPlugged(Bench bench, State state) =>
        bench.Circuit.Controls.All(control => !control.IsPlug || state[control.Index] == control.Rest);
}
