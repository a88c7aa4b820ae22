using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Matches findings with the <c>allow</c> lines of a circuit.</summary>
internal static class Allowances
{
    /// <summary>A finding for each line that allows what no check finds.</summary>
    public static IEnumerable<Finding> FindUnknown(Circuit circuit)
    {
        var known = CheckList.All.Select(check => check.Description.Id).ToList();
        return circuit
            .Allowances.Where(allowance => !known.Exists(id => IsId(allowance, id)))
            .Select(allowance => Unknown(allowance, known));
    }

    /// <summary>A finding for each line that allows what a check did not find.</summary>
    /// <param name="run">The ids of the checks that looked at the whole circuit.</param>
    /// <param name="found">All they found, with what is only the shadow of something else: mended, that may need the line.</param>
    public static IEnumerable<Finding> FindUnused(
        AllowanceIndex allowances,
        IReadOnlyCollection<string> run,
        IReadOnlyCollection<Finding> found
    ) =>
        allowances
            .Unused(found)
            .Where(allowance => run.Any(id => IsId(allowance, id)))
            .Select(allowance =>
                AllowanceFindings
                    .AllowUnused.At(
                        allowance.DeclaredAt,
                        $"nothing is found that this allows: no '{allowance.Check.ToLowerInvariant()}'"
                            + (allowance.Lug is null ? "" : $" at '{allowance.Lug}'"),
                        "take this line out: it would hide the next one"
                    )
                    .MendedBy(TextEdit.WithoutStatement(allowance.DeclaredAt))
            );

    private static Finding Unknown(Allowance allowance, List<string> known)
    {
        if (FindingCatalogue.Find(allowance.Check) is { } reading)
        {
            return Report($"'{reading.Id}' cannot be allowed: the line itself must change", "take this line out");
        }

        var near = DidYouMean.Nearest(allowance.Check, known);
        return Report(
            $"no check is called '{allowance.Check}'",
            near is null ? "write the name that stands in brackets after the finding" : $"did you mean '{near}'?",
            TextEdit.Meant(allowance.DeclaredAt, near, known)
        );

        Finding Report(string message, string help, TextEdit? edit = null) =>
            AllowanceFindings.UnknownCheck.At(allowance.DeclaredAt, message, help).MendedBy(edit);
    }

    private static bool IsId(Allowance allowance, string id) =>
        string.Equals(allowance.Check, id, StringComparison.OrdinalIgnoreCase);
}
