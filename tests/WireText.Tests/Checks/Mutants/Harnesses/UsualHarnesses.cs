using System.Collections.Immutable;
using WireText.Testing;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>Thirty harnesses, the same in every run. Selectors and extra switches go round, so that each occurs; the rest is drawn.</summary>
internal static class UsualHarnesses
{
    public const int Count = 30;

    /// <summary>
    /// Where the draw starts; no meaning. Changed whenever checks were chosen by what was left of a draw, before the next was
    /// looked at: what was looked at is no longer unseen.
    /// </summary>
    private const string Start = "000000000002";

    private static readonly Extra[] Extras =
    [
        Extra.MomentaryMute,
        Extra.None,
        Extra.ToneLift,
        Extra.LatchingMute,
        Extra.CapacitorChoice,
        Extra.None,
        Extra.JackThatShortsWithoutAPlug,
        Extra.SixCapacitors,
        Extra.None,
        Extra.TwelveCapacitors,
        Extra.None,
    ];

    public static ImmutableArray<Harness> All { get; } = [.. Enumerable.Range(1, Count).Select(Of)];

    private static Harness Of(int number)
    {
        var gen = HarnessChoices.Around(
            Selector.All[(number - 1) % Selector.All.Length],
            Extras[(number - 1) % Extras.Length]
        );
        return HarnessComposer.Compose(number, Samples.Take(gen, Start, number).Last().Value);
    }
}
