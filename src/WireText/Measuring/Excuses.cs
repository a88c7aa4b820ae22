namespace WireText.Measuring;

/// <summary>Where two wires may come together: at a lug on which both end, and where a braid's tail leaves its cores.</summary>
internal sealed class Excuses(DrawnPicture picture, StrandMap map)
{
    private readonly Dictionary<string, Spot> lugs = picture.Lugs.ToDictionary(
        lug => lug.Name,
        lug => lug.Eyelet.Centre,
        StringComparer.Ordinal
    );

    private readonly Dictionary<(int, int), List<Spot>> known = [];

    /// <summary>Surfaces are no excuse: each wire has its own place on one.</summary>
    public List<Spot> Between(int first, int second)
    {
        var key = first < second ? (first, second) : (second, first);
        if (!known.TryGetValue(key, out var spots))
        {
            known[key] = spots = Find(map.Strands[first], map.Strands[second]);
        }

        return spots;
    }

    private List<Spot> Find(Strand one, Strand two)
    {
        var spots = new List<Spot>();
        foreach (var lug in one.Lugs)
        {
            if (two.EndsOn(lug) && lugs.TryGetValue(lug, out var spot))
            {
                spots.Add(spot);
            }
        }

        AddRoot(one, two, spots);
        AddRoot(two, one, spots);
        return spots;
    }

    private static void AddRoot(Strand tail, Strand core, List<Spot> spots)
    {
        if (tail.Root is { } root && core.IsCore && core.DistanceTo(root) <= Pitch.BraidRoot)
        {
            spots.Add(root);
        }
    }
}
