using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>The <c>allow</c> lines of a circuit by what they allow, so that no finding is held against each line.</summary>
internal sealed class AllowanceIndex
{
    private readonly Circuit circuit;

    /// <summary>By check and place, the first line that says so; without a place it allows everywhere.</summary>
    private readonly Dictionary<Key, int> first = [];

    public AllowanceIndex(Circuit circuit)
    {
        this.circuit = circuit;
        for (var index = 0; index < circuit.Allowances.Length; index++)
        {
            var allowance = circuit.Allowances[index];
            first.TryAdd(Key.Of(allowance.Check, allowance.Lug), index);
        }
    }

    /// <summary>The first line that allows a finding, or null.</summary>
    public Allowance? Of(Finding finding)
    {
        int? earliest = null;
        foreach (var key in first.Count == 0 ? [] : KeysOf(finding))
        {
            if (first.TryGetValue(key, out var index) && (earliest is null || index < earliest))
            {
                earliest = index;
            }
        }

        return earliest is { } found ? circuit.Allowances[found] : null;
    }

    /// <summary>The lines that allow none of the findings, in order.</summary>
    public IEnumerable<Allowance> Unused(IEnumerable<Finding> findings)
    {
        if (first.Count == 0)
        {
            return [];
        }

        var used = findings.SelectMany(KeysOf).ToHashSet();
        return circuit.Allowances.Where(allowance => !used.Contains(Key.Of(allowance.Check, allowance.Lug)));
    }

    /// <summary>What a line may say to allow a finding: the check alone, or with a lug, a part or a position that it marks.</summary>
    private IEnumerable<Key> KeysOf(Finding finding)
    {
        yield return Key.Of(finding.Id, null);
        foreach (var subject in finding.Subjects)
        {
            yield return Key.Of(finding.Id, subject.Name);
            yield return Key.Of(finding.Id, PartOf(subject));
        }
    }

    private string PartOf(Subject subject) =>
        subject.Kind switch
        {
            SubjectKind.Lug => circuit.FindLug(subject.Name) is { } lug ? circuit.PartOf(lug).Name : subject.Name,
            _ => subject.Name.Split('=')[0],
        };

    /// <summary>Names in one case: upper and lower are alike.</summary>
    private readonly record struct Key(string Check, string? Place)
    {
        public static Key Of(string check, string? place) => new(check.ToUpperInvariant(), place?.ToUpperInvariant());
    }
}
