using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>A list whose items are found by name, upper and lower case alike; of two with one name, the first.</summary>
/// <remarks>The table is made when a name is first asked for: most circuits are never asked.</remarks>
internal sealed class NameIndex<T>(ImmutableArray<T> items, Func<T, string> nameOf)
    where T : class
{
    private readonly Lazy<Dictionary<string, T>> byName = new(() =>
    {
        var table = new Dictionary<string, T>(items.Length, Naming.Comparer);
        foreach (var item in items)
        {
            table.TryAdd(nameOf(item), item);
        }

        return table;
    });

    public ImmutableArray<T> Items { get; } = items;

    public T? Find(string name) => byName.Value.GetValueOrDefault(name);
}
