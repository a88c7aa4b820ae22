using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>Holds the parts of a layout where an earlier one had them.</summary>
internal static class HeldPlaces
{
    /// <summary>By part: where it was; null for one that is new, or whose place is the author's or comes of what it lies on, or that nothing joined before.</summary>
    public static Pose?[] Of(Wiring wiring, Wiring before, LayoutResult laid)
    {
        var held = new Pose?[wiring.Parts.Length];
        var places = laid.Parts.ToDictionary(part => part.Part.Id, StringComparer.Ordinal);
        var names = NamesBefore(wiring, before);
        var (joined, joinedBefore) = (JoinedParts(wiring), JoinedParts(before));
        for (var part = 0; part < held.Length; part++)
        {
            var own = wiring.Parts[part];
            var hasCome = joined.Contains(own.Id) && !joinedBefore.Contains(names[part]);
            if (!hasCome && places.TryGetValue(names[part], out var place) && IsLeftAlone(own, place.Part))
            {
                held[part] = place.Pose;
            }
        }

        return held;
    }

    private static bool IsLeftAlone(LayoutPart own, LayoutPart before) =>
        (own.GivenAt, own.Seat, own.GivenTurn) == (null, null, before.GivenTurn)
        && (before.GivenAt, before.Seat) == (null, null);

    /// <summary>By part: what it was called. One new name in the place of one old name is the same part, where the two look alike.</summary>
    private static string[] NamesBefore(Wiring wiring, Wiring before)
    {
        string[] names = [.. wiring.Parts.Select(part => part.Id)];
        var (now, then) = (names.ToHashSet(StringComparer.Ordinal), before.Parts.Select(part => part.Id).ToHashSet());
        int[] come = [.. Enumerable.Range(0, names.Length).Where(part => !then.Contains(names[part]))];
        LayoutPart[] gone = [.. before.Parts.Where(part => !now.Contains(part.Id))];
        if (come.Length == 1 && gone.Length == 1 && AreAlike(wiring.Parts[come[0]], gone[0]))
        {
            names[come[0]] = gone[0].Id;
        }

        return names;
    }

    private static bool AreAlike(LayoutPart one, LayoutPart other) =>
        one.Body.SequenceEqual(other.Body)
        && one.Lugs.Select(lug => lug.At).SequenceEqual(other.Lugs.Select(lug => lug.At));

    private static HashSet<string> JoinedParts(Wiring wiring) =>
        [
            .. wiring
                .Connections.Where(wire => wire.CanRoute)
                .SelectMany(wire => new[] { wire.From, wire.To })
                .Select(end => wiring.Parts[wiring.Terminals[end].Part].Id),
        ];
}
