namespace WireText.Drawing.Layout.Finishing;

/// <summary>
/// Shifts runs sideways: the last run to a lug onto the lug's own line, and each inner run to the middle of its free room.
/// A run never passes another run, a body, a lug or a label, so what crosses what, and what is legal, stay as they were.
/// </summary>
internal sealed class Nudger
{
    private const double Pitch = LayoutScale.Pitch;

    /// <summary>No run goes farther than this from its lane.</summary>
    private const double Farthest = 2 * Pitch;

    /// <summary>What a run onto its lug's line keeps from its neighbours: less than a pitch, more than two half wires.</summary>
    private const double LeastGap = 1.6;

    /// <summary>Times that every run is moved to the middle of its room: each moves its neighbours' rooms less. Chosen.</summary>
    private const int Sweeps = 4;

    /// <summary>The side of a cell of the grid: a few runs in each.</summary>
    private const double Cell = 8 * Pitch;
    private const double Tiny = 1e-6;

    private readonly Dictionary<(int, int), List<Run>> cells = [];
    private readonly IReadOnlyList<Run> runs;
    private readonly NudgeObstacles obstacles;
    private readonly HashSet<Run> seen = [];

    private Nudger(IReadOnlyList<Run> runs, NudgeObstacles obstacles)
    {
        (this.runs, this.obstacles) = (runs, obstacles);
        foreach (var run in runs)
        {
            // A run moves two pitches at most, and its ends do too: listed with that much room it is always found.
            foreach (
                var cell in CellsOf(
                    run.Low - Farthest,
                    run.High + Farthest,
                    run.At - Farthest,
                    run.At + Farthest,
                    run.IsHorizontal
                )
            )
            {
                if (!cells.TryGetValue(cell, out var here))
                {
                    cells[cell] = here = [];
                }

                here.Add(run);
            }
        }
    }

    /// <param name="wishes">Runs that end on a lug off their lane, with the lug's own line.</param>
    public static void Nudge(
        IReadOnlyList<Run> runs,
        IReadOnlyList<(Run Run, double Line)> wishes,
        LabelledPlacement labelled
    )
    {
        var nudger = new Nudger(runs, new NudgeObstacles(labelled));
        foreach (var (run, line) in wishes)
        {
            nudger.MoveOntoLine(run, line);
        }

        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            foreach (var run in runs)
            {
                if (run is { IsInner: true, IsFixed: false })
                {
                    nudger.Centre(run);
                }
            }
        }
    }

    private void MoveOntoLine(Run run, double line)
    {
        var (low, high) = RoomOf(run, LeastGap);
        if (line >= low - Tiny && line <= high + Tiny)
        {
            run.At = line;
        }
    }

    private void Centre(Run run)
    {
        var (low, high) = RoomOf(run, Pitch);
        var middle = Math.Round((low + high) / 2 * 5) / 5;
        if (Math.Abs(middle - run.At) > 0.1 && middle >= low - Tiny && middle <= high + Tiny)
        {
            run.At = middle;
        }
    }

    /// <summary>How far the run may shift either way; where it is, at least.</summary>
    private (double Low, double High) RoomOf(Run run, double gap)
    {
        var room = (Low: run.Lane - Farthest, High: run.Lane + Farthest);
        BoundByEnds(run, ref room);
        seen.Clear();
        foreach (
            var cell in CellsOf(
                run.Low - Pitch,
                run.High + Pitch,
                run.Lane - Farthest - Pitch,
                run.Lane + Farthest + Pitch,
                run.IsHorizontal
            )
        )
        {
            foreach (var other in cells.GetValueOrDefault(cell, []))
            {
                if (other != run && other != run.Before && other != run.After && seen.Add(other))
                {
                    BoundByRun(run, other, gap, ref room);
                }
            }
        }

        obstacles.Bound(run, ref room);
        return (Math.Min(room.Low, run.At), Math.Max(room.High, run.At));
    }

    /// <summary>The runs before and after must not shrink to nothing or turn back.</summary>
    private static void BoundByEnds(Run run, ref (double Low, double High) room)
    {
        if (run.Before is { Before: null } first)
        {
            BoundAt(run.At, first.FixedStart, Pitch, ref room);
        }

        if (run.After is { After: null } last)
        {
            BoundAt(run.At, last.FixedEnd, Pitch, ref room);
        }
    }

    private static void BoundByRun(Run run, Run other, double gap, ref (double Low, double High) room)
    {
        if (other.IsHorizontal == run.IsHorizontal)
        {
            if (other.High > run.Low - gap + Tiny && other.Low < run.High + gap - Tiny)
            {
                var crossesLeg =
                    (other.Low < run.Start && run.Start < other.High) || (other.Low < run.End && run.End < other.High);
                BoundAt(run.At, other.At, crossesLeg ? Math.Max(gap, LayoutScale.HopRoom) : gap, ref room);
            }

            return;
        }

        if (other.At <= run.Low - gap + Tiny || other.At >= run.High + gap - Tiny)
        {
            return;
        }

        if (other.Low < run.At - Tiny && other.High > run.At + Tiny)
        {
            // It crosses, and goes on crossing with room for a hop.
            room.Low = Math.Max(room.Low, other.Low + LayoutScale.HopRoom);
            room.High = Math.Min(room.High, other.High - LayoutScale.HopRoom);
        }
        else
        {
            BoundAt(run.At, other.Low >= run.At - Tiny ? other.Low : other.High, gap, ref room);
        }
    }

    public static void BoundAt(double at, double obstacle, double gap, ref (double Low, double High) room)
    {
        if (obstacle >= at)
        {
            room.High = Math.Min(room.High, obstacle - gap);
        }
        else
        {
            room.Low = Math.Max(room.Low, obstacle + gap);
        }
    }

    private static IEnumerable<(int, int)> CellsOf(double low, double high, double from, double to, bool isHorizontal)
    {
        for (var along = (int)Math.Floor(low / Cell); along <= (int)Math.Floor(high / Cell); along++)
        {
            for (var across = (int)Math.Floor(from / Cell); across <= (int)Math.Floor(to / Cell); across++)
            {
                yield return isHorizontal ? (along, across) : (across, along);
            }
        }
    }
}
