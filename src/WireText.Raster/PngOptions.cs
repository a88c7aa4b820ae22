namespace WireText.Raster;

/// <summary>How large a PNG becomes, and on what ground.</summary>
public sealed record PngOptions
{
    /// <summary>Dots per inch of paper; used when <see cref="WidthPixels"/> is null, and recorded in the file either way.</summary>
    public double Dpi { get; init; } = 200;

    /// <summary>The exact width in pixels; the height follows, rounded up.</summary>
    public int? WidthPixels { get; init; }

    /// <summary>Leaves the paper out.</summary>
    public bool IsTransparent { get; init; }
}

/// <summary>A picture cannot be made in the size that was asked for; the message says why and what would do.</summary>
public sealed class PictureSizeException : Exception
{
    public PictureSizeException() { }

    public PictureSizeException(string message)
        : base(message) { }

    public PictureSizeException(string message, Exception inner)
        : base(message, inner) { }
}
