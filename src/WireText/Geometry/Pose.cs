namespace WireText.Geometry;

/// <summary>Where a part is: its hole on the page in millimetres, and its turn of 0, 90, 180 or 270 degrees clockwise.</summary>
public readonly record struct Pose(Point At, int Turn)
{
    public Point OnPage(Point own) => At + own.Turned(Turn);

    public Box OnPage(Box own) => own.Turned(Turn).Shifted(At);

    public Outline OnPage(Outline own) => own.Turned(Turn).Shifted(At);

    public Side OnPage(Side own) => own.Turned(Turn);
}
