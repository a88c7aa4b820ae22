using System.Collections.Immutable;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Proposing;

public enum ProposalOutcome
{
    /// <summary>Wires that make every claim true, and no fewer joints can.</summary>
    Found,

    /// <summary>No wires on the open lugs can.</summary>
    Impossible,

    /// <summary>A bound was reached: what was found may not be the least, or nothing was found and it is not known whether anything is there.</summary>
    Undecided,

    /// <summary>The text asks for nothing that could be looked for.</summary>
    Refused,
}

/// <summary>A standard switch that can do what another cannot.</summary>
/// <param name="Joints">The fewest with it.</param>
/// <param name="Lugs">How many lugs it has.</param>
public sealed record OtherSwitch(string Model, int Joints, int Lugs);

/// <summary>What a search for wires came to.</summary>
/// <param name="Judged">Joinings of nets that were judged, each in one state.</param>
/// <param name="Nodes">Steps of the search.</param>
public sealed record Proposal(ProposalOutcome Outcome, int Judged, long Nodes)
{
    /// <summary>Stretches of wire and leads that are soldered; 0 where nothing was found.</summary>
    public int Joints { get; init; }

    /// <summary>No harness has fewer; the joints themselves where they are proven least.</summary>
    public int AtLeast { get; init; }

    /// <summary>The lines to put in place of <c>find</c>; empty where nothing was found.</summary>
    public ImmutableArray<string> Lines { get; init; } = [];

    /// <summary>The same text with the lines in it; null where nothing was found.</summary>
    public SourceText? Completed { get; init; }

    /// <summary>What the completed text does; null where nothing was found.</summary>
    public Study? Study { get; init; }

    /// <summary>The lines of other harnesses with as many joints that do something else somewhere, the next best first.</summary>
    public ImmutableArray<ImmutableArray<string>> Others { get; init; } = [];

    /// <summary>Harnesses of so many joints that make every claim true, this one with them; as many as are kept at most.</summary>
    public int Alike { get; init; }

    /// <summary>Nets that wires on the open lugs may lead to.</summary>
    public int Nets { get; init; }

    /// <summary>How many states were looked at, each proven.</summary>
    public int States { get; init; }

    /// <summary>Why nothing was looked for, or what stands in the way; null where nothing does.</summary>
    public string? Why { get; init; }

    /// <summary>Positions that exclude each other, each needed for that; in words such as <c>sel=both</c>.</summary>
    public ImmutableArray<string> Excluding { get; init; } = [];

    /// <summary>Standard switches that can do it, fewest joints first; empty where none can, or none was tried.</summary>
    public ImmutableArray<OtherSwitch> WouldDo { get; init; } = [];

    /// <summary>True when standard switches were tried in place of the one that cannot.</summary>
    public bool HasTriedOthers { get; init; }
}
