using WireText.Geometry;

namespace WireText.Drawing.Layout.Placement;

/// <summary>Gives every part a place and a turn: what the author gave is obeyed exactly, the rest is searched.</summary>
internal static class PartPlacer
{
    /// <summary>Air around a small part and around a big one that finds its own place beside given ones, in millimetres.</summary>
    private const double SmallAir = 7;
    private const double BigAir = 16;

    /// <param name="start">Where the search begins when nobody placed anything.</param>
    /// <param name="widening">How often the channels between slots were widened because routing left conflicts.</param>
    public static PartPlacement Place(
        Wiring wiring,
        LayoutProblem problem,
        SlotStart start,
        int widening,
        LayoutBudget budget
    )
    {
        var poses = new Pose?[wiring.Parts.Length];
        var turns = wiring.Parts.Select(part => part.GivenTurn ?? 0).ToArray();
        PlaceArrangement(wiring, problem, turns, widening, poses);
        PlaceGiven(wiring, poses);
        bool[] isFound = [.. poses.Select(pose => pose is null)];
        int[][]? slots = null;
        if (!poses.Any(pose => pose is not null))
        {
            slots = SlotSearch.Arrange(wiring, turns, start, budget);
            Fill(wiring, slots, turns, widening, poses);
        }

        PlaceRest(wiring, widening, poses);
        return new PartPlacement(wiring, [.. poses.Select(pose => pose!.Value)], isFound, slots);
    }

    /// <summary>The same with parts held where an earlier layout had them: what does not fit beside the others there finds itself another place.</summary>
    /// <param name="held">By part; see <see cref="HeldPlaces"/>.</param>
    public static PartPlacement Hold(Wiring wiring, LayoutProblem problem, Pose?[] held)
    {
        var poses = new Pose?[wiring.Parts.Length];
        PlaceArrangement(wiring, problem, [.. wiring.Parts.Select(part => part.GivenTurn ?? 0)], widening: 0, poses);
        PlaceGiven(wiring, poses);
        bool[] isFound = [.. poses.Select(pose => pose is null)];
        for (var part = 0; part < poses.Length; part++)
        {
            poses[part] = held[part] is null ? poses[part] : null;
        }

        foreach (var part in Enumerable.Range(0, poses.Length).Where(part => held[part] is not null))
        {
            poses[part] = IsTaken(wiring, part, held[part]!.Value, poses) ? null : held[part];
        }

        PlaceRest(wiring, widening: 0, poses);
        return new PartPlacement(wiring, [.. poses.Select(pose => pose!.Value)], isFound, Slots: null);
    }

    /// <summary>True where the part would lie on another one that has its place, but for what lies on a part by itself.</summary>
    private static bool IsTaken(Wiring wiring, int part, Pose pose, Pose?[] poses)
    {
        var room = PartBounds.OnPage(wiring.Parts[part], pose);
        return Enumerable
            .Range(0, poses.Length)
            .Any(other =>
                wiring.Parts[other].Seat is null
                && poses[other] is { } its
                && PartBounds.OnPage(wiring.Parts[other], its).Overlaps(room)
            );
    }

    private static void PlaceArrangement(Wiring wiring, LayoutProblem problem, int[] turns, int widening, Pose?[] poses)
    {
        var byId = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var part = 0; part < wiring.Parts.Length; part++)
        {
            byId.TryAdd(wiring.Parts[part].Id, part);
        }

        var used = new HashSet<int>();
        int[][] cells =
        [
            .. problem.Arrangement.Select(row =>
                row.Select(id => id is not null && byId.TryGetValue(id, out var part) && used.Add(part) ? part : -1)
                    .ToArray()
            ),
        ];
        Fill(wiring, cells, turns, widening, poses);
    }

    private static void Fill(Wiring wiring, int[][] cells, int[] turns, int widening, Pose?[] poses)
    {
        var placed = new Pose[wiring.Parts.Length];
        SlotGrid.Place(wiring, cells, turns, widening, placed);
        foreach (var part in cells.SelectMany(row => row).Where(part => part >= 0))
        {
            poses[part] = placed[part];
        }
    }

    private static void PlaceGiven(Wiring wiring, Pose?[] poses)
    {
        for (var part = 0; part < poses.Length; part++)
        {
            if (wiring.Parts[part].GivenAt is { } at)
            {
                poses[part] = new Pose(at, wiring.Parts[part].GivenTurn ?? 0);
            }
        }
    }

    /// <summary>Parts that nobody placed, most joined to what has a place first, big ones before small ones.</summary>
    private static void PlaceRest(Wiring wiring, int widening, Pose?[] poses)
    {
        var spots = new FreeSpots(wiring, poses);
        while (true)
        {
            var next = Enumerable
                .Range(0, poses.Length)
                .Where(part => poses[part] is null)
                .OrderBy(part => wiring.Parts[part].Zone == LayoutZone.Small)
                .ThenByDescending(part => JoinsTo(wiring, part, poses))
                .ThenBy(part => wiring.Parts[part].Order)
                .ThenBy(part => part)
                .Cast<int?>()
                .FirstOrDefault();
            if (next is not { } part)
            {
                return;
            }

            var isSmall = wiring.Parts[part].Zone == LayoutZone.Small;
            poses[part] =
                SeatOf(wiring, part, poses)
                ?? spots.Find(part, (isSmall ? SmallAir : BigAir) + (2 * widening * LayoutScale.Pitch));
        }
    }

    /// <summary>The place of a part that lies on another one; null when that has no place yet, or there is no such seat.</summary>
    private static Pose? SeatOf(Wiring wiring, int part, Pose?[] poses)
    {
        if (wiring.Parts[part].Seat is not { } seat)
        {
            return null;
        }

        var host = Array.FindIndex(wiring.Parts, other => other.Id == seat.Host);
        if (host < 0 || poses[host] is not { } pose)
        {
            return null;
        }

        var turn = (pose.Turn + seat.Turn) % 360;
        return new Pose(PartBounds.Snapped(wiring.Parts[part], turn, pose.OnPage(seat.At)), turn);
    }

    private static int JoinsTo(Wiring wiring, int part, Pose?[] poses) =>
        wiring.Connections.Count(c =>
            c.CanRoute
            && (
                (wiring.Terminals[c.From].Part == part && poses[wiring.Terminals[c.To].Part] is not null)
                || (wiring.Terminals[c.To].Part == part && poses[wiring.Terminals[c.From].Part] is not null)
            )
        );
}
