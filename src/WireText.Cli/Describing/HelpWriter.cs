using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Invocation;
using WireText.Cli.Hosting;

namespace WireText.Cli.Describing;

/// <summary>
/// What <c>--help</c> shows: the commands of the program, a line or two each, or all that one command takes. The same on
/// every terminal and in a file, <see cref="HelpColumns.Widest"/> columns at most.
/// </summary>
internal sealed class HelpWriter(TextWriter output, ImmutableArray<CommandGroup> groups) : SynchronousCommandLineAction
{
    /// <summary>Who asks for help has not finished the line.</summary>
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var root = parseResult.RootCommandResult.Command;
        var asked = parseResult.CommandResult.Command;
        var program = ProgramShape.Of((RootCommand)root);
        output.Write(
            asked == root ? OfProgram(program) : OfCommand(program, program.Commands.Single(c => c.Name == asked.Name))
        );
        return ExitCode.Right;
    }

    private string OfProgram(ProgramShape program)
    {
        var text = new HelpColumns();
        text.Paragraphs(program.About);
        text.Heading("Usage");
        text.Line($"{program.Name} COMMAND [options]");
        var widest = program.Commands.Max(command => command.Name.Length);
        foreach (var group in groups)
        {
            text.Heading(group.Heading);
            foreach (var name in group.Commands.Select(command => command.Name))
            {
                text.Row(name, program.Commands.Single(command => command.Name == name).Summary, widest);
            }
        }

        text.Heading("What a command takes, and an example");
        text.Line($"{program.Name} help draw");
        return text.ToString();
    }

    private static string OfCommand(ProgramShape program, CommandShape command)
    {
        var text = new HelpColumns();
        text.Paragraphs(command.About);
        text.Heading("Usage");
        text.Line(
            string.Join(' ', [program.Name, command.Name, .. command.Arguments.Select(one => one.Use), "[options]"])
        );
        text.Heading("Example");
        foreach (var example in command.Examples)
        {
            text.Line(example);
        }

        if (!command.Arguments.IsEmpty)
        {
            text.Heading("Arguments");
            text.Rows(command.Arguments.Select(argument => (argument.Name, argument.About)));
        }

        text.Heading("Options");
        text.Rows(command.Options.Concat(program.Options.Where(IsHelp)).Select(option => (option.Use, option.About)));
        return text.ToString();
    }

    private static bool IsHelp(OptionShape option) => option.Names[0] == "--help";
}
