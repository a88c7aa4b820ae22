namespace WireText.Measuring;

/// <summary>Something that no drawing may have, and what is concerned.</summary>
/// <param name="Second">What must keep apart from the first and does not; null where one thing alone is wrong.</param>
public readonly record struct PictureFault(FaultKind Kind, DrawnThing First, DrawnThing? Second = null)
{
    /// <summary>Two things in the ordinal order of their names, so that a pair has one form.</summary>
    internal static PictureFault OfPair(FaultKind kind, DrawnThing one, DrawnThing two) =>
        string.CompareOrdinal(one.ToString(), two.ToString()) <= 0 ? new(kind, one, two) : new(kind, two, one);

    public override string ToString() => Second is { } second ? $"{Kind}: {First} {second}" : $"{Kind}: {First}";
}
