using System.Collections.Immutable;

namespace WireText.Starting;

/// <summary>Which jack a new wiring has; the word is its model.</summary>
public sealed record StarterJack(string Word, string Meaning) : IStarterAnswer
{
    /// <summary>The first is taken where nothing is said.</summary>
    public static ImmutableArray<StarterJack> All { get; } =
    [new("mono", "tip and sleeve"), new("stereo", "the ring left free, as for a battery that comes later")];
}
