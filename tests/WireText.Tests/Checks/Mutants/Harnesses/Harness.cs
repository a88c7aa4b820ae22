using System.Collections.Immutable;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>A generated circuit: usual harness, right by the way it is made, tuned on by nobody.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Text">Its wiring, without claims.</param>
/// <param name="Heard">
/// For each stop of the selector, or for rest where there is none, the pickups that are meant to be heard, in order of declaration.
/// </param>
/// <param name="Claims">What a bench would write of it: <c>expect</c> lines, from what was meant and not from what was computed.</param>
internal sealed record Harness(
    int Number,
    string Name,
    string Text,
    ImmutableArray<(string Stop, ImmutableArray<string> Pickups)> Heard,
    string Claims
)
{
    public string TextWithClaims => Text + "\n" + Claims;
}
