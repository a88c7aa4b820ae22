using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Expectations;

/// <summary>
/// The pots that a state joins: at the end of the travel a section of the track is no resistance, so that no form shows it, and
/// yet a coil may be heard through it.
/// </summary>
internal sealed class JoinedParts(Network network, State state)
{
    /// <summary>True when a section of a part's track is a join here, and the coil is not heard without the part.</summary>
    public bool IsHeardThrough(Coil coil, int part)
    {
        var own = network
            .Branches.Where(branch => network.Circuit.Elements[branch.Element].Part == part)
            .Select(branch => branch.Index)
            .ToList();
        var dials = network.DialsOf(state);
        return own.Exists(branch => dials.StateOf(network.Branches[branch]) == SectionState.Joined)
            && !JackSound.Of(network, state, BranchEdits.None.TakeOut(own)).Heard.Any(heard => heard.Coil == coil);
    }
}
