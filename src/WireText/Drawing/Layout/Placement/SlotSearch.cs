namespace WireText.Drawing.Layout.Placement;

/// <summary>Where a search for an arrangement begins, and how much it looks at.</summary>
/// <param name="ExtraColumns">Columns more than the template's.</param>
/// <param name="CrossingCost">What two straight lines that cross cost.</param>
/// <param name="MostTrials">Arrangements tried at most.</param>
internal readonly record struct SlotStart(int ExtraColumns, int CrossingCost, int MostTrials);

/// <summary>
/// Arranges the big parts in rows when the author said nothing. Starts from a template (pickups on top in their order, then
/// switches, pots and jack), then takes the best single move, swap or turn again and again while one lowers the cost.
/// </summary>
internal sealed class SlotSearch
{
    /// <summary>With more big parts than this they are only brought near each other: the search would grow with the cube of their number.</summary>
    internal const int MostSearched = 24;

    /// <summary>So many pairs of lines are looked at while the router takes up one state. Measured.</summary>
    private const int PairsAState = 32;

    private readonly SlotCost cost;
    private readonly int[][] turnsOf;
    private readonly int[] parts;
    private readonly int[] cells;
    private readonly int[] turns;
    private readonly int columns;
    private readonly LayoutBudget budget;
    private int trialsLeft;

    private SlotSearch(Wiring wiring, int[][] template, int[] turns, SlotStart start, LayoutBudget budget)
    {
        this.budget = budget;
        columns = template.Length == 0 ? 0 : template.Max(row => row.Length);
        parts = [.. template.SelectMany(row => row)];
        cells = new int[template.Length * columns];
        Array.Fill(cells, -1);
        for (var row = 0; row < template.Length; row++)
        {
            template[row].CopyTo(cells, row * columns);
        }

        this.turns = turns;
        trialsLeft = start.MostTrials;
        cost = new SlotCost(wiring, columns, start.CrossingCost);
        turnsOf = [.. wiring.Parts.Select(TurnsOf)];
    }

    /// <param name="turns">By part: its turn; the search changes those that the author left open.</param>
    /// <returns>Part indices by row and column; -1 for an empty cell. Small parts are in none.</returns>
    public static int[][] Arrange(Wiring wiring, int[] turns, SlotStart start, LayoutBudget budget)
    {
        var template = Template(wiring, start.ExtraColumns);
        if (template.Sum(row => row.Length) > MostSearched)
        {
            return SlotSpread.Arrange(
                [.. template.SelectMany(row => row)],
                [.. SlotCost.LinksOf(wiring).Select(link => (link.PartA, link.PartB))],
                wiring.Parts.Length,
                budget.Bounds.TrialsAPart
            );
        }

        var search = new SlotSearch(wiring, template, turns, start, budget);
        search.Descend();
        return search.Rows();
    }

    private static int[][] Template(Wiring wiring, int extraColumns)
    {
        var pickups = Zone(wiring, LayoutZone.Pickup);
        var rest = Zone(wiring, LayoutZone.Ground)
            .Concat(Zone(wiring, LayoutZone.Switch))
            .Concat(Zone(wiring, LayoutZone.Pot))
            .Concat(Zone(wiring, LayoutZone.Jack))
            .ToArray();
        var all = pickups.Length + rest.Length;
        var width = Math.Max(1, Math.Max(3, (int)Math.Ceiling(Math.Sqrt(1.5 * all))) + extraColumns);
        return [.. pickups.Chunk(width), .. rest.Chunk(width)];
    }

    private static int[] Zone(Wiring wiring, LayoutZone zone) =>
        [
            .. Enumerable
                .Range(0, wiring.Parts.Length)
                .Where(part => wiring.Parts[part].Zone == zone)
                .OrderBy(part => wiring.Parts[part].Order)
                .ThenBy(part => part),
        ];

    /// <summary>A part with text inside stays so that its text box lies as it does on its face; a pickup is never turned.</summary>
    private static int[] TurnsOf(LayoutPart part)
    {
        if (part.GivenTurn is { } given)
        {
            return [given];
        }

        if (part.Zone == LayoutZone.Pickup)
        {
            return [0];
        }

        return part.TextBox is null ? [0, 90, 180, 270] : [0, 180];
    }

    private void Descend()
    {
        var current = Cost(long.MaxValue);
        while (trialsLeft > 0 && !budget.IsHalfSpent)
        {
            budget.Cancellation.ThrowIfCancellationRequested();
            var seen = cost.PairsSeen;
            var best = (Cost: current, A: -1, B: -1, Turn: -1);
            TryMovesAndSwaps(ref best);
            TryTurns(ref best);
            budget.Spend((cost.PairsSeen - seen) / PairsAState);
            if (best.A < 0)
            {
                return;
            }

            current = best.Cost;
            if (best.Turn >= 0)
            {
                turns[best.A] = best.Turn;
            }
            else
            {
                Swap(best.A, best.B);
            }
        }
    }

    private long Cost(long below) => cost.Of(cells, turns, below);

    private void TryMovesAndSwaps(ref (long Cost, int A, int B, int Turn) best)
    {
        for (var a = 0; a < cells.Length; a++)
        {
            for (var b = a + 1; b < cells.Length && trialsLeft > 0; b++)
            {
                if (cells[a] != cells[b])
                {
                    Swap(a, b);
                    trialsLeft--;
                    var tried = Cost(best.Cost);
                    Swap(a, b);
                    if (tried < best.Cost)
                    {
                        best = (tried, a, b, -1);
                    }
                }
            }
        }
    }

    private void TryTurns(ref (long Cost, int A, int B, int Turn) best)
    {
        foreach (var part in parts)
        {
            var kept = turns[part];
            foreach (var turn in turnsOf[part].Where(turn => turn != kept))
            {
                turns[part] = turn;
                trialsLeft--;
                var tried = Cost(best.Cost);
                if (tried < best.Cost)
                {
                    best = (tried, part, -1, turn);
                }
            }

            turns[part] = kept;
        }
    }

    private void Swap(int a, int b) => (cells[a], cells[b]) = (cells[b], cells[a]);

    private int[][] Rows()
    {
        var usedColumns = Enumerable
            .Range(0, columns)
            .Where(column => cells.Where((part, i) => part >= 0 && i % columns == column).Any())
            .ToArray();
        return
        [
            .. cells
                .Chunk(Math.Max(1, columns))
                .Where(row => row.Any(part => part >= 0))
                .Select(row => usedColumns.Select(column => row[column]).ToArray()),
        ];
    }
}
