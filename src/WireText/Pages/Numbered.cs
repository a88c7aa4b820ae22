using System.Collections.Immutable;

namespace WireText.Pages;

/// <summary>Things in the order in which they were first met, each once.</summary>
internal sealed class Numbered<T>
    where T : notnull
{
    private readonly Dictionary<T, int> places = [];
    private readonly List<T> items = [];

    public ImmutableArray<T> Items => [.. items];

    /// <summary>The place of a thing, which it gets when it is new.</summary>
    public int PlaceOf(T item)
    {
        if (!places.TryGetValue(item, out var place))
        {
            place = items.Count;
            places.Add(item, place);
            items.Add(item);
        }

        return place;
    }
}
