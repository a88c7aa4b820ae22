using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Parts;

namespace WireText.Electrical.Studies;

/// <summary>
/// Whether two circuits are the same to the electrical stage: the same lugs, elements, controls, nets and surroundings under
/// the same names. Places, notes, colours, claims and where lines are written may differ.
/// </summary>
public static class ElectricalTwins
{
    public static bool Are(Circuit one, Circuit other) =>
        one.Surroundings == other.Surroundings
        && one.Outputs.SequenceEqual(other.Outputs)
        && one.Dials.SequenceEqual(other.Dials)
        && one.Elements.SequenceEqual(other.Elements)
        && AreSame(one.Nets.OneNet, other.Nets.OneNet)
        && AreSame(one.Nets.Soldered, other.Nets.Soldered)
        && AreAll(one.Lugs, other.Lugs, AreSame)
        && AreAll(one.Controls, other.Controls, AreSame)
        && AreAll(one.Parts, other.Parts, AreSame);

    /// <summary>
    /// True when what was solved for one holds for the other: the same elements with the same values, on other nets perhaps.
    /// </summary>
    public static bool ShareValues(Circuit one, Circuit other) =>
        one.Surroundings == other.Surroundings && one.Elements.SequenceEqual(other.Elements);

    private static bool AreSame(Part one, Part other) =>
        one.Name == other.Name
        && one.Kind == other.Kind
        && AreSame(one.Lugs, other.Lugs)
        && AreSame(one.Elements, other.Elements)
        && AreSame(one.Controls, other.Controls)
        && AreSame(one.Dials, other.Dials);

    private static bool AreSame(Lug one, Lug other) =>
        one.Part == other.Part && one.Name == other.Name && AreSame(one.Terminal, other.Terminal);

    /// <summary>Where a terminal sits on the face is nothing electrical.</summary>
    private static bool AreSame(Terminal one, Terminal other) =>
        one.Kind == other.Kind && one.IsMetal == other.IsMetal && one.IsSpare == other.IsSpare;

    private static bool AreSame(Control one, Control other) =>
        one.Name == other.Name
        && one.Part == other.Part
        && one.Rest == other.Rest
        && one.Between == other.Between
        && one.IsEndless == other.IsEndless
        && one.IsPlug == other.IsPlug
        && AreAll(one.Positions, other.Positions, AreSame);

    private static bool AreSame(Position one, Position other) =>
        one.Name == other.Name && AreAll(one.Closed, other.Closed, AreSame);

    private static bool AreSame(ImmutableArray<int> one, ImmutableArray<int> other) =>
        one == other || one.AsSpan().SequenceEqual(other.AsSpan());

    private static bool AreAll<T>(ImmutableArray<T> one, ImmutableArray<T> other, Func<T, T, bool> areSame)
    {
        if (one.Length != other.Length)
        {
            return false;
        }

        for (var i = 0; i < one.Length; i++)
        {
            if (!areSame(one[i], other[i]))
            {
                return false;
            }
        }

        return true;
    }
}
