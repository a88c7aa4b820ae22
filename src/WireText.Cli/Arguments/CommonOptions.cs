using System.CommandLine;
using WireText.Cli.Hosting;

namespace WireText.Cli.Arguments;

/// <summary>Arguments that several commands share.</summary>
internal static class CommonOptions
{
    public static Argument<string[]> ManyFiles() =>
        new("FILE") { Description = "Wiring files; - is standard input", Arity = ArgumentArity.OneOrMore };

    /// <summary>How a state is written on the command line.</summary>
    public const string StateForm = "CONTROL=POSITION,...";

    public static Argument<string> OneFile() => new("FILE") { Description = "A wiring file; - is standard input" };

    /// <summary>A target that is standard output when it is not given.</summary>
    public static Option<string> Output(string what) =>
        new("--output", "-o") { Description = $"Where {what} goes; without it: standard output", HelpName = "OUT" };

    public static Option<string[]> PartsFolders() =>
        new("--parts")
        {
            Description = "A folder from which files may include parts; may be given again",
            HelpName = "DIR",
        };

    public static Option<string> Choice(string name, string description, params string[] words)
    {
        var option = new Option<string>(name)
        {
            Description = description,
            DefaultValueFactory = _ => words[0],
            HelpName = string.Join('|', words),
        };
        return option.AcceptOnlyFromAmong(words);
    }

    public static int? InRange(int? value, int most, string option) =>
        value is < 1 || value > most
            ? throw new CannotException($"{option} takes a whole number from 1 to {most}")
            : value;
}
