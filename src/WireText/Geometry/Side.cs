namespace WireText.Geometry;

public enum Side
{
    North,
    East,
    South,
    West,
}
