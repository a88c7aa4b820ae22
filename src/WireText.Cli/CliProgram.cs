using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Help;
using WireText.Cli.Arguments;
using WireText.Cli.Commands;
using WireText.Cli.Describing;
using WireText.Cli.Hosting;
using WireText.Cli.Running;

namespace WireText.Cli;

/// <summary>The command line: arguments become one call to the core, and what comes back is shown.</summary>
public static class CliProgram
{
    private const string About = """
        Reads guitar wiring written as text, checks it and draws it.

        Exit code: 0 right, 1 errors found (with --strict also warnings), 2 not done.

        A file named - is standard input.
        """;

    public static int Run(string[] args, ICliHost host) => CliRun.Of(host, context => Run(args, context));

    private static int Run(string[] args, CliContext context)
    {
        if (args is ["--version"])
        {
            context.Output.WriteLine(ProgramVersion.Text);
            return ExitCode.Right;
        }

        if (args.Length == 0)
        {
            CommandLine.Invoke(Commands(context, context.Error), ["--help"], context);
            return ExitCode.CouldNot;
        }

        return CommandLine.Invoke(Commands(context, context.Data), args, context);
    }

    /// <param name="help">Where help goes when it is asked for.</param>
    private static RootCommand Commands(CliContext context, TextWriter help)
    {
        ImmutableArray<CommandGroup> groups =
        [
            new(
                "To write a wiring",
                [
                    new NewCommand(context),
                    new WatchCommand(context),
                    new LanguageServerCommand(context),
                    new PartsCommand(context),
                    new FormatCommand(context),
                    new FlattenCommand(context),
                ]
            ),
            new(
                "To prove it",
                [
                    new CheckCommand(context),
                    new ExplainCommand(context),
                    new PositionsCommand(context),
                    new ResponseCommand(context),
                    new SpreadCommand(context),
                    new ListenCommand(context),
                    new CompareCommand(context),
                    new ProposeCommand(context),
                ]
            ),
            new("To draw it", [new DrawCommand(context), new ArrangeCommand(context), new PageCommand(context)]),
            new(
                "At the bench",
                [
                    new SheetCommand(context),
                    new TemplateCommand(context),
                    new BenchCommand(context),
                    new DiagnoseCommand(context),
                    new MatchCommand(context),
                ]
            ),
            new(
                "Around the program",
                [
                    new ExportCommand(context),
                    new HelpCommand(context),
                    new CompletionsCommand(context),
                    new ManualCommand(context),
                ]
            ),
        ];
        var root = new RootCommand(About);
        foreach (var command in groups.SelectMany(group => group.Commands))
        {
            root.Add(command);
        }

        root.Directives.Clear();
        root.Options.OfType<HelpOption>().Single().Action = new HelpWriter(help, groups);
        return root;
    }
}
