using System.Collections.Immutable;

namespace WireText.Electrical.Networks;

/// <summary>Two settings of the dials are the same when every dial stands alike.</summary>
internal sealed class TravelsComparer : IEqualityComparer<ImmutableArray<double>>
{
    public static readonly TravelsComparer Instance = new();

    public bool Equals(ImmutableArray<double> x, ImmutableArray<double> y) =>
        x == y || x.AsSpan().SequenceEqual(y.AsSpan());

    public int GetHashCode(ImmutableArray<double> obj)
    {
        var hash = obj.Length;
        foreach (var travel in obj)
        {
            hash = unchecked((hash * 31) + travel.GetHashCode());
        }

        return hash;
    }
}
