using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>Reads a path's <c>d</c>: absolute M and L, Q as a rounded corner, A as a hop along the line.</summary>
internal sealed class PathReader
{
    /// <summary>Many times what the longest wire has; a hostile one ends here. Chosen.</summary>
    private const int MostPoints = 2_000;

    private readonly string text;
    private readonly List<Spot> points = [];
    private readonly List<DrawnHop> hops = [];
    private int at;

    private PathReader(string text) => this.text = text;

    /// <exception cref="UnreadablePictureException">It holds anything else, or fewer than two different points.</exception>
    public static DrawnPath Read(string d)
    {
        var reader = new PathReader(d);
        reader.ReadCommands();
        var corners = Straightened(reader.points);
        return corners.Length >= 2
            ? new DrawnPath(corners, [.. reader.hops])
            : throw new UnreadablePictureException("a path has fewer than two different points");
    }

    private void ReadCommands()
    {
        while (true)
        {
            SkipBlanks();
            if (at >= text.Length)
            {
                return;
            }

            var command = text[at++];
            if ((command == 'M') != (points.Count == 0))
            {
                throw new UnreadablePictureException("a path must have one M, at its start");
            }

            ReadCommand(command);
            if (points.Count > MostPoints)
            {
                throw new UnreadablePictureException($"a path has more than {MostPoints} points");
            }
        }
    }

    private void ReadCommand(char command)
    {
        switch (command)
        {
            case 'M' or 'L':
                points.Add(NextSpot());
                break;
            case 'Q':
                // The control point is the corner that was rounded off.
                points.Add(NextSpot());
                points.Add(NextSpot());
                break;
            case 'A':
                ReadHop();
                break;
            default:
                throw new UnreadablePictureException(
                    $"a path has the command '{command}'; only M, L, Q and A are read"
                );
        }
    }

    private void ReadHop()
    {
        _ = NextNumber();
        _ = NextNumber();
        _ = NextNumber();
        _ = NextNumber();
        var isClockwise = NextNumber() != 0;
        var from = points[^1];
        var to = NextSpot();
        points.Add(to);
        if (from.DistanceTo(to) < Tolerance.SamePoint)
        {
            throw new UnreadablePictureException("a path has a hop of no width");
        }

        var half = (to - from) * 0.5;
        var centre = from + half;
        var bulge = isClockwise ? new Spot(half.Y, -half.X) : new Spot(-half.Y, half.X);
        var bounds = Frame.Around(from, to).With(Frame.Around(from + bulge, to + bulge));
        hops.Add(new DrawnHop(centre, bounds));
    }

    private Spot NextSpot() => new(NextNumber(), NextNumber());

    private double NextNumber()
    {
        SkipBlanks();
        var start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] is '+' or '-' or '.' or 'e' or 'E'))
        {
            var isNewSign = text[at] is '+' or '-' && at > start && text[at - 1] is not ('e' or 'E');
            if (isNewSign)
            {
                break;
            }

            at++;
        }

        return Millimetres.Parse(text.AsSpan(start, at - start));
    }

    private void SkipBlanks()
    {
        while (at < text.Length && text[at] is ' ' or ',' or '\t' or '\n' or '\r')
        {
            at++;
        }
    }

    private static ImmutableArray<Spot> Straightened(List<Spot> points)
    {
        var kept = new List<Spot>();
        foreach (var point in points)
        {
            if (kept.Count > 0 && kept[^1].DistanceTo(point) < Tolerance.SamePoint)
            {
                continue;
            }

            if (kept.Count > 1 && IsStraight(kept[^2], kept[^1], point))
            {
                kept[^1] = point;
            }
            else
            {
                kept.Add(point);
            }
        }

        return [.. kept];
    }

    private static bool IsStraight(Spot a, Spot b, Spot c)
    {
        var (before, after) = (b - a, c - b);
        return before.Dot(after) > 0 && Math.Abs(before.Cross(after)) / c.DistanceTo(a) < Tolerance.SamePoint;
    }
}
