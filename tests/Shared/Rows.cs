using System.Runtime.CompilerServices;

namespace WireText.Testing;

/// <summary>The rows of a theory that come from a folder, a catalogue or another list, and not from the test's own text.</summary>
/// <remarks>When there are none, the theory fails and says what is empty.</remarks>
internal static class Rows
{
    public static TheoryData<T> Of<T>(
        IEnumerable<T> items,
        [CallerArgumentExpression(nameof(items))] string what = ""
    ) => [.. Every.Of(items, what)];

    public static TheoryData<T1, T2> Of<T1, T2>(
        IEnumerable<(T1, T2)> items,
        [CallerArgumentExpression(nameof(items))] string what = ""
    )
    {
        var rows = new TheoryData<T1, T2>();
        foreach (var (first, second) in Every.Of(items, what))
        {
            rows.Add(first, second);
        }

        return rows;
    }

    public static TheoryData<T1, T2, T3> Of<T1, T2, T3>(
        IEnumerable<(T1, T2, T3)> items,
        [CallerArgumentExpression(nameof(items))] string what = ""
    )
    {
        var rows = new TheoryData<T1, T2, T3>();
        foreach (var (first, second, third) in Every.Of(items, what))
        {
            rows.Add(first, second, third);
        }

        return rows;
    }
}
