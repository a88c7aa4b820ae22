using System.Globalization;
using CsCheck;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Electrical.Positions;
using WireText.Electrical.Responses;
using WireText.Electrical.Traces;
using WireText.Output;
using WireText.Pages;
using WireText.Testing;
using WireText.Text;

namespace WireText.Page.Tests;

/// <summary>
/// What a page shows in a state is what the core says of a circuit that rests in that state: read from the screen on one side,
/// from <c>positions</c> and <c>response</c> on the other. The core itself is held to other solvers elsewhere.
/// </summary>
[Collection(BrowserTests.Name)]
public class ShownTruthTests(Browser browser)
{
    private const int StatesOfAPage = 8;

    private const string TwoJacks = """
        pickup neck single-coil dcr=6.1k l=2.15H c=115p wind=ccw magnet=south
        pickup bridge single-coil dcr=7.3k l=2.8H c=120p wind=cw magnet=north
        switch sel spdt
        positions sel neck bridge
        pot vol 250k audio
        jack main mono
        jack second mono
        wire neck.hot to sel.A1 white
        wire bridge.hot to sel.A2 yellow
        wire sel.A0 to vol.3 red
        wire vol.2 to main.tip blue
        wire sel.A2 to second.tip orange
        wire neck.ground to vol.case black
        wire bridge.ground to vol.case black
        wire vol.1 to vol.case bare
        wire vol.case to main.sleeve black
        wire vol.case to second.sleeve black

        """;

    private static readonly string[] Labels = ["heard", "hum", "meter", "peak"];

