using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Documents;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Raster;

namespace WireText.Cli.Commands;

/// <summary>What <c>draw</c> was asked for.</summary>
/// <param name="Target">Where the picture goes; null where it is only measured.</param>
/// <param name="Scale">Millimetres of paper for a millimetre of the real thing.</param>
/// <param name="Paper">What a PDF is printed on; null for a page as large as the drawing.</param>
/// <param name="IsFitted">True for one page of that paper.</param>
/// <param name="Trace">The lug or the state to follow; null for none.</param>
/// <param name="IsClean">True for a picture without what is for the bench.</param>
/// <param name="Against">The earlier wiring that changes are shown against; null for none.</param>
internal sealed record DrawRequest(
    string Source,
    string? Target,
    OutputFormat Format,
    double Scale,
    Paper? Paper,
    bool IsFitted,
    PngOptions Png,
    bool IsMeasured,
    LayoutEffort Effort,
    Theme Theme,
    string? Trace,
    bool HasViews,
    string? Against,
    bool IsClean
)
{
    /// <summary>One place cannot take two things.</summary>
    public void RefuseConfusion()
    {
        if (Paper is not null && Format != OutputFormat.Pdf)
        {
            throw new CannotException(PaperOption.ForPdfAlone);
        }

        if (IsFitted && Paper is null)
        {
            throw new CannotException("--fit fits the drawing on paper; say which with --paper");
        }

        if (HasViews && (Trace is not null || IsMeasured))
        {
            throw new CannotException("--views draws its own traces and cannot be measured; leave the other out");
        }

        if (Against is not null && (Trace is not null || HasViews || IsMeasured))
        {
            throw new CannotException("--against shows what changes; leave --trace, --views and --measure out");
        }

        if (IsMeasured && Target == StandardStream.Name)
        {
            throw new CannotException(
                "the picture and its measure cannot both go to standard output; name a file with -o"
            );
        }
    }
}
