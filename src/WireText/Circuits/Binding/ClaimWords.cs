using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What a bench says for a claim that has another word in the language.</summary>
internal static class ClaimWords
{
    private static readonly ImmutableArray<(string Said, string Claim)> Meanings =
    [
        ("silent", "silence"),
        ("mute", "silence"),
        ("muted", "silence"),
        ("quiet", "silence"),
        ("humbucking", "hum-cancelling"),
        ("hum-canceling", "hum-cancelling"),
    ];

    /// <summary>The claim that a word stands for; null where it stands for none.</summary>
    public static string? Meant(string word) =>
        Meanings.FirstOrDefault(meaning => Naming.Alike(meaning.Said, word)).Claim;
}
