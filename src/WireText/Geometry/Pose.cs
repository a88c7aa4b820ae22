namespace WireText.Geometry;

/// <summary>Where a part is: its hole on the page in millimetres, and its turn of 0, 90, 180 or 270 degrees clockwise.</summary>
internal readonly record struct Pose(Point At, int Turn)
{
    public Point OnPage(Point own) => At + Shapes.Turned(own, Turn);

    public Box OnPage(Box own) => Shapes.Shifted(Shapes.Turned(own, Turn), At);

    public Outline OnPage(Outline own) => Shapes.OnPage(own, At, Turn);

    public Side OnPage(Side own) => Shapes.Turned(own, Turn);
}
