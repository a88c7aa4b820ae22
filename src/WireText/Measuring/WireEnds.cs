using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>Looks whether every wire is there and ends where it should.</summary>
internal sealed class WireEnds
{
    private readonly ILookup<string, Shape> places;
    private readonly ImmutableArray<Strand>.Builder strands = ImmutableArray.CreateBuilder<Strand>();
    private readonly SortedSet<string> wrong = new(StringComparer.Ordinal);
    private readonly List<DrawnWire> cores;
    private readonly WorkLimit work;

    private WireEnds(DrawnPicture picture, WorkLimit work)
    {
        this.work = work;
        var lugs = picture.Lugs.Select(lug => (lug.Name, Shape: (Shape)lug.Eyelet));
        var surfaces = picture.Surfaces.Select(surface => (surface.Name, surface.Shape));
        places = lugs.Concat(surfaces).ToLookup(place => place.Name, place => place.Shape, StringComparer.Ordinal);
        cores = [.. picture.Wires.Where(wire => wire.Kind == "core" && wire.Path is not null)];
    }

    /// <summary>Every drawn line, for the other measures.</summary>
    public ImmutableArray<Strand> Strands => strands.ToImmutable();

    /// <summary>Wires whose path does not end on their lugs.</summary>
    public ImmutableArray<string> Wrong => [.. wrong];

    public static WireEnds Measure(DrawnPicture picture, WorkLimit work)
    {
        var ends = new WireEnds(picture, work);
        foreach (var wire in picture.Wires.OrderBy(wire => wire.Id, StringComparer.Ordinal))
        {
            ends.Take(wire);
        }

        foreach (var braid in picture.Braids.OrderBy(braid => braid.Id, StringComparer.Ordinal))
        {
            ends.Take(braid);
        }

        return ends;
    }

    private void Take(DrawnWire wire)
    {
        if (wire.Path is not { } path)
        {
            return;
        }

        strands.Add(new Strand(wire.Id, [wire.From, wire.To], wire.Kind == "core", wire.CoreWidth, path, Root: null));
        var isRight =
            (IsOn(wire.From, path.First) && IsOn(wire.To, path.Last))
            || (IsOn(wire.From, path.Last) && IsOn(wire.To, path.First));
        if (!isRight)
        {
            wrong.Add(wire.Id);
        }
    }

    private void Take(DrawnBraid braid)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        foreach (var tail in braid.Tails)
        {
            TakeTail(braid, tail, reached);
        }

        var allReached = new[] { braid.From, braid.To }.All(lug => lug.Length == 0 || reached.Contains(lug));
        if (!allReached || !braid.Sheaths.All(sheath => sheath.Points.All(IsOnSomeCore)))
        {
            wrong.Add(braid.Id);
        }
    }

    private void TakeTail(DrawnBraid braid, DrawnPath tail, HashSet<string> reached)
    {
        foreach (
            var (lug, isFirst) in new[] { (braid.From, true), (braid.From, false), (braid.To, true), (braid.To, false) }
        )
        {
            var (end, root) = isFirst ? (tail.First, tail.Last) : (tail.Last, tail.First);
            if (!reached.Contains(lug) && IsOn(lug, end) && IsOnSomeCore(root))
            {
                reached.Add(lug);
                strands.Add(new Strand(braid.Id, [lug], IsCore: false, CoreWidth: 1, tail, root));
                return;
            }
        }

        wrong.Add(braid.Id);
        strands.Add(new Strand(braid.Id, [braid.From, braid.To], IsCore: false, CoreWidth: 1, tail, tail.First));
    }

    private bool IsOn(string lug, Spot end) => places[lug].Any(place => place.Holds(end, Tolerance.Touch));

    private bool IsOnSomeCore(Spot spot) => cores.Exists(core => IsOnCore(core.Path!, spot));

    private bool IsOnCore(DrawnPath path, Spot spot)
    {
        work.Spend(path.Points.Length);
        return path
            .Points.Zip(path.Points.Skip(1), (a, b) => new Segment(a, b))
            .Any(segment => segment.DistanceTo(spot) <= Pitch.BraidRoot);
    }
}
