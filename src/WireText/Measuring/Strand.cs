using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>One drawn line of conductor with what is known of its ends: a wire, or a tail of a braid.</summary>
/// <param name="Wire">The id of the wire or braid.</param>
/// <param name="Lugs">The names of the lugs and surfaces that it may end on.</param>
/// <param name="Root">Where a braid's tail leaves its cores; null for a wire.</param>
internal sealed record Strand(
    string Wire,
    ImmutableArray<string> Lugs,
    bool IsCore,
    double CoreWidth,
    DrawnPath Path,
    Spot? Root
)
{
    public ImmutableArray<Segment> Segments { get; } =
    [.. Path.Points.Zip(Path.Points.Skip(1), (a, b) => new Segment(a, b))];

    public double Length => Segments.Sum(segment => segment.Length);

    public double LowerBound => Path.First.ManhattanTo(Path.Last);

    /// <summary>The turn at each corner in radians, from 0 to π.</summary>
    public IEnumerable<double> Turns =>
        Segments.Zip(
            Segments.Skip(1),
            (before, after) =>
                Math.Atan2(Math.Abs(before.Direction.Cross(after.Direction)), before.Direction.Dot(after.Direction))
        );

    public double DistanceTo(Spot spot) => Segments.Min(segment => segment.DistanceTo(spot));

    public bool EndsOn(string lug) => Lugs.Contains(lug, StringComparer.Ordinal);
}

/// <summary>All strands, and which of their segments lie near a place.</summary>
internal sealed class StrandMap
{
    private readonly BoxIndex index;

    public StrandMap(ImmutableArray<Strand> strands, WorkLimit work)
    {
        Work = work;
        index = new BoxIndex(work);
        Strands = strands;
        var segments = ImmutableArray.CreateBuilder<PlacedSegment>();
        for (var strand = 0; strand < strands.Length; strand++)
        {
            for (var i = 0; i < strands[strand].Segments.Length; i++)
            {
                index.Add(segments.Count, strands[strand].Segments[i]);
                segments.Add(new PlacedSegment(strand, i, strands[strand].Segments[i]));
            }
        }

        Segments = segments.ToImmutable();
    }

    public WorkLimit Work { get; }

    public ImmutableArray<Strand> Strands { get; }

    public ImmutableArray<PlacedSegment> Segments { get; }

    /// <summary>Segments that may be within a distance of this one, in order.</summary>
    public IEnumerable<PlacedSegment> Near(Segment segment, double distance) =>
        index.Near(segment, distance).Select(number => Segments[number]);

    /// <summary>Segments that may touch the box, in order.</summary>
    public IEnumerable<PlacedSegment> Near(Frame frame) => index.Near(frame).Select(number => Segments[number]);
}

/// <param name="Strand">Index into <see cref="StrandMap.Strands"/>.</param>
/// <param name="Place">Index into the strand's segments.</param>
internal readonly record struct PlacedSegment(int Strand, int Place, Segment Line);
