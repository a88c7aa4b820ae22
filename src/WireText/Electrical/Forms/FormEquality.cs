namespace WireText.Electrical.Forms;

/// <summary>Whether a form that is there is the one that was claimed.</summary>
/// <remarks>The order of coils, nesting of like joins and "all reversed" don't matter; only claimed parts in series do.</remarks>
public static class FormEquality
{
    /// <param name="found">What is there; a bridge network equals no claim.</param>
    /// <param name="claimed">Built by <see cref="FormNode.InSeries"/> and <see cref="FormNode.InParallel"/>; a pickup is its coils in series.</param>
    public static bool Matches(HeardForm found, FormNode claimed)
    {
        var namesDummy = claimed.Coils.Any(coil => !coil.Coil.HearsStrings);
        return (namesDummy ? found.RootWithDummies : found.Root) is { } root
            && AreEqual(FormNodes.Bare(root), FormNodes.Bare(claimed));
    }

    /// <summary>Whether two claimed forms join the same coils in the same way, whatever parts they are heard through.</summary>
    public static bool JoinAlike(FormNode a, FormNode b) => AreEqual(FormNodes.OnlyJoins(a), FormNodes.OnlyJoins(b));

    private static bool AreEqual(FormNode found, FormNode claimed)
    {
        if (!HaveSameJoins(found, claimed))
        {
            return false;
        }

        var signs = found
            .Coils.Zip(claimed.Coils, (a, b) => a.Sign * b.Sign)
            .Where(product => product != 0)
            .Distinct()
            .Count();
        return signs <= 1;
    }

    private static bool HaveSameJoins(FormNode found, FormNode claimed) =>
        claimed.Through.All(part => found.Through.Any(other => part.Parts.All(other.Parts.Contains)))
        && (found, claimed) switch
        {
            (CoilForm a, CoilForm b) => a.Coil == b.Coil,
            (SeriesForm a, SeriesForm b) => a.Parts.Length == b.Parts.Length
                && a.Parts.Zip(b.Parts).All(pair => HaveSameJoins(pair.First, pair.Second)),
            (ParallelForm a, ParallelForm b) => a.Parts.Length == b.Parts.Length
                && a.Parts.Zip(b.Parts).All(pair => HaveSameJoins(pair.First, pair.Second)),
            _ => false,
        };
}
