namespace WireText.Geometry;

/// <summary>A solid shape in a frame, in millimetres.</summary>
public abstract record Outline
{
    public sealed record Circle(Point Centre, double Radius) : Outline;

    public sealed record Rectangle(Box Box) : Outline;
}
