namespace WireText.Cli.Tests;

/// <summary>The smallest circuits, by what is found in them.</summary>
internal static class Sample
{
    /// <summary>Nothing is found in it.</summary>
    public const string Right = """
        pickup  neck  single-coil  dcr=6k l=2.4H c=100p
        jack    out   mono
        wire    neck.hot     to out.tip     white
        wire    neck.ground  to out.sleeve  black

        """;

    /// <summary>One warning: the pot was declared and forgotten.</summary>
    public const string Doubtful = Right + "pot     vol   standard 250k audio\n";

    /// <summary>One error: a colour that does not exist, in line 4.</summary>
    public const string Wrong = """
        pickup  neck  single-coil  dcr=6k l=2.4H c=100p
        jack    out   mono
        wire    neck.hot     to out.tip     white
        wire    neck.ground  to out.sleeve  blakc

        """;

    /// <summary>The wires of its switch are to be found, and three will do.</summary>
    public const string ToBeFound = """
        pickup  neck    single-coil
        pickup  bridge  single-coil
        switch  sel     spdt
        jack    out     mono
        wire    neck.ground    to out.sleeve  black
        wire    bridge.ground  to out.sleeve  black
        expect  sel=1:  bridge
        expect  sel=2:  neck
        find    sel

        """;

    /// <summary>What was found at the bench has one answer.</summary>
    public const string FoundOut =
        Right
        + """
            found  worked
            found  rest:   reads open, dead
            found  lead:   open

            """;

    /// <summary>In the middle position nothing sounds, and what is said of the volume waits for that.</summary>
    public const string Waiting = """
        pickup neck single-coil
        pickup bridge single-coil
        switch sel spdt-on-off-on
        pot vol 250k linear
        jack out mono
        wire neck.hot to sel.A1 white
        wire bridge.hot to sel.A2 yellow
        wire sel.A0 to vol.3 red
        wire vol.2 to out.tip blue
        wire neck.ground to vol.case black
        wire bridge.ground to vol.case black
        wire vol.case to out.sleeve black

        """;
}
