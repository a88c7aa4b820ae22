namespace WireText.Frames;

/// <summary>How long a frame may stand: to look, and to read its words.</summary>
internal static class FrameTime
{
    /// <summary>Words that are read aloud, or by who looks at the picture too: about 150 a minute. From memory; common practice.</summary>
    private const double WordsASecond = 2.5;

    /// <summary>To find the place first. Chosen.</summary>
    private const double ToLook = 1;

    private const double Shortest = 2.5;

    /// <summary>In seconds, rounded up to halves.</summary>
    public static double Of(string caption)
    {
        var words = caption.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length;
        return Math.Max(Shortest, Math.Ceiling((ToLook + (words / WordsASecond)) * 2) / 2);
    }
}
