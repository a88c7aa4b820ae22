using System.Collections.Immutable;

namespace WireText.Matching;

/// <summary>For how many instruments a bin has all parts: the largest matching of slots and parts that fit (Kuhn 1955, augmenting paths).</summary>
internal sealed class WholeInstruments
{
    private readonly ImmutableArray<ImmutableArray<int>> fitting;
    private readonly int[] slotOf;

    /// <param name="isTaken">Parts that are used already.</param>
    public WholeInstruments(ImmutableArray<ImmutableArray<int>> fitting, int parts, Func<int, bool> isTaken)
    {
        this.fitting = fitting;
        slotOf = new int[parts];
        for (var part = 0; part < parts; part++)
        {
            slotOf[part] = isTaken(part) ? Taken : Free;
        }
    }

    private const int Free = -1;
    private const int Taken = -2;

    /// <summary>Takes a part for one more of a slot, moving others where it must; false where none is left.</summary>
    public bool Add(int slot) => Add(slot, new HashSet<int>());

    /// <summary>How many of an instrument's slots can be filled so many times, up to a count.</summary>
    public static int Count(MatchCosts costs, int most)
    {
        var whole = new WholeInstruments(costs.Fitting, costs.Bin.Length, _ => false);
        for (var instrument = 0; instrument < most; instrument++)
        {
            for (var slot = 0; slot < costs.Slots.Length; slot++)
            {
                if (!whole.Add(slot))
                {
                    return instrument;
                }
            }
        }

        return most;
    }

    private bool Add(int slot, HashSet<int> tried)
    {
        foreach (var part in fitting[slot])
        {
            if (slotOf[part] == Taken || !tried.Add(part))
            {
                continue;
            }

            if (slotOf[part] == Free || Add(slotOf[part], tried))
            {
                slotOf[part] = slot;
                return true;
            }
        }

        return false;
    }
}
