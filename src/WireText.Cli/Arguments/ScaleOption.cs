using System.CommandLine;
using WireText.Cli.Hosting;

namespace WireText.Cli.Arguments;

/// <summary><c>--scale</c>: how large a drawing is on paper.</summary>
internal sealed class ScaleOption : Option<string?>
{
    public ScaleOption()
        : base("--scale")
    {
        Description = "Paper to real thing (1:1): SVG and PDF print true to size";
        HelpName = "N:M";
    }

    /// <summary>Millimetres of paper for a millimetre of the real thing.</summary>
    /// <exception cref="CannotException">It is no scale.</exception>
    public double In(ParseResult parsed) => parsed.GetValue(this) is { } ratio ? ScaleRatio.Read(ratio) : 1;
}
