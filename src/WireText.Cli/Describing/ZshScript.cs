using System.Text;

namespace WireText.Cli.Describing;

/// <summary>Writes what tells zsh how to complete a command line of the program.</summary>
internal static class ZshScript
{
    public static string Write(ProgramShape program)
    {
        var script = new StringBuilder();
        var commands = program.Commands.Select(command => Described(command.Name, command.Summary));
        script.Append(
            $$"""
            #compdef {{program.Name}}
            # Completion of {{program.Name}} for zsh, written by: {{program.Name}} completions zsh
            _{{program.Name}}() {
              local word=${words[CURRENT]} before=${words[CURRENT-1]} command=${words[2]}
              local -a offered
              if (( CURRENT == 2 )); then
                offered=({{string.Join(' ', commands)}})
                _describe -t commands command offered
                return
              fi
              case "$command $before" in

            """
        );
        foreach (var command in program.Commands)
        {
            foreach (var option in command.Options.Where(option => option.Value is not null))
            {
                var named = option.Names.Select(name => $"{command.Name} {name}");
                script.Append($"    {ShellText.AnyOf(named)}) {Offer(option.Follows)}; return ;;\n");
            }
        }

        script.Append("  esac\n  case \"$command $word\" in\n");
        foreach (var command in program.Commands)
        {
            var options = command.Options.SelectMany(option =>
                option.Names.Select(name => Described(name, option.About))
            );
            script.Append(
                $"    {ShellText.Quote(command.Name + " -")}*) offered=({string.Join(' ', options)}); _describe -o option offered ;;\n"
            );
        }

        foreach (var command in program.Commands.Where(command => !command.Arguments.IsEmpty))
        {
            script.Append($"    {ShellText.Quote(command.Name + " ")}*) {Offer(command.Arguments[0].Follows)} ;;\n");
        }

        script.Append(
            $$"""
              esac
            }
            if [ "$funcstack[1]" = _{{program.Name}} ]; then
              _{{program.Name}} "$@"
            else
              compdef _{{program.Name}} {{program.Name}}
            fi

            """
        );
        return script.ToString();
    }

    /// <summary>A word and what it does, with a colon between them.</summary>
    private static string Described(string word, string about) =>
        ShellText.Quote($"{word}:{about.Replace(":", "\\:", StringComparison.Ordinal)}");

    private static string Offer(Following following) =>
        following.Kind switch
        {
            FollowingKind.Words => $"compadd -- {ShellText.QuoteEach(following.Words)}",
            FollowingKind.Files => "_files",
            FollowingKind.Folders => "_files -/",
            _ => ":",
        };
}
