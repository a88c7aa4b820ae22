using System.Collections.Immutable;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Situations;

/// <summary>The outcome of every situation at two dial settings: at rest, and with all dials at 5.</summary>
/// <remarks>
/// Findings about positions look at the middle as well, so that a pot wired backwards does not make every position look
/// shorted.
/// </remarks>
public sealed class SituationOutcomes
{
    /// <summary>The travel that is called the middle.</summary>
    public const double Middle = 5;

    public SituationOutcomes(Network network, SituationTree tree, CancellationToken cancellation = default)
    {
        Situations = tree.Situations;
        var atRest = ImmutableArray.CreateBuilder<StructuralOutcome>(Situations.Length);
        var atTheMiddle = ImmutableArray.CreateBuilder<StructuralOutcome>(Situations.Length);
        foreach (var situation in Situations)
        {
            cancellation.ThrowIfCancellationRequested();
            atRest.Add(StructuralOutcomes.Of(network, situation.State));
            atTheMiddle.Add(StructuralOutcomes.Of(network, situation.State.AtAll(Middle)));
        }

        AtRest = atRest.MoveToImmutable();
        AtTheMiddle = atTheMiddle.MoveToImmutable();
    }

    public ImmutableArray<Situation> Situations { get; }

    /// <summary>For each situation, its outcome with the dials where they rest.</summary>
    public ImmutableArray<StructuralOutcome> AtRest { get; }

    /// <summary>For each situation, its outcome with all dials at 5.</summary>
    public ImmutableArray<StructuralOutcome> AtTheMiddle { get; }

    /// <summary>True when some situation that a control's position allows sounds at the middle.</summary>
    public bool SoundsSomewhere(int control, int position)
    {
        for (var i = 0; i < Situations.Length; i++)
        {
            if (AtTheMiddle[i] == StructuralOutcome.Sounding && Situations[i].State.Allows(control, position))
            {
                return true;
            }
        }

        return false;
    }
}
