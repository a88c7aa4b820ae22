using System.Text;

namespace WireText.Cli.Describing;

/// <summary>Writes what tells fish how to complete a command line of the program.</summary>
internal static class FishScript
{
    public static string Write(ProgramShape program)
    {
        var script = new StringBuilder();
        script.Append($"# Completion of {program.Name} for fish, written by: {program.Name} completions fish\n");
        script.Append($"complete -c {program.Name} -f\n");
        foreach (var command in program.Commands)
        {
            Append(script, program, "__fish_use_subcommand", $"-a {command.Name}", command.Summary);
            var within = $"__fish_seen_subcommand_from {command.Name}";
            foreach (var option in command.Options)
            {
                var names = option.Names.Select(name =>
                    name.StartsWith("--", StringComparison.Ordinal) ? $"-l {name[2..]}" : $"-s {name[1..]}"
                );
                Append(script, program, within, $"{string.Join(' ', names)}{ValueOf(option)}", option.About);
            }

            foreach (var argument in command.Arguments.Take(1).Where(one => one.Follows.Kind != FollowingKind.Nothing))
            {
                Append(script, program, within, Offer(argument.Follows), argument.About);
            }
        }

        return script.ToString();
    }

    private static void Append(StringBuilder script, ProgramShape program, string when, string what, string about) =>
        script.Append($"complete -c {program.Name} -n {Quote(when)} {what} -d {Quote(about)}\n");

    private static string ValueOf(OptionShape option) => option.Value is null ? "" : $" -r {Offer(option.Follows)}";

    private static string Offer(Following following) =>
        following.Kind switch
        {
            FollowingKind.Words => $"-f -a {Quote(string.Join(' ', following.Words))}",
            FollowingKind.Files => "-F",
            FollowingKind.Folders => "-f -a '(__fish_complete_directories)'",
            _ => "-f",
        };

    /// <summary>In single quotes of fish, a backslash stands before a quote and before itself.</summary>
    private static string Quote(string text) =>
        $"'{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal)}'";
}
