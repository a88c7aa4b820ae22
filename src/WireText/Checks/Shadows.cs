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
        var causes = new List<Cause>();
        var standing = ImmutableArray.CreateBuilder<WeighedFinding>();
        var waiting = ImmutableArray.CreateBuilder<WeighedFinding>();
        foreach (var one in found)
        {
            var scope = Scope.Of(context, one.Finding);
            if (causes.Exists(cause => cause.Drops(one, scope)))
            {
                waiting.Add(one);
                continue;
            }

            standing.Add(one);
            if (one.IsMistake)
            {
                causes.Add(new Cause(one, scope));
            }
        }

        return (standing.ToImmutable(), waiting.ToImmutable());
    }

    /// <summary>A mistake that stands, and what it marks.</summary>
    private sealed record Cause(WeighedFinding One, Scope Scope)
    {
        public bool Drops(WeighedFinding other, Scope scope) =>
            other.Check.Id != One.Check.Id
            && (
                One.Severity == Severity.Error
                || other is not { Severity: Severity.Error, Check.YieldsToErrorsAlone: true }
            )
            && One.Check.Silences.Any(silence => Drops(silence, other.Check, scope));

        private bool Drops(Silence silence, CheckDescription check, Scope scope) =>
            silence.Names(check.Id)
            && (!silence.OnlyByErrors || One.Severity == Severity.Error)
            && silence.Reach switch
            {
                SilenceReach.Anywhere => true,
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
