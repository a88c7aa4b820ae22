using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Runs checks over a circuit, so that one cause gives one finding and what is meant gives none.</summary>
public static class Checker
{
    /// <summary>What stands of the checks, and what the author allowed and why. No repair is looked for.</summary>
    /// <param name="study">Of the circuit or a twin of it; null when it has no output jack.</param>
    public static CheckReport Examine(
        Circuit circuit,
        Study? study,
        CheckRequest request,
        CancellationToken cancellation = default
    )
    {
        var (checks, settings) = (request.Checks, request.Settings);
        var context = CheckContext.Of(circuit, study, cancellation);
        var all = ImmutableArray.CreateBuilder<(CheckDescription Check, Finding Finding)>();
        foreach (var check in checks)
        {
            cancellation.ThrowIfCancellationRequested();
            all.AddRange(check.Find(context).Select(finding => (check.Description, finding)));
        }

        var found = Shadows
            .Remove(context, all.ToImmutable())
            .Concat(Allowances.FindUnknown(circuit))
            .Concat(
                Allowances.FindUnused(
                    circuit,
                    WholeChecks(context, checks, settings),
                    [.. all.Select(one => one.Finding)]
                )
            )
            .ToList();
        var allowed = ImmutableArray.CreateBuilder<AllowedFinding>();
        var left = ImmutableArray.CreateBuilder<Finding>();
        foreach (
            var finding in found
                .OrderBy(finding => finding.Location.Source.Path, StringComparer.Ordinal)
                .ThenBy(finding => finding.Location.Span.Start)
        )
        {
            // What is not wanted is left out at the end, as what is allowed: its shadows would be worse than itself.
            if (settings.Apply(finding) is not { } weighed)
            {
                continue;
            }

            if (Allowances.Of(circuit, finding) is { } allowance)
            {
                allowed.Add(new AllowedFinding(weighed, allowance));
            }
            else
            {
                left.Add(weighed);
            }
        }

        return new CheckReport(left.ToImmutable(), allowed.ToImmutable());
    }

    /// <summary>The checks that could look at everything: without a jack, or with too many situations, most see a part at best.</summary>
    private static IReadOnlyCollection<string> WholeChecks(
        CheckContext context,
        ImmutableArray<ICheck> checks,
        CheckSettings settings
    ) =>
        context.Study?.Outcomes is null
            ? []
            : [.. checks.Select(check => check.Description.Id).Where(id => !settings.IsOff(id))];
}
