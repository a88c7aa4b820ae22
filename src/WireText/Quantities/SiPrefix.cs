using System.Collections.Immutable;

namespace WireText.Quantities;

/// <summary>A prefix of the SI: its letter, its name and its power of ten.</summary>
public sealed record SiPrefix(string Letter, string Name, int Power)
{
    public static readonly SiPrefix None = new("", "", 0);

    /// <summary>From pico to giga, the ones a guitar's wiring uses.</summary>
    public static ImmutableArray<SiPrefix> All { get; } =
    [
        new("p", "pico", -12),
        new("n", "nano", -9),
        new("u", "micro", -6),
        new("m", "milli", -3),
        None,
        new("k", "kilo", 3),
        new("M", "mega", 6),
        new("G", "giga", 9),
    ];

    /// <summary>The prefix of a letter: <c>k</c> and <c>K</c> are one, and so are <c>u</c>, <c>µ</c> and <c>μ</c>; <c>m</c> is milli and <c>M</c> mega.</summary>
    public static SiPrefix? Of(char letter) =>
        letter switch
        {
            'K' => Of('k'),
            'µ' or 'μ' => Of('u'),
            _ => All.FirstOrDefault(p => p.Letter.Length == 1 && p.Letter[0] == letter),
        };
}
