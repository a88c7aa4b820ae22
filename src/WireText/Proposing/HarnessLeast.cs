namespace WireText.Proposing;

/// <summary>Finds the harnesses of fewest joints, whatever jumpers they have.</summary>
internal static class HarnessLeast
{
    private const int NoLimit = 1_000;

    /// <summary>All of the least joints that are kept, none with fewer than asked; empty when there is none.</summary>
    public static List<Harness> Of(HarnessSearch search, int atLeast, int? atMost)
    {
        var limit = atMost ?? NoLimit;
        var found = search.Run(0, atLeast, limit, isFirstEnough: false);
        for (var jumpers = 1; jumpers <= HarnessSearch.MostJumpers; jumpers++)
        {
            // With a jumper a harness is looked for only where it saves a joint.
            var fewer = search.Run(
                jumpers,
                atLeast,
                found.Count == 0 ? limit : found[0].Joints - 1,
                isFirstEnough: false
            );
            found = fewer.Count > 0 ? fewer : found;
        }

        return found;
    }

    /// <summary>True when any harness does it.</summary>
    public static bool IsPossible(HarnessSearch search) =>
        Enumerable
            .Range(0, HarnessSearch.MostJumpers + 1)
            .Any(jumpers => search.Run(jumpers, 0, NoLimit, isFirstEnough: true).Count > 0);
}
