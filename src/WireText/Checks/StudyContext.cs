using WireText.Circuits;
using WireText.Electrical.Studies;

namespace WireText.Checks;

/// <summary>What checks may ask of a circuit that has an output jack.</summary>
public sealed class StudyContext(Circuit circuit, Study study, CancellationToken cancellation = default)
    : CheckContext(circuit, study, cancellation)
{
    public override Study Study { get; } = study;
}
