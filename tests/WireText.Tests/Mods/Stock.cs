using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Tests.Mods;

/// <summary>A right circuit, and files that stand on it. The sources are a table of names.</summary>
internal sealed class Stock(params (string Path, string Text)[] files) : ISourceProvider
{
    public const string Path = "stock.wiring";

    public const string Text = """
        circuit "Two pickups, as they left the shop"

        pickup neck    single-coil  wind=ccw magnet=south
        pickup bridge  single-coil  wind=cw  magnet=north
        switch sel     toggle-3way
        pot    vol     250k audio    # the one by the bridge
        pot    tone    250k audio
        cap    dark    47n film  from tone.2 to tone.case
        jack   out     mono
        metal  plate
        positions sel neck both bridge
        place  vol at 40,60

        # signal
        wire neck.hot   to sel.A1 white
        wire bridge.hot to sel.B1 yellow
        wire sel.A0     to sel.B0 to vol.3 red
        wire vol.3      to tone.1 orange
        wire vol.2      to out.tip blue

        # ground
        wire neck.ground   to vol.case black
        wire bridge.ground to vol.case black
        wire vol.1         to vol.case bare
        wire sel.case      to vol.case to tone.case to out.sleeve black
        wire plate         to tone.case black

        expect sel=neck:   neck
        expect sel=both:   neck parallel bridge, hum-cancelling
        expect sel=bridge: bridge

        """;

    /// <summary>The same with a second jack beside the first, and expectations at both.</summary>
    public const string WithTwoJacks = """
        pickup neck    single-coil
        pickup bridge  single-coil
        switch sel     toggle-3way
        jack   out     mono
        jack   main    mono
        positions sel neck both bridge
        wire neck.hot   to sel.A1 white
        wire bridge.hot to sel.B1 yellow
        wire sel.A0     to sel.B0 to out.tip to main.tip red
        wire neck.ground to bridge.ground to out.sleeve to main.sleeve black
        expect sel=neck: neck
        expect main: sel=neck: neck
        expect MAIN: rest: neck

        """;

    public SourceLoad Load(string path, SourceText from)
    {
        var all = files.Append((Path, Text));
        return all.FirstOrDefault(file => file.Item1 == path) is (not null, { } text)
            ? SourceLoad.Found(new SourceText(path, text))
            : SourceLoad.Missing("no such file");
    }

    /// <summary>A file named mod.wiring, compiled.</summary>
    public Compilation Compile(string mod) => Compilation.Of(new SourceText("mod.wiring", mod), this);

    /// <summary>Where something is expected, as the lines have it: the jack that is named, and the state.</summary>
    public static IEnumerable<string> ExpectedIn(Compilation compiled) =>
        compiled
            .Resolved.Statements.OfType<ExpectSyntax>()
            .Select(one =>
                (one.Jack is { } jack ? $"{jack.Text}: " : "")
                + (
                    one.State.IsEmpty
                        ? "rest"
                        : string.Join(' ', one.State.Select(pair => $"{pair.Key.Text}={pair.Value.Text}"))
                )
            );
}
