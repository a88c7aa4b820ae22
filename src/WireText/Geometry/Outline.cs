namespace WireText.Geometry;

/// <summary>A solid shape in a frame, in millimetres.</summary>
public abstract record Outline
{
    private Outline() { }

    /// <summary>The smallest box that holds it.</summary>
    public abstract Box Bounds { get; }

    /// <summary>How deep a point lies inside; negative outside.</summary>
    public abstract double Depth(Point at);

    public abstract Outline Shifted(Point by);

    /// <summary>Where it comes to when its frame is turned round 0,0.</summary>
    /// <param name="turn">0, 90, 180 or 270 degrees, clockwise.</param>
    public abstract Outline Turned(int turn);

    /// <summary>So much larger on every side.</summary>
    public abstract Outline Grown(double by);

    public sealed record Circle(Point Centre, double Radius) : Outline
    {
        public override Box Bounds => Box.Around(Centre, 2 * Radius, 2 * Radius);

        public override double Depth(Point at) => Radius - Point.Distance(Centre, at);

        public override Outline Shifted(Point by) => new Circle(by + Centre, Radius);

        public override Outline Turned(int turn) => new Circle(Centre.Turned(turn), Radius);

        public override Outline Grown(double by) => new Circle(Centre, Radius + by);
    }

    public sealed record Rectangle(Box Box) : Outline
    {
        public override Box Bounds => Box;

        public override double Depth(Point at) => Box.Depth(at);

        public override Outline Shifted(Point by) => new Rectangle(Box.Shifted(by));

        public override Outline Turned(int turn) => new Rectangle(Box.Turned(turn));

        public override Outline Grown(double by) => new Rectangle(Box.Grown(by));
    }
}
