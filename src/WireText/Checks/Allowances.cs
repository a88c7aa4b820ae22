using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>Matches findings with the <c>allow</c> lines of a circuit.</summary>
internal static class Allowances
{
    private const string UnknownCheck = "unknown-check";

    /// <summary>The first line that allows a finding, or null.</summary>
    public static Allowance? Of(Circuit circuit, Finding finding) =>
        circuit.Allowances.FirstOrDefault(allowance =>
            IsId(allowance, finding.Id)
            && (allowance.Lug is null || finding.Subjects.Any(subject => IsAt(circuit, allowance.Lug, subject)))
        );

    /// <summary>A finding for each line that allows what no check finds.</summary>
    public static IEnumerable<Finding> FindUnknown(Circuit circuit)
    {
        var known = CheckList.All.Select(check => check.Description.Id).ToList();
        return circuit
            .Allowances.Where(allowance => !known.Exists(id => IsId(allowance, id)))
            .Select(allowance => Unknown(allowance, known));
    }

    private static Finding Unknown(Allowance allowance, List<string> known)
    {
        if (FindingCatalogue.Find(allowance.Check) is { } reading)
        {
            return Report($"'{reading.Id}' cannot be allowed: the line itself must change", "take this line out");
        }

        var near = DidYouMean.Nearest(allowance.Check, known);
        return Report(
            $"no check is called '{allowance.Check}'",
            near is null ? "write the name that stands in brackets after the finding" : $"did you mean '{near}'?"
        );

        Finding Report(string message, string help) =>
            new(UnknownCheck, Severity.Error, allowance.DeclaredAt, message, help);
    }

    private static bool IsId(Allowance allowance, string id) =>
        string.Equals(allowance.Check, id, StringComparison.OrdinalIgnoreCase);

    private static bool IsAt(Circuit circuit, string name, Subject subject)
    {
        var part = subject.Kind switch
        {
            SubjectKind.Lug => circuit.FindLug(subject.Name) is { } lug ? circuit.PartOf(lug).Name : subject.Name,
            _ => subject.Name.Split('=')[0],
        };
        return string.Equals(name, subject.Name, StringComparison.OrdinalIgnoreCase)
            || string.Equals(name, part, StringComparison.OrdinalIgnoreCase);
    }
}
