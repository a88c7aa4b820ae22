using System.Collections.Immutable;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Runs checks over a circuit, so that one cause gives one finding and what is meant gives none.</summary>
public static class Checker
{
    /// <summary>What stands of all checks. Remarks that are no findings have <see cref="Severity.Info"/>.</summary>
    /// <param name="withNotes">Also what is harmless and told only when asked.</param>
    public static ImmutableArray<Finding> Run(Circuit circuit, bool withNotes = false) =>
        Examine(circuit, withNotes).Findings;

    /// <summary>As <see cref="Run"/>, with what the author allowed and why.</summary>
    public static CheckReport Examine(Circuit circuit, bool withNotes = false) =>
        Examine(circuit, withNotes, CheckSettings.Standard);

    /// <summary>As <see cref="Examine(Circuit, bool)"/>, weighed as a shop wants it.</summary>
    public static CheckReport Examine(Circuit circuit, bool withNotes, CheckSettings settings) =>
        RepairAdvice.AddTo(
            circuit,
            Judge(circuit, withNotes ? CheckList.All : CheckList.Usual, settings),
            edited => Judge(edited, CheckList.Usual, settings)
        );

    /// <summary>As <see cref="Examine(Circuit, bool)"/>, but no repair is looked for: one look at a circuit.</summary>
    public static CheckReport Judge(Circuit circuit) => Judge(circuit, CheckList.Usual);

    /// <summary>As <see cref="Judge(Circuit)"/>, with some of the checks.</summary>
    /// <param name="checks">In an order in which a check comes before those that it silences.</param>
    public static CheckReport Judge(Circuit circuit, ImmutableArray<ICheck> checks) =>
        Judge(circuit, checks, CheckSettings.Standard);

    private static CheckReport Judge(Circuit circuit, ImmutableArray<ICheck> checks, CheckSettings settings)
    {
        var context = new CheckContext(circuit);
        ImmutableArray<(CheckDescription Check, Finding Finding)> all =
        [
            .. checks.SelectMany(check => check.Find(context).Select(finding => (check.Description, finding))),
        ];
        var found = Shadows
            .Remove(context, all)
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
        context.Outcomes is null
            ? []
            : [.. checks.Select(check => check.Description.Id).Where(id => !settings.IsOff(id))];
}
