namespace WireText.Proposing;

/// <summary>What a column may join, and at which cost.</summary>
/// <param name="Cost">Joints on its throws.</param>
/// <param name="Throws">For each contact the node on its throw and one, five bits each; zero where nothing is soldered.</param>
internal sealed record ColumnChoice(Joining Joining, int Cost, ulong Throws);
