using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants;

/// <summary>Where a slip was made: the lugs that its wires end on or ended on, and what these are joined with.</summary>
internal sealed class FaultPlace
{
    private readonly Circuit circuit;
    private readonly HashSet<int> lugs;

    public FaultPlace(Circuit right, Circuit mutant, CircuitEdit slip)
    {
        circuit = right;
        var touched = right
            .Wires.Where(wire => wire != mutant.Wires[wire.Index])
            .SelectMany(wire => new[] { wire.From, wire.To })
            .Concat(slip.LugsIn(right))
            .Where(lug => lug >= 0)
            .ToHashSet();
        lugs = [.. touched, .. touched.SelectMany(lug => NetOf(right, lug).Concat(NetOf(mutant, lug)))];
    }

    /// <summary>
    /// True when a finding marks such a lug, a part that has one, or a position of a control that has one; or when its words
    /// name such a lug or part.
    /// </summary>
    public bool IsNamedBy(Finding finding) => finding.Subjects.Any(IsAt) || lugs.Any(lug => IsIn(finding, lug));

    private bool IsIn(Finding finding, int lug)
    {
        var words = $"{finding.Message} {finding.Help}";
        return new[] { circuit.NameOf(lug), circuit.PartOf(circuit.Lugs[lug]).Name }.Any(name =>
            words.Contains($"'{name}'", StringComparison.Ordinal)
        );
    }

    private bool IsAt(Subject subject) =>
        subject.Kind switch
        {
            SubjectKind.Lug => circuit.FindLug(subject.Name) is { } lug && lugs.Contains(lug.Index),
            SubjectKind.Part => circuit.FindPart(subject.Name) is { } part && part.Lugs.Any(lugs.Contains),
            _ => circuit.Controls.FirstOrDefault(control =>
                subject.Name.StartsWith(control.Name + "=", StringComparison.Ordinal)
            )
                is { } control
                && circuit.Parts[control.Part].Lugs.Any(lugs.Contains),
        };

    /// <summary>The lugs of its net; none for ground, which is everywhere.</summary>
    private static IEnumerable<int> NetOf(Circuit circuit, int lug) =>
        circuit.Nets.SameNet(lug, circuit.Outputs[0].Sleeve) ? [] : circuit.Nets.Members[circuit.Nets.OneNet[lug]];
}
