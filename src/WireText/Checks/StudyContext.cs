using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Studies;

namespace WireText.Checks;

/// <summary>What checks may ask of a circuit that has an output jack.</summary>
public sealed class StudyContext : CheckContext
{
    private readonly Lazy<ImmutableArray<StudyContext>> jacks;

    public StudyContext(Circuit circuit, Study study, CancellationToken cancellation = default)
        : base(circuit, study, cancellation)
    {
        Study = study;
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

    /// <summary>This context and that of each other jack in use, in the order of the jacks.</summary>
    public ImmutableArray<StudyContext> Jacks => jacks.Value;

    /// <summary>The name of the jack that this looks from.</summary>
    public string JackName => Circuit.Parts[Circuit.Outputs[0].Part].Name;
}
