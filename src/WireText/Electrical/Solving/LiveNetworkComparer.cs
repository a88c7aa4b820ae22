namespace WireText.Electrical.Solving;

/// <summary>Two live networks are the same when they have the same branches between the same nodes with the same values; the nets that the nodes are may differ.</summary>
internal sealed class LiveNetworkComparer : IEqualityComparer<LiveNetwork>
{
    public static readonly LiveNetworkComparer Instance = new();

    public bool Equals(LiveNetwork? x, LiveNetwork? y) => x is not null && y is not null && x.IsLike(y);

    public int GetHashCode(LiveNetwork obj)
    {
        var hash = obj.NodeCount;
        foreach (var branch in obj.Branches)
        {
            hash = unchecked((((hash * 31) + branch.Source.Index) * 31) + (branch.From * 7) + branch.To);
        }

        return hash;
    }
}
