using System.Collections.Immutable;

namespace WireText.Starting;

/// <summary>Which pots a new wiring has.</summary>
/// <param name="HasOwnVolumes">Each pickup has a volume of its own; else one serves all.</param>
/// <param name="Tones">The names of the tone controls.</param>
public sealed record StarterControls(string Word, string Meaning, bool HasOwnVolumes, ImmutableArray<string> Tones)
    : IStarterAnswer
{
    private static readonly StarterControls Usual = new("volume-tone", "volume and tone", false, ["tone"]);
    private static readonly StarterControls Alone = new("volume", "volume", false, []);

    private static readonly StarterControls OwnVolumes = new(
        "two-volumes-tone",
        "a volume each and a tone",
        true,
        ["tone"]
    );

    private static readonly StarterControls TwoTones = new(
        "volume-two-tones",
        "volume and two tones",
        false,
        ["tone-neck", "tone-middle"]
    );

    /// <summary>Every set of pots that a new wiring may have.</summary>
    public static ImmutableArray<StarterControls> All { get; } = [Usual, Alone, OwnVolumes, TwoTones];

    internal bool HasTwoTones => Tones.Length > 1;

    /// <summary>Those that go with the pickups and the switch; the first is taken where nothing is said.</summary>
    public static ImmutableArray<StarterControls> For(StarterPickups pickups, StarterSelector selector) =>
        pickups.Pickups.Length == 2 ? [Usual, Alone, OwnVolumes]
        : selector.HasFreePole ? [Usual, Alone, TwoTones]
        : [Usual, Alone];
}
