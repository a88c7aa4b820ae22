using System.Collections.Immutable;
using System.CommandLine;
using WireText.Cli.Hosting;
using WireText.Raster;

namespace WireText.Cli.Arguments;

/// <summary>What only a PNG has: its size in pixels and its ground.</summary>
internal sealed class PngArguments
{
    private const int MostDpi = 2400;

    private readonly WholeNumberOption width = CommonOptions.Width();
    private readonly WholeNumberOption dpi = new("--dpi", MostDpi, "N", "Pixels to the inch of a PNG (200)");
    private readonly Option<bool> transparent = new("--transparent") { Description = "No background in a PNG" };

    /// <summary>The options that say how large it is.</summary>
    public ImmutableArray<Option> Sizes => [width, dpi];

    public void AddTo(Command command)
    {
        command.Add(width);
        command.Add(dpi);
        command.Add(transparent);
    }

    /// <exception cref="CannotException">One of them was given for another format.</exception>
    public void RefuseFor(OutputFormat format, ParseResult parsed)
    {
        Option[] all = [width, dpi, transparent];
        if (
            format != OutputFormat.Png
            && all.FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false }) is { } given
        )
        {
            throw new CannotException($"{given.Name} is for a PNG; add --format png or name a .png with -o");
        }
    }

    /// <exception cref="CannotException">Its size is given twice, or is none.</exception>
    public PngOptions In(ParseResult parsed)
    {
        var (pixels, toTheInch) = (width.In(parsed), dpi.In(parsed));
        return pixels is not null && toTheInch is not null
            ? throw new CannotException("--width and --dpi both say how large a PNG is; leave one out")
            : new PngOptions
            {
                WidthPixels = pixels,
                Dpi = toTheInch ?? new PngOptions().Dpi,
                IsTransparent = parsed.GetValue(transparent),
            };
    }
}
