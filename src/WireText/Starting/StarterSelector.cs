using System.Collections.Immutable;

namespace WireText.Starting;

/// <summary>What chooses between the pickups of a new wiring.</summary>
/// <param name="Positions">What its positions are called, in their order; empty where there is no switch.</param>
/// <param name="Lugs">For each pickup from the neck to the bridge the lugs that it is wired to.</param>
public sealed record StarterSelector(
    string Word,
    string Meaning,
    ImmutableArray<string> Positions,
    ImmutableArray<string> Lugs
) : IStarterAnswer
{
    private const string NoneWord = "none";
    private const string FiveWayWord = "lever-5way";

    private static readonly StarterSelector None = new(NoneWord, "no switch", [], []);

    private static readonly ImmutableArray<StarterSelector> OfTwo =
    [
        new("lever-3way", "3-way lever", ["bridge", "both", "neck"], ["B3 B2", "A1 A2"]),
        new("toggle-3way", "3-way toggle", ["neck", "both", "bridge"], ["A1", "B1"]),
        None,
    ];

    private static readonly ImmutableArray<StarterSelector> OfThree =
    [
        new(
            FiveWayWord,
            "5-way lever",
            ["bridge", "bridge-middle", "middle", "middle-neck", "neck"],
            ["A3", "A2", "A1"]
        ),
        new("lever-3way", "3-way lever", ["bridge", "middle", "neck"], ["A3", "A2", "A1"]),
    ];

    /// <summary>Every switch that a new wiring may have, each word once.</summary>
    public static ImmutableArray<StarterSelector> All { get; } = [.. OfTwo, OfThree[0]];

    internal bool IsSwitch => Word != NoneWord;

    /// <summary>True where its second pole is free for the tones of single pickups.</summary>
    internal bool HasFreePole => Word == FiveWayWord;

    /// <summary>True where its frame is a lug of its own.</summary>
    internal bool HasCase => Word == "toggle-3way";

    /// <summary>Those that go with the pickups; the first is taken where nothing is said.</summary>
    public static ImmutableArray<StarterSelector> For(StarterPickups pickups) =>
        pickups.Pickups.Length switch
        {
            1 => [None],
            2 => OfTwo,
            _ => OfThree,
        };

    /// <summary>The pickups that sound in a position, by name; from the bridge, as positions are counted.</summary>
    internal static ImmutableArray<string> HeardAt(string position) =>
        position == "both" ? ["neck", "bridge"] : [.. position.Split('-')];
}
