using System.Collections.Immutable;

namespace WireText.Electrical.Forms;

/// <summary>Whether a form that is there is the one that was claimed.</summary>
/// <remarks>
/// The order of coils, nesting of like joins and "all reversed" don't matter; a part that lies in series with a group lies in
/// series with each coil of it. Only claimed parts in series matter.
/// </remarks>
public static class FormEquality
{
    /// <param name="found">What is there; a bridge network equals no claim.</param>
    /// <param name="claimed">Built by <see cref="FormNode.InSeries"/> and <see cref="FormNode.InParallel"/>; a pickup is its coils in series.</param>
    public static bool Matches(HeardForm found, FormNode claimed)
    {
        var namesDummy = claimed.Coils.Any(coil => !coil.Coil.HearsStrings);
        return (namesDummy ? found.RootWithDummies : found.Root) is { } root
            && JoinAlike(root, claimed)
            && GoThroughClaimed(root, claimed);
    }

    /// <summary>Whether two forms join the same coils in the same way, whatever parts they are heard through.</summary>
    public static bool JoinAlike(FormNode a, FormNode b)
    {
        var (first, second) = (FormNodes.OnlyJoins(a), FormNodes.OnlyJoins(b));
        return HaveSameJoins(first, second) && HaveSameSigns(first, second);
    }

    private static bool HaveSameSigns(FormNode found, FormNode claimed) =>
        found.Coils.Zip(claimed.Coils, (a, b) => a.Sign * b.Sign).Where(product => product != 0).Distinct().Count()
        <= 1;

    private static bool HaveSameJoins(FormNode found, FormNode claimed) =>
        (found, claimed) switch
        {
            (CoilForm a, CoilForm b) => a.Coil == b.Coil,
            (SeriesForm a, SeriesForm b) => HaveSameJoins(a.Parts, b.Parts),
            (ParallelForm a, ParallelForm b) => HaveSameJoins(a.Parts, b.Parts),
            _ => false,
        };

    private static bool HaveSameJoins(ImmutableArray<FormNode> found, ImmutableArray<FormNode> claimed) =>
        found.Length == claimed.Length && found.Zip(claimed).All(pair => HaveSameJoins(pair.First, pair.Second));

    /// <summary>True when every coil is heard through the parts that are claimed of it. Both have the same coils.</summary>
    private static bool GoThroughClaimed(FormNode found, FormNode claimed)
    {
        var there = FormNodes.ThroughOf(found).ToDictionary(coil => coil.Coil, coil => coil.Through);
        return FormNodes
            .ThroughOf(claimed)
            .All(coil => coil.Through.All(part => there[coil.Coil].Any(other => part.Parts.All(other.Parts.Contains))));
    }
}
