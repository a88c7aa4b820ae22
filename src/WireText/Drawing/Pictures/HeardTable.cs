using System.Collections.Immutable;

namespace WireText.Drawing.Pictures;

/// <summary>What is heard in every position, for the block of words under a drawing.</summary>
/// <param name="Heading">The names of the controls, then what stands over what is heard.</param>
/// <param name="Rows">Each with one cell a column.</param>
/// <param name="Untold">How many more rows there are than are told.</param>
/// <param name="RestsOnAssumed">True where a cell is marked, for the text gives too little.</param>
public sealed record HeardTable(
    ImmutableArray<string> Heading,
    ImmutableArray<ImmutableArray<string>> Rows,
    int Untold,
    bool RestsOnAssumed
)
{
    /// <summary>The index of the control whose rows tell what each position joins too; null for none.</summary>
    public int? Joined { get; init; }
}
