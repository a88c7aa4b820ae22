using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>A part's face in its place.</summary>
public sealed record PlacedFace(Face Face, PlacedPart Placed)
{
    /// <summary>Index into <see cref="Circuits.Circuit.Parts"/>.</summary>
    public int Index => Face.Part;

    /// <summary>The body itself, without boards, in the part's own frame.</summary>
    public Outline MainOutline => Face.Layout.Body[0];

    public Point OnPage(Point own) => Placed.Pose.OnPage(own);

    public Box OnPage(Box own) => Placed.Pose.OnPage(own);

    public Side OnPage(Side own) => Placed.Pose.OnPage(own);

    public Outline OnPage(Outline own) => Placed.Pose.OnPage(own);

    /// <summary>Where a lug outside the body comes out of it, in the part's own frame: a little inside its edge.</summary>
    public Point RootOf(FaceLug lug)
    {
        var bounds = MainOutline.Bounds;
        return lug.Outward switch
        {
            Side.North => new Point(lug.At.X, Math.Max(bounds.Y, lug.At.Y) + Tokens.EyeletDiameter),
            Side.South => new Point(lug.At.X, Math.Min(bounds.Bottom, lug.At.Y) - Tokens.EyeletDiameter),
            Side.East => new Point(Math.Min(bounds.Right, lug.At.X) - Tokens.EyeletDiameter, lug.At.Y),
            _ => new Point(Math.Max(bounds.X, lug.At.X) + Tokens.EyeletDiameter, lug.At.Y),
        };
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
        yield return OnPage(MainOutline);
        foreach (var board in Face.Layout.Body.Skip(1).OfType<Outline.Rectangle>())
        {
            yield return new Outline.Rectangle(OnPage(WaferOf(board.Box)));
        }
    }

    /// <summary>A point on the line of the body, on the page: 1, -1 is its upper right corner, or where a round body comes nearest to it.</summary>
    public Point RimAt(int x, int y)
    {
        // A circle comes to within (1 - 1/√2) / 2 of its width of the corners of its box.
        const double OffTheCorner = 0.146;
        var bounds = Bounds;
        var inset = x != 0 && y != 0 && MainOutline is Outline.Circle ? bounds.Width * OffTheCorner : 0;
        return new Point(
            bounds.Centre.X + (x * ((bounds.Width / 2) - inset)),
            bounds.Centre.Y + (y * ((bounds.Height / 2) - inset))
        );
    }

    /// <summary>What the body takes up on the page.</summary>
    public Box Bounds =>
        Face
            .Layout.Body.Select(outline => OnPage(outline).Bounds)
            .DefaultIfEmpty(new Box(Placed.At.X, Placed.At.Y, 0, 0))
            .Aggregate(Box.Union);
}
