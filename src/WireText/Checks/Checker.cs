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
        var allowances = new AllowanceIndex(circuit);
        var all = ImmutableArray.CreateBuilder<WeighedFinding>();
        foreach (var check in checks)
        {
            cancellation.ThrowIfCancellationRequested();
            all.AddRange(
                check
                    .Find(context)
                    .Select(finding => WeighedFinding.Of(allowances, check.Description, finding, settings))
            );
        }

        var (standing, waiting) = Shadows.Part(context, all.ToImmutable());
        var left = standing
            .Where(one => one.Allowance is null)
            .Select(one => one.Weighed)
            .Concat(AboutAllowances(context, allowances, checks, settings, all.ToImmutable()))
            .OfType<Finding>();
        var allowed = standing
            .Where(one => one is { Allowance: not null, Weighed: not null })
            .Select(one => new AllowedFinding(one.Weighed!, one.Allowance!));
        return new CheckReport([.. InOrder(left, finding => finding)], [.. InOrder(allowed, one => one.Finding)])
        {
            Waiting =
            [
                .. waiting
                    .Where(one => one is { Allowance: null, Weighed: not null })
                    .Select(one => one.Check.Id)
                    .Distinct(StringComparer.Ordinal),
            ],
        };
    }

    /// <summary>
    /// False as soon as one check finds a mistake that may not stay: what others find cannot take it back, for what silences it
    /// is a mistake too. Quicker than <see cref="Examine"/> where only this is asked.
    /// </summary>
    /// <param name="mayStay">Asked of each mistake; one that may stay silences nothing here.</param>
    public static bool FindsNothing(
        Circuit circuit,
        Study study,
        CheckRequest request,
        Func<Finding, bool> mayStay,
        CancellationToken cancellation = default
    )
    {
        var context = CheckContext.Of(circuit, study, cancellation);
        var allowances = new AllowanceIndex(circuit);
        return request.Checks.All(check =>
            check
                .Find(context)
                .Select(finding => WeighedFinding.Of(allowances, check.Description, finding, request.Settings))
                .All(one => !one.IsMistake || mayStay(one.Weighed!))
        );
    }

    private static IEnumerable<T> InOrder<T>(IEnumerable<T> items, Func<T, Finding> findingOf) =>
        items
            .OrderBy(item => findingOf(item).Location.Source.Path, StringComparer.Ordinal)
            .ThenBy(item => findingOf(item).Location.Span.Start);

    /// <summary>What is wrong with the <c>allow</c> lines themselves.</summary>
    private static IEnumerable<Finding?> AboutAllowances(
        CheckContext context,
        AllowanceIndex allowances,
        ImmutableArray<ICheck> checks,
        CheckSettings settings,
        ImmutableArray<WeighedFinding> all
    ) =>
        Allowances
            .FindUnknown(context.Circuit)
            .Concat(
                Allowances.FindUnused(
                    allowances,
                    WholeChecks(context, checks, settings),
                    [.. all.Select(one => one.Finding)]
                )
            )
            .Select(settings.Apply);

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
