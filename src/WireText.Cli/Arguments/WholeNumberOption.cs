using System.CommandLine;
using WireText.Cli.Hosting;

namespace WireText.Cli.Arguments;

/// <summary>An option that takes a whole number from 1 up to a limit.</summary>
internal sealed class WholeNumberOption : Option<int?>
{
    private readonly int most;

    public WholeNumberOption(string name, int most, string unit, string description)
        : base(name)
    {
        this.most = most;
        HelpName = unit;
        Description = description;
    }

    /// <summary>The number; null when it was not given.</summary>
    /// <exception cref="CannotException">It is not within the limits.</exception>
    public int? In(ParseResult parsed)
    {
        var value = parsed.GetValue(this);
        return value is < 1 || value > most
            ? throw new CannotException($"{Name} takes a whole number from 1 to {most}")
            : value;
    }
}
