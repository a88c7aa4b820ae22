namespace WireText.Measuring;

/// <summary>Something that a reader of the drawing may take for something else, and what is concerned.</summary>
/// <param name="Second">What it may be taken for or with; null where one thing alone is in doubt.</param>
public readonly record struct PictureDoubt(DoubtKind Kind, DrawnThing First, DrawnThing? Second = null)
{
    public override string ToString() => Second is { } second ? $"{Kind}: {First} {second}" : $"{Kind}: {First}";
}
