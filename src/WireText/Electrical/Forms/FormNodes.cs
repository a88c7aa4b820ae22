using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Forms;

/// <summary>Changes to whole trees of forms.</summary>
internal static class FormNodes
{
    public static FormNode Flip(FormNode node) => Rebuild(node, coil => coil with { Sign = -coil.Sign })!;

    /// <summary>The tree with each coil changed or left out, joined anew and flat; null when no coil is left.</summary>
    public static FormNode? Rebuild(FormNode node, Func<CoilForm, CoilForm?> change)
    {
        if (node is CoilForm coil)
        {
            return change(coil);
        }

        var (isSeries, parts) = node is SeriesForm series ? (true, series.Parts) : (false, ((ParallelForm)node).Parts);
        var kept = parts.Select(part => Rebuild(part, change)).OfType<FormNode>().ToImmutableArray();
        var joined = isSeries ? FormNode.InSeries(kept) : FormNode.InParallel(kept);
        return joined is null
            ? null
            : joined with
            {
                Through = joined.Through.AddRange(node.Through),
                ShuntedBy = joined.ShuntedBy.AddRange(node.ShuntedBy),
                Decibels = node.Decibels ?? joined.Decibels,
            };
    }

    /// <summary>Each coil of a tree with all that lies in series with it or with a group that holds it.</summary>
    public static IEnumerable<(Coil Coil, ImmutableArray<PlainPart> Through)> ThroughOf(FormNode node)
    {
        ImmutableArray<FormNode> parts = node switch
        {
            SeriesForm series => series.Parts,
            ParallelForm parallel => parallel.Parts,
            _ => [],
        };
        return node is CoilForm coil
            ? [(coil.Coil, node.Through)]
            : parts.SelectMany(ThroughOf).Select(inner => (inner.Coil, inner.Through.AddRange(node.Through)));
    }

    /// <summary>The tree with nothing but coils and joins.</summary>
    public static FormNode OnlyJoins(FormNode node) =>
        node switch
        {
            SeriesForm series => FormNode.InSeries([.. series.Parts.Select(OnlyJoins)])!,
            ParallelForm parallel => FormNode.InParallel([.. parallel.Parts.Select(OnlyJoins)])!,
            _ => node with { Through = [], ShuntedBy = [], Decibels = null },
        };

    /// <summary>The tree in letters, with everything that holds coils of one part alone replaced by a symbol.</summary>
    /// <param name="part">The part; null to replace nothing.</param>
    public static string Symbolised(FormNode? node, int? part)
    {
        if (node is null)
        {
            return "";
        }

        if (node.Coils.All(coil => coil.Coil.Part == part))
        {
            return "x";
        }

        // Coils of the part that are joined directly are one symbol, however many they are.
        return node switch
        {
            CoilForm coil => coil.Coil.Name,
            SeriesForm series => "S(" + SymbolisedParts(series.Parts, part) + ")",
            ParallelForm parallel => "P(" + SymbolisedParts(parallel.Parts, part) + ")",
            _ => "",
        };
    }

    private static string SymbolisedParts(ImmutableArray<FormNode> parts, int? part) =>
        string.Join(' ', parts.Select(node => Symbolised(node, part)).Distinct(StringComparer.Ordinal));
}
