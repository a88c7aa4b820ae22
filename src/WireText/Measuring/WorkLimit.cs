namespace WireText.Measuring;

/// <summary>Counts steps of work, so that a hostile drawing ends in an error and not in a hang.</summary>
internal sealed class WorkLimit
{
    /// <summary>A drawing of 2,000 wires takes a few percent of this.</summary>
    internal const long Most = 10_000_000;

    private long done;

    /// <exception cref="UnreadablePictureException">It was too much.</exception>
    public void Spend(long steps)
    {
        done += steps;
        if (done > Most)
        {
            throw new UnreadablePictureException("the drawing is too crowded to measure");
        }
    }
}
