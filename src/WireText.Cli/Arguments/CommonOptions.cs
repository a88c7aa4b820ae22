using System.CommandLine;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Raster;

namespace WireText.Cli.Arguments;

/// <summary>Arguments and options that several commands have, declared once.</summary>
internal static class CommonOptions
{
    public static Argument<string> OneFile() => new("FILE") { Description = "A wiring file; - is standard input" };

    public static Argument<string[]> ManyFiles(string what) =>
        new("FILE") { Description = $"{what}; - is standard input", Arity = ArgumentArity.OneOrMore };

    /// <summary>A target that is standard output when it is not given.</summary>
    public static Option<string?> Output(string what) => OutputTo($"Where {what} goes; without it: standard output");

    public static Option<string?> OutputTo(string description) =>
        new("--output", "-o") { Description = description, HelpName = "OUT" };

    /// <summary>A state, or several where it may be given again.</summary>
    /// <param name="more">What is done without it, or with each.</param>
    public static Option<T> At<T>(string more) =>
        new("--at")
        {
            Description = $"Where controls and dials stand, such as sel=neck,vol=7; {more}",
            HelpName = "CONTROL=POSITION,...",
        };

    public static ChoiceOption<Theme> Theme(string what) =>
        new(
            "--theme",
            $"The colours of the {what}",
            [.. Drawing.Lettering.Theme.All.Select(theme => (theme.Name, theme))]
        );

    public static ChoiceOption<LayoutEffort> Effort() =>
        new(
            "--effort",
            "How long the layout looks for a plainer picture",
            ("full", LayoutEffort.Full),
            ("quick", LayoutEffort.Quick)
        );

    public static WholeNumberOption Width() =>
        new("--width", PngRenderer.LongestSide, "PX", "Width of a PNG in pixels");
}