    [SkippableTheory]
    [MemberData(nameof(ExamplePages.Rows), MemberType = typeof(ExamplePages))]
    public async Task RandomStates_ShowWhatTheCoreSays(string name)
    {
        var compiled = ExamplePages.Compile(name);
        var (circuit, study) = (compiled.Circuit!, compiled.Study!);
        var states = compiled.TellStates()!.States;
        await using var open = await browser.Open(ExamplePages.Page(name));
        foreach (var (_, state) in Samples.Of(StateOf(circuit, states), StatesOfAPage))
        {
            await Move(open, states, state);

            var expected = ToldAtRest(name, circuit, state);
            foreach (var label in Labels)
            {
                Assert.Equal(expected[label], await open.Now(label));
            }

            Assert.Equal(LevelOf(study.Positions, study.Analyse(state)), await open.Now("level"));
            var curve = ResponseStudy.Of(study, [state], [], [])!.Curves[0];
            AssertCurve(curve.Decibels, await open.Levels("now"));
            var trace = Trace.OfState(circuit, study.Network, state);
            Assert.Equal(
                circuit
                    .Wires.Where(wire => wire.Kind != WireKind.Braid && trace.Wires[wire.Index])
                    .Select(wire => wire.Id)
                    .Order(StringComparer.Ordinal),
                (await open.LitWires()).Order(StringComparer.Ordinal)
            );
        }

        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task Compared_ShowsWhatTheStockWiringDoes()
    {
        var compiled = ExamplePages.Compile(ExamplePages.Mod);
        var rows = PositionComparison.Of(CircuitComparison.Of(compiled.BaseCircuit!, compiled.Circuit!))!.Rows;
        var circuit = compiled.Circuit!;
        var states = compiled.TellStates()!.States;
        await using var open = await browser.Open(ExamplePages.Page(ExamplePages.Mod));
        await open.Page.GetByText("Compare with before the change").ClickAsync();
        foreach (var row in rows)
        {
            var state = row.State.Settled(circuit);
            await Move(open, states, state);
            var stock = RowsOf("mods/stock.wiring", row.Before.State);

            foreach (var label in Labels)
            {
                Assert.Equal(stock[label], await open.Before(label));
            }

            AssertCurve(
                ResponseStudy
                    .Of(ExamplePages.Compile("mods/stock.wiring").Study!, [row.Before.State], [], [])!
                    .Curves[0]
                    .Decibels,
                await open.Levels("was")
            );
        }
    }

    /// <summary>A knob that is turned on the page is turned in the wiring before the change too.</summary>
    [SkippableFact]
    public async Task ComparedWithATurnedKnob_ShowsTheStockWiringSoTurned()
    {
        await using var open = await browser.Open(ExamplePages.Page(ExamplePages.Mod));
        await open.Page.GetByText("Compare with before the change").ClickAsync();
        await open.Turn(1, 0);
        var stock = ExamplePages.Compile("mods/stock.wiring");
        var dark = State.Rest(stock.Circuit!).At(stock.Circuit!.FindDial("tone")!, 0);

        AssertCurve(ResponseStudy.Of(stock.Study!, [dark], [], [])!.Curves[0].Decibels, await open.Levels("was"));
    }

    /// <summary>At each jack the page tells what is heard there, as a table of that jack does.</summary>
    [SkippableFact]
    public async Task TwoJacks_AreListenedAtInTurn()
    {
        var compiled = Compilation.Of(new SourceText("guitar.wiring", TwoJacks), NoSources.Instance);
        var tables = compiled.Study!.Jacks.Select(jack => jack.Positions).ToList();
        await using var open = await browser.Open(ExamplePages.PageOf(TwoJacks));

        foreach (var (jack, position) in new[] { (0, 0), (0, 1), (1, 0), (1, 1) })
        {
            await open.Move([jack, position], []);

            var circuit = compiled.Circuit!;
            var state = State.Rest(circuit).At(0, position);
            var row = tables[jack].Rows.First(one => one.State.Meets(state));
            Assert.Equal(row.WhatIsHeard(circuit), await open.Now("heard"));
            Assert.Equal(
                $"{(jack == 0 ? "main" : "second")}, sel {(position == 0 ? "neck" : "bridge")}",
                await open.Heading
            );
        }

        open.AssertQuiet();
    }

    /// <summary>What nobody gave is marked, at the figures and at the curve.</summary>
    [SkippableFact]
    public async Task AssumedValues_AreMarkedWhereTheyAreShown()
    {
        await using var open = await browser.Open(
            ExamplePages.PageOf(
                """
                pickup neck single-coil
                jack out mono
                wire neck.hot to out.tip white
                wire neck.ground to out.sleeve black

                """
            )
        );

        Assert.EndsWith(" *", await open.Now("peak"), StringComparison.Ordinal);
        Assert.EndsWith(" *", await open.Now("meter"), StringComparison.Ordinal);
        Assert.Contains(
            "* rests on assumed values",
            await open.Page.InnerTextAsync("[data-place=told]"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "* with assumed values of neck",
            await open.Page.InnerTextAsync("[data-place=response]"),
            StringComparison.Ordinal
        );
    }

    /// <summary>What nobody knows makes figures a range, and the curve a band: both as the core tells them.</summary>
    [SkippableFact]
    public async Task UnknownValues_AreShownFromTheLeastToTheMost()
    {
        var wiring = File.ReadAllText(Repository.PathOf("docs", "unknown", "bench-find.wiring"));
        var compiled = Compilation.Of(new SourceText("guitar.wiring", wiring), NoSources.Instance);
        var state = State.Rest(compiled.Circuit!);
        var curve = ResponseStudy.Of(compiled.Study!, [state], [], [])!.Curves[0];
        await using var open = await browser.Open(ExamplePages.PageOf(wiring));

        var row = PositionText.WriteMarkdown(compiled.Study!.Positions).Split('\n');
        var expected = Cells(row[0])
            .Zip(Cells(row[2]))
            .ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal);
        foreach (var label in (string[])["level", .. Labels])
        {
            Assert.Equal(expected[label], await open.Now(label));
        }

        var band = await open.Levels("band");
        AssertCurve(curve.Most, band[..(band.Length / 2)]);
        AssertCurve(curve.Least, [.. band[(band.Length / 2)..].Reverse()]);
    }

    /// <summary>A mod that puts known parts in place of those nobody knew: the curve before it keeps its band.</summary>
    [SkippableFact]
    public async Task UnknownValuesBeforeTheChange_HaveTheirBand()
    {
        const string Mod = "base \"bench-find.wiring\"\nreplace vol 250k audio\nreplace dark 22n film\n";
        var folder = SourcesBeside.File(Repository.PathOf("docs", "unknown", "bench-find.wiring"));
        var compiled = Compilation.Of(new SourceText("mod.wiring", Mod), folder);
        var stock = Compilation.Of(
            new SourceText("stock.wiring", File.ReadAllText(Repository.PathOf("docs", "unknown", "bench-find.wiring"))),
            folder
        );
        var curve = ResponseStudy.Of(stock.Study!, [State.Rest(stock.Circuit!)], [], [])!.Curves[0];
        await using var open = await browser.Open(
            compiled.WritePage(compiled.TellStates()!, LayoutEffort.Quick, null)!
        );

        Assert.Empty(await open.Levels("band-was"));
        await open.Page.GetByText("Compare with before the change").ClickAsync();

        var band = await open.Levels("band-was");
        AssertCurve(curve.Most, band[..(band.Length / 2)]);
        AssertCurve(curve.Least, [.. band[(band.Length / 2)..].Reverse()]);
        Assert.Empty(await open.Levels("band"));
        Assert.Contains(
            "may have lain before, for nobody knew vol",
            await open.Page.InnerTextAsync("[data-place=response]"),
            StringComparison.Ordinal
        );
        open.AssertQuiet();
    }

    /// <summary>An enlarged view of a switch is lit with the state, wire by wire and lug by lug, as the switch itself is.</summary>
    [SkippableFact]
    public async Task CloseUps_AreLitAsTheDrawingIs()
    {
        const string Same = """
            () => {
              const sheet = document.querySelector("[data-place=drawing]");
              const shown = [...sheet.querySelectorAll(".close-up :is(g.wire, g.lug, g.part, g.bar)")];
              const of = (one) => [one.dataset.wire, one.dataset.bar, one.dataset.lug, one.dataset.part].find((name) => name !== undefined);
              const twin = (one) => [...sheet.querySelectorAll(`g.${one.classList[0]}`)].find((other) => other.closest(".close-up") === null && of(other) === of(one));
              const pairs = shown.map((one) => [one, twin(one)]).filter(([, other]) => other !== undefined);
              const differ = pairs.filter(([one, other]) => ["dim", "closed", "live"].some((word) => one.classList.contains(word) !== other.classList.contains(word)));
              return [pairs.length, differ.length, pairs.filter(([one]) => one.classList.contains("dim")).length];
            }
            """;
        await using var open = await browser.Open(ExamplePages.Page("9-four-pole-lever.wiring"));
        foreach (var sel in Enumerable.Range(0, 5))
        {
            await open.Move([sel], []);

            var counts = await open.Page.EvaluateAsync<int[]>(Same);
            Assert.True(counts[0] > 20, $"{counts[0]} things are drawn twice");
            Assert.Equal(0, counts[1]);
            Assert.InRange(counts[2], 1, counts[0] - 1);
        }
    }

    /// <summary>A finding is for who can mend it: the customer's drawing has no mark of one, and the bench's has.</summary>
    [Fact]
    public void AFinding_IsNotMarkedOnThePage()
    {
        const string Marked = "data-finding=";
        var compiled = Compilation.Of(
            new SourceText("guitar.wiring", TwoJacks + "metal bridge-plate\n"),
            NoSources.Instance
        );
        var options = new DrawOptions(LayoutEffort.Quick, Theme.Light, null);

        Assert.Contains(compiled.Findings, finding => finding.Severity == Severity.Warning);
        Assert.Contains(Marked, SvgWriter.Write(compiled.PictureFor(options)!), StringComparison.Ordinal);
        Assert.DoesNotContain(
            Marked,
            compiled.WritePage(compiled.TellStates()!, LayoutEffort.Quick, null)!,
            StringComparison.Ordinal
        );
    }

    /// <summary>Where a page has no room for all settings, a knob that is turned puts the others to rest, and says so.</summary>
    [SkippableFact]
    public async Task KnobsThatTurnAlone_PutTheOthersToRest()
    {
        await using var open = await browser.Open(ExamplePages.Page("8-twin-coil-cut.wiring"));
        await open.Turn(0, 3);
        await open.Turn(2, 5);

        Assert.Equal("tog neck, vol-n.pull full, vol-b.pull full, tone-n 5", await open.Heading);
        Assert.StartsWith(
            "tone-n 5, the other knobs back at rest: ",
            await open.Page.GetByRole(Microsoft.Playwright.AriaRole.Status).TextContentAsync(),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "one knob is turned at a time",
            await open.Page.InnerTextAsync("main"),
            StringComparison.Ordinal
        );
    }

    private static Gen<State> StateOf(Circuit circuit, PageStates states) =>
        Gen.Int[0, int.MaxValue]
            .Array[16]
            .Select(chosen =>
            {
                var state = State.Rest(circuit);
                var next = 0;
                foreach (var control in states.Controls)
                {
                    state = state.At(control.Index, chosen[next++] % control.Positions.Length);
                }

                foreach (var (place, knob) in states.Knobs.Index())
                {
                    if (states.Turning != KnobTurning.Alone || chosen[15] % states.Knobs.Length == place)
                    {
                        state = state.At(knob.Dial, knob.Stops[chosen[next++] % knob.Stops.Length]);
                    }
                }

                return state;
            });

    private static Task Move(OpenPage open, PageStates states, State state) =>
        open.Move(
            states.Controls.Select(control => state[control.Index]!.Value),
            states
                .Knobs.Index()
                .Where(one => state.Travels[one.Item.Dial.Index] != one.Item.Dial.Rest)
                .Select(one => (one.Index, one.Item.Stops.IndexOf(state.Travels[one.Item.Dial.Index])))
        );

    /// <summary>The row of the table of positions of the same wiring with its knobs resting there.</summary>
    private static Dictionary<string, string> ToldAtRest(string name, Circuit circuit, State state)
    {
        var turned = circuit.Dials.Where(dial => state.Travels[dial.Index] != dial.Rest);
        var rest = string.Concat(turned.Select(dial => $"rest {StateText.Of(dial, state.Travels[dial.Index])}\n"));
        return RowsOf(name, state, rest);
    }

    private static Dictionary<string, string> RowsOf(string name, State state, string lines = "")
    {
        var path = Repository.PathOf("examples", name);
        var compiled = Compilation.Of(new SourceText(path, File.ReadAllText(path) + lines), SourcesBeside.File(path));
        var table = compiled.Study!.Positions;
        var row = table.Rows.Index().First(one => one.Item.State.Meets(state)).Index;
        var written = PositionText.WriteMarkdown(table).Split('\n');
        var (heading, cells) = (Cells(written[0]), Cells(written[row + 2]));
        return heading.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal);
    }

