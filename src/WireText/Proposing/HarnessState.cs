using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Proposing;

/// <summary>One state of all controls, plugs and dials at rest, and what is said of it.</summary>
/// <param name="Index">Its place among all states of the problem.</param>
/// <param name="State">Every control stands somewhere.</param>
/// <param name="Columns">The columns of open contacts that it closes, as indices into <see cref="OpenLugs.Columns"/>.</param>
/// <param name="Claims">What must be true there, each at its own dials, the plainest first.</param>
internal sealed record HarnessState(
    int Index,
    State State,
    ImmutableArray<int> Columns,
    ImmutableArray<Expectation> Claims
)
{
    /// <summary>True when a claim says which coils are heard: then few joinings are good, and all are listed.</summary>
    public bool IsListed { get; init; }

    /// <summary>True when a claim says that nothing sounds there with all dials at rest.</summary>
    public bool IsMeantSilent { get; init; }

    /// <summary>Controls that are off rest.</summary>
    public int Moved { get; init; }
}
