using System.Text;

namespace WireText.Cli.Describing;

/// <summary>Writes what tells bash how to complete a command line of the program.</summary>
internal static class BashScript
{
    public static string Write(ProgramShape program)
    {
        var script = new StringBuilder();
        script.Append(
            $$"""
            # Completion of {{program.Name}} for bash, written by: {{program.Name}} completions bash
            _{{program.Name}}() {
              local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} command=${COMP_WORDS[1]} IFS=$'\n'
              COMPREPLY=()
              if [ "$COMP_CWORD" -eq 1 ]; then
                {{Offer(
                program.Commands.Select(command => command.Name).Concat(
                    program.Options.SelectMany(option => option.Names)
                )
            )}}
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
            var names = command.Options.SelectMany(option => option.Names);
            script.Append($"    {ShellText.Quote(command.Name + " -")}*) {Offer(names)} ;;\n");
        }

        foreach (var command in program.Commands.Where(command => !command.Arguments.IsEmpty))
        {
            script.Append($"    {ShellText.Quote(command.Name + " ")}*) {Offer(command.Arguments[0].Follows)} ;;\n");
        }

        script.Append($"  esac\n}}\ncomplete -F _{program.Name} {program.Name}\n");
        return script.ToString();
    }

    private static string Offer(Following following) =>
        following.Kind switch
        {
            FollowingKind.Words => Offer(following.Words),
            FollowingKind.Files => Named("-f"),
            FollowingKind.Folders => Named("-d"),
            _ => ":",
        };

    private static string Offer(IEnumerable<string> words) =>
        $"COMPREPLY=($(compgen -W $'{string.Join("\\n", words)}' -- \"$word\"))";

    private static string Named(string what) =>
        $"compopt -o filenames 2>/dev/null; COMPREPLY=($(compgen {what} -- \"$word\"))";
}
