using System.CommandLine;

namespace WireText.Cli;

/// <summary>Arguments that several commands share.</summary>
internal static class CommonOptions
{
    public static Argument<string[]> ManyFiles() =>
        new("FILE") { Description = "Wiring files; - is standard input", Arity = ArgumentArity.OneOrMore };

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
}
