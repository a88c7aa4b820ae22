using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces;

/// <summary>The main outline of a part, centred on its hole, and where a point lies to it.</summary>
internal abstract record FaceBody
{
    public static FaceBody Of(BodyShape shape) =>
        shape switch
        {
            BodyShape.Round round => new Round(FaceSizes.Clamp(round.Diameter) / 2),
            BodyShape.Box box => new Rectangle(FaceSizes.Clamp(box.Width), FaceSizes.Clamp(box.Height)),
            _ => throw new NotSupportedException($"no such body: {shape.GetType().Name}"),
        };

    /// <summary>Half of its width and of its height.</summary>
    public abstract Size Half { get; }

    public abstract Outline Outline { get; }

    /// <summary>Millimetres from a point to the edge in a direction; negative when the point is past that edge.</summary>
    public abstract double DepthTowards(Side side, Point at);

    /// <summary>True when the straight way from a point outside to a side leads through the body.</summary>
    public abstract bool IsInTheWay(Side side, Point at);

    public abstract bool Contains(Point at, double inset);

    public bool Contains(Box box, double inset) =>
        Contains(new Point(box.X, box.Y), inset)
        && Contains(new Point(box.Right, box.Y), inset)
        && Contains(new Point(box.X, box.Bottom), inset)
        && Contains(new Point(box.Right, box.Bottom), inset);

    public sealed record Round(double Radius) : FaceBody
    {
        public override Size Half => new(Radius, Radius);

        public override Outline Outline => new Outline.Circle(default, Radius);

        public override double DepthTowards(Side side, Point at)
        {
            var (along, across) = side.Split(at);
            var half = (Radius * Radius) - (across * across);
            return half <= 0 ? double.NegativeInfinity : Math.Sqrt(half) - along;
        }

        public override bool IsInTheWay(Side side, Point at) => DepthTowards(side, at) > 0;

        public override bool Contains(Point at, double inset) =>
            (at.X * at.X) + (at.Y * at.Y) <= (Radius - inset) * (Radius - inset);
    }

    public sealed record Rectangle(double Width, double Height) : FaceBody
    {
        public override Size Half => new(Width / 2, Height / 2);

        public override Outline Outline => new Outline.Rectangle(Box.Around(default, Width, Height));

        public override double DepthTowards(Side side, Point at) =>
            side switch
            {
                Side.North => at.Y + (Height / 2),
                Side.East => (Width / 2) - at.X,
                Side.South => (Height / 2) - at.Y,
                _ => at.X + (Width / 2),
            };

        public override bool IsInTheWay(Side side, Point at)
        {
            var isUpright = side is Side.North or Side.South;
            var isBeside = isUpright ? Math.Abs(at.X) >= Width / 2 : Math.Abs(at.Y) >= Height / 2;
            return !isBeside && DepthTowards(side, at) > 0;
        }

        public override bool Contains(Point at, double inset) =>
            Math.Abs(at.X) <= (Width / 2) - inset && Math.Abs(at.Y) <= (Height / 2) - inset;
    }
}
