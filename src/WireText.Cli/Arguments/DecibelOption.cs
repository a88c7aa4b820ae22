using System.CommandLine;
using System.Globalization;
using WireText.Cli.Hosting;

namespace WireText.Cli.Arguments;

/// <summary>An option that takes a level in dB between two limits.</summary>
internal sealed class DecibelOption : Option<string?>
{
    private readonly double least;
    private readonly double most;
    private readonly double usual;

    public DecibelOption(string name, double least, double most, double usual, string description)
        : base(name)
    {
        (this.least, this.most, this.usual) = (least, most, usual);
        HelpName = "DB";
        Description = description;
    }

    /// <exception cref="CannotException">It is no number, or not within the limits.</exception>
    public double In(ParseResult parsed)
    {
        if (parsed.GetValue(this) is not { } text)
        {
            return usual;
        }

        var isNumber = double.TryParse(
            text.EndsWith("dB", StringComparison.OrdinalIgnoreCase) ? text[..^2] : text,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var level
        );
        return isNumber && level >= least && level <= most
            ? level
            : throw new CannotException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Name} takes a level from {least} to {most} dB, such as {usual}"
                )
            );
    }
}
