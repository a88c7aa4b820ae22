using System.Collections.Immutable;

namespace WireText.Electrical.BenchPlans;

/// <summary>A fault and what it makes the meter show, reading by reading.</summary>
internal sealed record ShownFault(Fault Fault, ImmutableArray<MeterBand> Bands)
{
    /// <summary>True when no reading tells it for certain from an instrument with those bands.</summary>
    public bool MayBe(ImmutableArray<MeterBand> others)
    {
        for (var reading = 0; reading < Bands.Length; reading++)
        {
            if (!Bands[reading].Meets(others[reading]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Faults that cannot be told apart, directly or by way of others, each group in order and by its first.</summary>
    public static IEnumerable<List<ShownFault>> Groups(IReadOnlyList<ShownFault> faults)
    {
        var isTaken = new bool[faults.Count];
        for (var first = 0; first < faults.Count; first++)
        {
            if (!isTaken[first])
            {
                isTaken[first] = true;
                yield return [.. From(faults, first, isTaken).Order().Select(fault => faults[fault])];
            }
        }
    }

    private static List<int> From(IReadOnlyList<ShownFault> faults, int first, bool[] isTaken)
    {
        List<int> group = [first];
        for (var next = 0; next < group.Count; next++)
        {
            for (var other = first + 1; other < faults.Count; other++)
            {
                if (!isTaken[other] && faults[group[next]].MayBe(faults[other].Bands))
                {
                    isTaken[other] = true;
                    group.Add(other);
                }
            }
        }

        return group;
    }
}
