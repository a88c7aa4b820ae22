using System.Collections.Immutable;
using WireText.Checks.Intent;
using WireText.Circuits;
using WireText.Electrical.Studies;

namespace WireText.Checks;

/// <summary>What checks may ask of a circuit that has an output jack.</summary>
public sealed class StudyContext : CheckContext
{
    private readonly Lazy<ImmutableArray<StudyContext>> jacks;
    private readonly Lazy<ImmutableArray<DoubtfulClaim>> doubtful;

    public StudyContext(Circuit circuit, Study study, CancellationToken cancellation = default)
        : base(circuit, study, cancellation)
    {
        Study = study;
        doubtful = new(() =>
            [.. ClearExpectations.Select(one => DoubtfulClaim.Of(study, one, cancellation)).OfType<DoubtfulClaim>()]
        );
        jacks = new(() =>
            [
                this,
                .. study
                    .Jacks.Skip(1)
                    .Select(jack => new StudyContext(circuit.SeenFrom(jack.Circuit.Outputs[0]), jack, cancellation)),
            ]
        );
    }

    public override Study Study { get; }

    /// <summary>The lines that turn on a value which nobody knows, in the order of the text.</summary>
    public ImmutableArray<DoubtfulClaim> DoubtfulClaims => doubtful.Value;

    /// <summary>What is expected and can be proved or refuted.</summary>
    public IEnumerable<Expectation> JudgedExpectations =>
        ClearExpectations.Where(one => !DoubtfulClaims.Any(claim => claim.Expectation == one));

    /// <summary>This context and that of each other jack in use, in the order of the jacks.</summary>
    public ImmutableArray<StudyContext> Jacks => jacks.Value;

    /// <summary>The name of the jack that this looks from.</summary>
    public string JackName => Circuit.Parts[Circuit.Outputs[0].Part].Name;
}
