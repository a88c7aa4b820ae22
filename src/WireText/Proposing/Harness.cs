using System.Collections.Immutable;

namespace WireText.Proposing;

/// <summary>What stands on each open lug, and which leads are joined for good.</summary>
/// <param name="Direct">Nets joined for good.</param>
/// <param name="Labels">For each lug in <see cref="OpenLugs.Lugs"/> the node on it, where the harness puts one there; else null. Nodes behind the nets are jumpers.</param>
/// <param name="Joints">Stretches of wire and leads.</param>
/// <param name="States">For each state of the problem, what is joined there.</param>
internal sealed record Harness(Joining Direct, ImmutableArray<int?> Labels, int Joints, ImmutableArray<Joining> States);
