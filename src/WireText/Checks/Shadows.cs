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
        var standing = new List<Cause>();
        foreach (var (check, finding) in found)
        {
            var scope = Scope.Of(context, finding);
            if (!standing.Exists(cause => cause.Drops(check, scope)))
            {
                var isAllowed = Allowances.Of(context.Circuit, finding) is not null;
                standing.Add(new Cause(check, finding, scope, isAllowed));
            }
        }

        return [.. standing.Select(one => one.Finding)];
    }

    /// <summary>A finding that stands. A note, or what is meant, explains what is beside it and nothing elsewhere.</summary>
    /// <param name="IsAllowed">True when an <c>allow</c> line says that it is meant.</param>
    private sealed record Cause(CheckDescription Check, Finding Finding, Scope Scope, bool IsAllowed)
    {
        public bool Drops(CheckDescription check, Scope scope) =>
            check.Id != Check.Id && Check.Silences.Any(silence => Drops(silence, check, scope));

        private bool Drops(Silence silence, CheckDescription check, Scope scope) =>
            silence.Names(check.Id)
            && (!silence.OnlyByErrors || Finding.Severity == Severity.Error)
            && silence.Reach switch
            {
                SilenceReach.Anywhere => !IsAllowed && Finding.Severity >= Severity.Warning,
                SilenceReach.SamePart => Scope.Parts.Overlaps(scope.Parts),
                _ => Scope.Parts.Overlaps(scope.Parts) || Scope.Nets.Overlaps(scope.Nets),
            };
    }

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

            if (context.Study?.Network is { } network)
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
