namespace WireText.Geometry;

/// <summary>A width and a height in millimetres.</summary>
public readonly record struct Size(double Width, double Height);
