using WireText.Syntax.Parsing;

namespace WireText.Editing;

/// <summary>The most that is taken from an editor, and looked at for it.</summary>
public static class EditorLimits
{
    /// <summary>The longest message that is read, in bytes: the longest text that is read, each of its characters as six of JSON.</summary>
    public const int MostMessageBytes = 6 * WiringParser.MaxLength;

    /// <summary>How many files are looked at that may name something. Chosen: a shop has one for each instrument, and keeps them for years.</summary>
    public const int MostFiles = 2000;
}
