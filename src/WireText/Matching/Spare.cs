namespace WireText.Matching;

/// <summary>Fills slots that no goal depends on with parts that are left, the nearest to what is written.</summary>
internal static class Spare
{
    private const double Unfit = 1e12;

    /// <summary>Fills them in each instrument; false where too few are left.</summary>
    public static bool Fill(MatchCosts costs, int[][] instruments, int[] slots)
    {
        if (slots.Length == 0)
        {
            return true;
        }

        var used = instruments
            .SelectMany(parts => parts.Where((part, slot) => part >= 0 && !slots.Contains(slot)))
            .ToHashSet();
        int[] free = [.. Enumerable.Range(0, costs.Bin.Length).Where(part => !used.Contains(part))];
        if (instruments.Length * slots.Length > free.Length)
        {
            return false;
        }

        var columns = Assignment.Solve(instruments.Length * slots.Length, free.Length, CostOf);
        for (var row = 0; row < columns.Length; row++)
        {
            if (CostOf(row, columns[row]) >= Unfit)
            {
                return false;
            }

            instruments[row / slots.Length][slots[row % slots.Length]] = free[columns[row]];
        }

        return true;

        double CostOf(int row, int column)
        {
            var slot = slots[row % slots.Length];
            var part = free[column];
            return !costs.Fitting[slot].Contains(part)
                ? Unfit
                : Math.Abs(Math.Log(costs.Bin[part].Value / costs.Slots[slot].Value));
        }
    }
}
