using System.CommandLine;

namespace WireText.Cli.Arguments;

/// <summary><c>--seed</c>: what all that looks random follows from.</summary>
internal sealed class SeedOption : Option<ulong>
{
    public SeedOption(ulong usual)
        : base("--seed")
    {
        Description = "The number that the run follows from: the same seed, the same instruments";
        HelpName = "NUMBER";
        DefaultValueFactory = _ => usual;
    }
}
