using WireText.Circuits;
using WireText.Text;

namespace WireText.Comparing;

/// <summary>Which part of one circuit is which of another. A name that stays tells it; of a part that was renamed its wires do.</summary>
internal sealed class PartMatching
{
    /// <summary>What two parts must have in common to be one: an end of a wire each, of which both ends are known.</summary>
    private const int PerWire = 2;

    /// <summary>Being alike tells as much as a wire and a half.</summary>
    private const int ForBeingAlike = 3;

    private readonly Circuit before;
    private readonly Circuit after;
    private readonly int[] afterOf;
    private readonly int[] beforeOf;

    private PartMatching(Circuit before, Circuit after)
    {
        (this.before, this.after) = (before, after);
        afterOf = [.. before.Parts.Select(_ => -1)];
        beforeOf = [.. after.Parts.Select(_ => -1)];
    }

    public static PartMatching Of(Circuit before, Circuit after)
    {
        var matching = new PartMatching(before, after);
        matching.MatchNames();
        if (matching.LeftBefore().Any() && matching.LeftAfter().Any())
        {
            matching.MatchShapes();
            matching.MatchNeighbours();
        }

        return matching;
    }

    /// <summary>The part of the later circuit that a part of the earlier is; null when it is there no more.</summary>
    public Part? AfterOf(Part part) => afterOf[part.Index] is >= 0 and var index ? after.Parts[index] : null;

    /// <summary>The part of the earlier circuit that a part of the later was; null when it is new.</summary>
    public Part? BeforeOf(Part part) => beforeOf[part.Index] is >= 0 and var index ? before.Parts[index] : null;

    /// <summary>The lug of the later circuit; null where the part, or a lug of that name, is there no more. Works on -1.</summary>
    public int? AfterOf(int lug)
    {
        if (lug < 0)
        {
            return lug;
        }

        var own = before.Lugs[lug];
        return AfterOf(before.PartOf(own)) is { } part
            ? part
                .Lugs.Cast<int?>()
                .FirstOrDefault(other => Naming.Alike(after.Lugs[other!.Value].Terminal.Name, own.Terminal.Name))
            : null;
    }

    private void MatchNames()
    {
        foreach (var part in before.Parts)
        {
            if (after.FindPart(part.Name) is { } other && Naming.Alike(part.Kind, other.Kind))
            {
                Match(part, other);
            }
        }
    }

    /// <summary>Parts that are left and that only one of each circuit is like, seen with all that is soldered to it, and to that in turn.</summary>
    private void MatchShapes()
    {
        var (first, second) = (Shapes.Of(before, LeftBefore()), Shapes.Of(after, LeftAfter()));
        foreach (var (shape, parts) in first)
        {
            if (second.TryGetValue(shape, out var others) && others.Count == parts.Count)
            {
                Match(before.Parts[parts[0]], after.Parts[others[0]]);
                if (parts.Count > 1)
                {
                    // Twins: with one of them known, its neighbours tell the others apart.
                    MatchNeighbours();
                }
            }
        }
    }

    /// <summary>The two that have most in common, again and again.</summary>
    private void MatchNeighbours()
    {
        while (Best() is { } best)
        {
            Match(before.Parts[best.One], after.Parts[best.Other]);
        }
    }

    private (int One, int Other)? Best() =>
        (
            from one in LeftBefore()
            from other in LeftAfter()
            where Naming.Alike(before.Parts[one].Kind, after.Parts[other].Kind)
            let score = Score(before.Parts[one], after.Parts[other])
            where score > ForBeingAlike
            orderby score descending, one, other
            select ((int, int)?)(one, other)
        ).FirstOrDefault();

    private int Score(Part one, Part other)
    {
        var theirs = KnownEnds(after, other, lug => lug).ToList();
        var inCommon = 0;
        foreach (var end in KnownEnds(before, one, lug => AfterOf(lug) ?? -1))
        {
            inCommon += theirs.Remove(end) ? PerWire : 0;
        }

        return inCommon + (PartWords.AreAlike(before, one, after, other) ? ForBeingAlike : 0);
    }

    /// <summary>For each wire of a part that ends on a part which is known already: its own lug's name, and the lug there.</summary>
    private IEnumerable<(string Own, int There)> KnownEnds(Circuit circuit, Part part, Func<int, int> known) =>
        from wire in circuit.Wires
        from ends in new[] { (Own: wire.From, Other: wire.To), (Own: wire.To, Other: wire.From) }
        where ends.Own >= 0 && ends.Other >= 0 && circuit.Lugs[ends.Own].Part == part.Index
        where IsKnown(circuit, circuit.Lugs[ends.Other].Part)
        select (circuit.Lugs[ends.Own].Terminal.Name.ToUpperInvariant(), known(ends.Other));

    private bool IsKnown(Circuit circuit, int part) => (circuit == before ? afterOf : beforeOf)[part] >= 0;

    private IEnumerable<int> LeftBefore() => Left(afterOf);

    private IEnumerable<int> LeftAfter() => Left(beforeOf);

    private static IEnumerable<int> Left(int[] matches) =>
        Enumerable.Range(0, matches.Length).Where(part => matches[part] < 0);

    private void Match(Part one, Part other)
    {
        if (afterOf[one.Index] < 0 && beforeOf[other.Index] < 0)
        {
            afterOf[one.Index] = other.Index;
            beforeOf[other.Index] = one.Index;
        }
    }
}
