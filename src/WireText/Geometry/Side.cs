namespace WireText.Geometry;

/// <summary>A side of a part or of the page, clockwise from the upper one.</summary>
public enum Side
{
    North,
    East,
    South,
    West,
}

public static class SideDirections
{
    /// <param name="turn">0, 90, 180 or 270 degrees, clockwise.</param>
    public static Side Turned(this Side side, int turn) => (Side)(((int)side + (turn / 90)) % 4);

    /// <summary>So many millimetres to that side.</summary>
    public static Point Towards(this Side side, double by) =>
        side switch
        {
            Side.North => new Point(0, -by),
            Side.East => new Point(by, 0),
            Side.South => new Point(0, by),
            _ => new Point(-by, 0),
        };

    /// <summary>An offset as seen by who looks to that side: how far it goes there, and how far across.</summary>
    public static (double Along, double Across) Split(this Side side, Point offset) =>
        side switch
        {
            Side.North => (-offset.Y, offset.X),
            Side.East => (offset.X, offset.Y),
            Side.South => (offset.Y, offset.X),
            _ => (-offset.X, offset.Y),
        };

    /// <summary>The side that an offset points to most.</summary>
    public static Side Of(Point offset) =>
        Math.Abs(offset.X) > Math.Abs(offset.Y) ? (offset.X > 0 ? Side.East : Side.West)
        : offset.Y > 0 ? Side.South
        : Side.North;
}
