namespace WireText.Tests;

/// <summary>How the work on a text grows with it, told by the bytes that the work allocates and never by a clock.</summary>
/// <remarks>Every walk and every list of the core allocates: work that grows with the square shows in the bytes too.</remarks>
internal static class Growth
{
    /// <summary>How many times longer the long text is.</summary>
    private const int Longer = 8;

    /// <summary>Linear work gives 8, work with the square 64; what sorts or doubles its room lies little above the first.</summary>
    private const double MostGrowth = 16;

    /// <param name="count">Of the short text; the long one has eight times as many.</param>
    public static void AssertIsLinear(int count, Func<int, string> write, Action<string> work)
    {
        var (few, many) = (write(count), write(count * Longer));

        // What is made once, at the first use, counts for neither.
        work(few);

        Assert.InRange((double)Bytes(many, work) / Bytes(few, work), 1, MostGrowth);
    }

    private static long Bytes(string text, Action<string> work)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        work(text);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
