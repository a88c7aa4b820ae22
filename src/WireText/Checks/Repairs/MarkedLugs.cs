using WireText.Checks.Connections;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>The lugs that findings speak of.</summary>
internal sealed class MarkedLugs
{
    private readonly HashSet<int> marked;
    private readonly HashSet<int> near;
    private readonly HashSet<int> free;

    private MarkedLugs(HashSet<int> marked, HashSet<int> near, HashSet<int> free) =>
        (this.marked, this.near, this.free) = (marked, near, free);

    public static MarkedLugs Of(CheckContext context, IReadOnlyCollection<Finding> findings)
    {
        var (circuit, nets) = (context.Circuit, context.Circuit.Nets);
        var told = findings.SelectMany(finding => finding.Subjects).SelectMany(one => LugsOf(circuit, one)).ToHashSet();
        var ground = nets.OneNet[circuit.Outputs[0].Sleeve];
        var beside = told.Select(lug => nets.OneNet[lug])
            .Where(net => net != ground)
            .SelectMany(net => nets.Members[net]);
        var missing = circuit.Parts.SelectMany(part => new JointRules(context, part).Missing()).Select(one => one.Lug);
        var empty = circuit.Lugs.Select(lug => lug.Index).Where(lug => !context.IsJointed(lug)).Except(missing);
        return new MarkedLugs(told, [.. told, .. beside], [.. empty.Where(lug => !told.Contains(lug))]);
    }

    /// <summary>True for a lug that is marked, and for one on a net with it; of ground, which is nearly everywhere, only the marked.</summary>
    public bool AreNear(int lug) => near.Contains(lug);

    /// <summary>True for a lug that is empty, may stay so, and is not spoken of: no slip left a wire off it.</summary>
    public bool LeaveFree(int lug) => free.Contains(lug);

    private static IEnumerable<int> LugsOf(Circuit circuit, Subject subject) =>
        subject.Kind switch
        {
            SubjectKind.Lug => circuit.FindLug(subject.Name) is { } lug ? [lug.Index] : [],
            SubjectKind.Part => circuit.FindPart(subject.Name)?.Lugs ?? [],
            _ => circuit.Controls.FirstOrDefault(control =>
                subject.Name.StartsWith(control.Name + "=", StringComparison.OrdinalIgnoreCase)
            )
                is { } control
                ? circuit.Parts[control.Part].Lugs
                : [],
        };
}
