using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks.Repairs;

/// <summary>The leads of a part on other lugs.</summary>
public sealed record HangPart(ImmutableArray<(WireEnd End, int Lug)> Leads) : CircuitEdit
{
    public override ImmutableArray<int> LugsIn(Circuit circuit) =>
        [.. Leads.SelectMany(lead => new[] { lead.End.LugIn(circuit), lead.Lug })];

    public override Circuit Apply(Circuit circuit) => circuit.WithEnds([.. Leads]);
}
