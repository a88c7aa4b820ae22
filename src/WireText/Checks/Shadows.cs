using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Drops findings that only follow from another one: one cause, one finding.</summary>
internal static class Shadows
{
    /// <summary>What stands, in the order given. Only a finding that stands itself can drop a later one.</summary>
    public static IReadOnlyList<Finding> Remove(
        CheckContext context,
        ImmutableArray<(CheckDescription Check, Finding Finding)> found
    )
    {
        var standing = new List<(CheckDescription Check, Finding Finding, Scope Scope)>();
        foreach (var (check, finding) in found)
        {
            var scope = Scope.Of(context, finding);
            if (!standing.Exists(cause => cause.Check.Silences.Any(silence => Drops(silence, cause, check, scope))))
            {
                standing.Add((check, finding, scope));
            }
        }

        return [.. standing.Select(one => one.Finding)];
    }

    private static bool Drops(
        Silence silence,
        (CheckDescription Check, Finding Finding, Scope Scope) cause,
        CheckDescription check,
        Scope scope
    ) =>
        check.Id != cause.Check.Id
        && silence.Names(check.Id)
        && (!silence.OnlyByErrors || cause.Finding.Severity == Severity.Error)
        && silence.Reach switch
        {
            SilenceReach.Anywhere => true,
            SilenceReach.SamePart => cause.Scope.Parts.Overlaps(scope.Parts),
            _ => cause.Scope.Parts.Overlaps(scope.Parts) || cause.Scope.Nets.Overlaps(scope.Nets),
        };

    /// <summary>The parts and the nets that a finding marks; the output's own nets belong to everything and are left out.</summary>
    private sealed record Scope(HashSet<int> Parts, HashSet<int> Nets)
    {
        public static Scope Of(CheckContext context, Finding finding)
        {
            var scope = new Scope([], []);
            foreach (var subject in finding.Subjects)
            {
                scope.Add(context.Circuit, subject);
            }

            if (context.Network is { } network)
            {
                scope.Nets.Remove(network.Tip);
                scope.Nets.Remove(network.Sleeve);
            }

            return scope;
        }

        private void Add(Circuit circuit, Subject subject)
        {
            if (subject.Kind == SubjectKind.Lug && circuit.FindLug(subject.Name) is { } lug)
            {
                Parts.Add(lug.Part);
                Nets.Add(circuit.Nets.OneNet[lug.Index]);
            }
            else if (subject.Kind == SubjectKind.Part && circuit.FindPart(subject.Name) is { } part)
            {
                Parts.Add(part.Index);
                Nets.UnionWith(part.Lugs.Select(index => circuit.Nets.OneNet[index]));
            }
            else if (subject.Kind == SubjectKind.Position)
            {
                var name = subject.Name.Split('=')[0];
                Parts.UnionWith(
                    circuit.Controls.Where(control => control.Name == name).Select(control => control.Part)
                );
            }
        }
    }
}
