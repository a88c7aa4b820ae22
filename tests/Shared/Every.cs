using System.Runtime.CompilerServices;

namespace WireText.Testing;

/// <summary>What a test goes over. Over nothing it would hold nothing: nothing is a failure that names what is empty.</summary>
internal static class Every
{
    /// <summary>The items, of which there is at least one.</summary>
    public static IReadOnlyList<T> Of<T>(
        IEnumerable<T> items,
        [CallerArgumentExpression(nameof(items))] string what = ""
    )
    {
        T[] found = [.. items];
        Assert.True(found.Length > 0, $"there is nothing to go over: {what} is empty");
        return found;
    }

    /// <summary>Judges each item on its own, as <c>Assert.All</c> does; there must be one.</summary>
    public static void Item<T>(
        IEnumerable<T> items,
        Action<T> judge,
        [CallerArgumentExpression(nameof(items))] string what = ""
    ) => Item(items, (item, _) => judge(item), what);

    /// <param name="judge">Takes the item and its place, from 0.</param>
    public static void Item<T>(
        IEnumerable<T> items,
        Action<T, int> judge,
        [CallerArgumentExpression(nameof(items))] string what = ""
    )
    {
#pragma warning disable RS0030 // The one place where it cannot pass over nothing.
        Assert.All(Of(items, what), judge);
#pragma warning restore RS0030
    }
}
