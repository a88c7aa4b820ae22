namespace WireText.Measuring;

/// <summary>Names the things of a drawing in reports.</summary>
internal static class Pairs
{
    /// <summary>In ordinal order, so that a pair has one form.</summary>
    public static OffendingPair Of(string one, string two) =>
        string.CompareOrdinal(one, two) <= 0 ? new(one, two) : new(two, one);

    public static string Wire(string id) => $"wire:{id}";

    public static string Part(string id) => $"part:{id}";

    public static string Lug(string name) => $"lug:{name}";

    public static string Hop(string wire) => $"hop:{wire}";
}
