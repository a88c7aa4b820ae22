namespace WireText.Geometry;

/// <summary>An upright rectangle: its top left corner and its size, in millimetres.</summary>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public Point Centre => new(X + (Width / 2), Y + (Height / 2));

    public static Box Around(Point centre, double width, double height) =>
        new(centre.X - (width / 2), centre.Y - (height / 2), width, height);
}