    private static string[] Cells(string line) =>
        [.. line.Trim('|', ' ').Split(" | ").Select(cell => cell.Replace("\\", "", StringComparison.Ordinal))];

    /// <summary>Over the loudest position with all knobs at rest.</summary>
    private static string LevelOf(PositionTable table, StateAnalysis analysis)
    {
        if (analysis.Outcome != Electrical.Sound.Outcome.Sound)
        {
            return "-";
        }

        var loudest = table.AgainstOneCoil().Rows.Max(row => row.LevelDecibels)!.Value;
        var level = Math.Round(analysis.Sound.LevelDecibels - loudest, 1, MidpointRounding.AwayFromZero);
        return $"{(level < 0 ? "−" : "")}{Math.Abs(level).ToString("0.0", CultureInfo.InvariantCulture)} dB";
    }

    /// <summary>To a tenth of a dB, and what the screen rounds.</summary>
    private static void AssertCurve(IReadOnlyList<double>? expected, double[] shown)
    {
        var thinned = (expected ?? []).Where((_, place) => place % 3 == 0).ToList();
        Assert.Equal(thinned.Count, shown.Length);
        for (var i = 0; i < shown.Length; i++)
        {
            Assert.InRange(shown[i], thinned[i] - 0.06, thinned[i] + 0.06);
        }
    }
}
