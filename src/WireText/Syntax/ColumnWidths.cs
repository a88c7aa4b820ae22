using WireText.Text;

namespace WireText.Syntax;

/// <summary>The room that each column of a group of rows needs, gathered in one walk over the rows.</summary>
/// <remarks>The first columns are those of all rows; the ones behind are those of rows of one kind.</remarks>
internal sealed class ColumnWidths
{
    /// <summary>How many columns rows of every kind share: a statement's word and the name.</summary>
    private const int Shared = 2;

    private readonly int[] shared = new int[Shared];
    private readonly Dictionary<string, List<int>> byKind = new(Naming.Comparer);

    /// <param name="kind">Rows whose later columns stand under each other.</param>
    public void Add(string kind, IReadOnlyList<string> cells)
    {
        // The last word of a row needs no room behind it.
        var last = cells.Count - 1;
        while (last > 0 && cells[last].Length == 0)
        {
            last--;
        }

        for (var column = 0; column < last; column++)
        {
            Widen(kind, column, cells[column].Length);
        }
    }

    /// <summary>In characters; 0 for a column that needs none.</summary>
    public int Of(string kind, int column) =>
        column < Shared ? shared[column]
        : byKind.TryGetValue(kind, out var widths) && column - Shared < widths.Count ? widths[column - Shared]
        : 0;

    private void Widen(string kind, int column, int width)
    {
        if (column < Shared)
        {
            shared[column] = Math.Max(shared[column], width);
            return;
        }

        if (!byKind.TryGetValue(kind, out var widths))
        {
            byKind.Add(kind, widths = []);
        }

        if (column - Shared == widths.Count)
        {
            widths.Add(0);
        }

        widths[column - Shared] = Math.Max(widths[column - Shared], width);
    }
}
