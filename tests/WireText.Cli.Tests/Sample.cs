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
}
