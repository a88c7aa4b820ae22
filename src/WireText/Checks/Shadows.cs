using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Drops findings that only follow from another one: one cause, one finding.</summary>
internal static class Shadows
{
    /// <summary>What stands and what waits for it, each in the order given. Only a mistake that stands itself can drop a later finding.</summary>
    public static (ImmutableArray<WeighedFinding> Standing, ImmutableArray<WeighedFinding> Waiting) Part(
        CheckContext context,
        ImmutableArray<WeighedFinding> found
    )
    {
        var causes = new Dictionary<string, Causes>(StringComparer.Ordinal);
        var standing = ImmutableArray.CreateBuilder<WeighedFinding>();
        var waiting = ImmutableArray.CreateBuilder<WeighedFinding>();
        foreach (var one in found)
        {
            var scope = Scope.Of(context, one.Finding);
            if (causes.Values.Any(cause => cause.Drop(one, scope)))
            {
                waiting.Add(one);
                continue;
            }

            standing.Add(one);
            if (one.IsMistake)
            {
                if (!causes.TryGetValue(one.Check.Id, out var same))
                {
                    causes.Add(one.Check.Id, same = new Causes(one.Check));
                }

                same.Add(one, scope);
            }
        }

        return (standing.ToImmutable(), waiting.ToImmutable());
    }

    /// <summary>The mistakes of one check that stand, and what they mark between them.</summary>
    private sealed class Causes(CheckDescription check)
    {
        private readonly Scope all = new([], []);
        private readonly Scope ofErrors = new([], []);
        private bool hasErrors;

        public void Add(WeighedFinding one, Scope scope)
        {
            all.UnionWith(scope);
            if (one.Severity == Severity.Error)
            {
                hasErrors = true;
                ofErrors.UnionWith(scope);
            }
        }

        /// <summary>True when one of them drops a finding.</summary>
        public bool Drop(WeighedFinding other, Scope scope) =>
            other.Check.Id != check.Id
            && check.Silences.Any(silence => silence.Names(other.Check.Id) && Drop(silence, other, scope));

        private bool Drop(Silence silence, WeighedFinding other, Scope scope)
        {
            var byErrorsAlone =
                silence.OnlyByErrors || other is { Severity: Severity.Error, Check.YieldsToErrorsAlone: true };
            if (byErrorsAlone && !hasErrors)
            {
                return false;
            }

            var marked = byErrorsAlone ? ofErrors : all;
            return silence.Reach switch
            {
                SilenceReach.Anywhere => true,
                SilenceReach.SamePart => marked.Parts.Overlaps(scope.Parts),
                _ => marked.Parts.Overlaps(scope.Parts) || marked.Nets.Overlaps(scope.Nets),
            };
        }
    }

    /// <summary>The parts and the nets that a finding marks; the nets of the output jacks belong to everything and are left out.</summary>
    private sealed record Scope(HashSet<int> Parts, HashSet<int> Nets)
    {
        public static Scope Of(CheckContext context, Finding finding)
        {
            var scope = new Scope([], []);
            foreach (var subject in finding.Subjects)
            {
                scope.Add(context.Circuit, subject);
            }

            foreach (var jack in context.Study?.Jacks ?? [])
            {
                scope.Nets.Remove(jack.Network.Tip);
                scope.Nets.Remove(jack.Network.Sleeve);
            }

            return scope;
        }

        public void UnionWith(Scope other)
        {
            Parts.UnionWith(other.Parts);
            Nets.UnionWith(other.Nets);
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
