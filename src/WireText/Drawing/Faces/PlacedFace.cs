using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>A part's face in its place.</summary>
internal sealed record PlacedFace(Face Face, PlacedPart Placed)
{
    public int Index => Face.Part;

    public Point OnPage(Point own) => Placed.Pose.OnPage(own);

    public Box OnPage(Box own) => Placed.Pose.OnPage(own);

    public Side OnPage(Side own) => Placed.Pose.OnPage(own);

    public Outline OnPage(Outline own) => Placed.Pose.OnPage(own);

    /// <summary>Where a lug outside the body comes out of it, in the part's own frame: a little inside its edge.</summary>
    public Point RootOf(FaceLug lug)
    {
        var bounds = Face.Layout.Body[0].Bounds;
        return lug.Outward switch
        {
            Side.North => new Point(lug.At.X, Math.Max(bounds.Y, lug.At.Y) + Tokens.EyeletDiameter),
            Side.South => new Point(lug.At.X, Math.Min(bounds.Bottom, lug.At.Y) - Tokens.EyeletDiameter),
            Side.East => new Point(Math.Min(bounds.Right, lug.At.X) - Tokens.EyeletDiameter, lug.At.Y),
            _ => new Point(Math.Max(bounds.X, lug.At.X) + Tokens.EyeletDiameter, lug.At.Y),
        };
    }

    /// <summary>The radius of the barrel that a jack's plug goes into.</summary>
    public double BarrelRadius
    {
        get
        {
            var body = Face.Layout.Body[0].Bounds;
            return Math.Min(body.Width, body.Height) * 0.2;
        }
    }

    /// <summary>The springs of a jack, each from its lug: the tip's is the long one, right across the barrel.</summary>
    public IEnumerable<Segment> Springs()
    {
        var centre = Face.Layout.Body[0].Bounds.Centre;
        foreach (var lug in Face.Lugs)
        {
            var isTip = string.Equals(lug.Label, "tip", StringComparison.OrdinalIgnoreCase);
            var reach = Point.Distance(lug.At, centre) + (BarrelRadius * (isTip ? 1.9 : -1));
            if (reach > 0)
            {
                yield return new Segment(OnPage(lug.At), OnPage(lug.At.Towards(centre, reach)));
            }
        }
    }

    /// <summary>A pot's board as it is drawn: it reaches under the eyelets, while a wire may still come to them from the side.</summary>
    public static Box WaferOf(Box board) =>
        board with
        {
            Y = board.Y < 0 ? board.Y - Tokens.WaferReach : board.Y,
            Height = board.Height + Tokens.WaferReach,
        };

    /// <summary>The lines of its body and boards, on the page, as they are drawn.</summary>
    public IEnumerable<Outline> DrawnOutlines()
    {
        yield return OnPage(Face.Layout.Body[0]);
        foreach (var board in Face.Layout.Body.Skip(1).OfType<Outline.Rectangle>())
        {
            yield return new Outline.Rectangle(OnPage(WaferOf(board.Box)));
        }
    }

    /// <summary>What the body takes up on the page.</summary>
    public Box Bounds =>
        Face
            .Layout.Body.Select(outline => OnPage(outline).Bounds)
            .DefaultIfEmpty(new Box(Placed.At.X, Placed.At.Y, 0, 0))
            .Aggregate(Box.Union);
}
