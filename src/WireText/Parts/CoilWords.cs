namespace WireText.Parts;

/// <summary>The words for how a coil is wound and which pole faces the strings.</summary>
public static class CoilWords
{
    public static Winding? ReadWinding(string word) =>
        word.ToUpperInvariant() switch
        {
            "CW" => Winding.Clockwise,
            "CCW" => Winding.CounterClockwise,
            _ => null,
        };

    public static MagnetPole? ReadMagnet(string word) =>
        word.ToUpperInvariant() switch
        {
            "NORTH" => MagnetPole.North,
            "SOUTH" => MagnetPole.South,
            "NONE" => MagnetPole.None,
            _ => null,
        };

    public static string Of(Winding winding) => winding == Winding.Clockwise ? "cw" : "ccw";

    public static string Of(MagnetPole magnet) =>
        magnet switch
        {
            MagnetPole.North => "north",
            MagnetPole.South => "south",
            _ => "none",
        };

    /// <summary>What is known of how a coil is wound and of its magnet, as a drawing says it; empty when nothing is.</summary>
    public static string Describe(Winding? winding, MagnetPole? magnet)
    {
        var wound = winding is { } way ? $"wound {Of(way)}" : "";
        var pole = magnet switch
        {
            null => "",
            MagnetPole.None => "no magnet",
            { } facing => $"{Of(facing)} to the strings",
        };
        return string.Join(" · ", new[] { wound, pole }.Where(words => words.Length > 0));
    }

    public static string WindingProblem(string word) =>
        $"'{word}' is no winding; it is 'cw' or 'ccw', from start to finish, seen from the strings";

    public static string MagnetProblem(string word) =>
        $"'{word}' is no pole; 'north', 'south' or 'none' faces the strings";
}
