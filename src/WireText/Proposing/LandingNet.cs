using System.Collections.Immutable;

namespace WireText.Proposing;

/// <summary>What a wire from an open lug may lead to: a net of the circuit with the open lugs taken out.</summary>
/// <param name="Lugs">Its lugs that are not open, as indices into <see cref="Circuits.Circuit.Lugs"/>, in order; empty for a jumper that is soldered already.</param>
/// <param name="Free">The lead or lug that is all of it and wired nowhere; null for any other net.</param>
internal sealed record LandingNet(ImmutableArray<int> Lugs, int? Free)
{
    public bool IsFree => Free is not null;
}
