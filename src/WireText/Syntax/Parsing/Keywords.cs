using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>The words that a line can start with.</summary>
public static class Keywords
{
    internal const string Arrange = "arrange";
    internal const string Colour = LineScan.ColourWord;
    internal const string Define = "define";
    internal const string Drop = "drop";
    internal const string Expect = "expect";
    internal const string Find = "find";
    internal const string Found = "found";
    internal const string Remark = "remark";

    /// <summary>What <see cref="Remark"/> was called when a note was not yet a weight of findings alone; it is still read.</summary>
    internal const string OlderRemark = "note";

    internal const string Splice = "splice";

    /// <summary>The statements other than parts, by how often a file has them.</summary>
    public static ImmutableArray<string> Statements { get; } =
    [
        "wire",
        "cable",
        Splice,
        "touch",
        Expect,
        "positions",
        "rest",
        Arrange,
        "place",
        "circuit",
        "about",
        Remark,
        OlderRemark,
        "finish",
        Colour,
        "load",
        "allow",
        Find,
        Found,
        Define,
        "include",
        "base",
        "lift",
        Drop,
        "replace",
    ];

    /// <summary>The kinds of part that ship with the tool; a <c>define</c> may add others.</summary>
    public static ImmutableArray<string> StandardKinds { get; } =
    ["pickup", "pot", "switch", "button", "jack", "cap", "resistor", "inductor", "battery", "preamp", "metal"];

    /// <summary>The lines inside a <c>define</c>.</summary>
    public static ImmutableArray<string> Insides { get; } =
    [
        "body",
        "hole",
        "lugs",
        "leads",
        "metal",
        "spare",
        "inner",
        "between",
        "joined",
        "coil",
        "track",
        "position",
        "rest",
        "amp",
        "resistor",
        "cap",
        "inductor",
        "battery",
    ];

    /// <summary>The lines inside a <c>define</c> whose word no kind of part may have: at the left edge they are a slip.</summary>
    internal static ImmutableArray<string> NeverKinds { get; } =
    ["body", "hole", "lugs", "leads", "spare", "inner", "between", "joined", "track", "position"];

    internal static bool Has(this ImmutableArray<string> words, string word) =>
        words.Any(candidate => string.Equals(candidate, word, StringComparison.OrdinalIgnoreCase));
}
