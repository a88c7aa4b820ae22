using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Commands;
using WireText.Cli.Hosting;
using WireText.Cli.Running;

namespace WireText.Cli;

/// <summary>The command line: arguments become one call to the core, and what comes back is shown.</summary>
public static class CliProgram
{
    private const string About = """
        Reads guitar wiring written as text, checks it and draws it.

        Exit code: 0 right, 1 findings that are errors (with --strict warnings too), 2 it could not be done.
        A file named - is standard input.

        Examples:
          wiretext new guitar
          wiretext check guitar.wiring
          wiretext positions guitar.wiring
          wiretext bench guitar.wiring
          wiretext diagnose guitar.wiring
          wiretext draw guitar.wiring -o guitar.png
          wiretext sheet guitar.wiring -o sheet.pdf
          wiretext page guitar.wiring -o guitar.html
          wiretext watch guitar.wiring --open
          wiretext language-server
          wiretext template guitar.wiring -o template.pdf
          wiretext arrange guitar.wiring --write
          wiretext parts lever-3way
          wiretext explain floating-ground
          wiretext format guitar.wiring
          wiretext flatten guitar.wiring
          wiretext compare stock.wiring guitar.wiring
          wiretext propose guitar.wiring
          wiretext response guitar.wiring --sweep tone -o tone.svg
          wiretext export guitar.wiring --spice -o guitar.cir
          wiretext help draw
          wiretext completions bash
          wiretext man
        """;

    public static int Run(string[] args, ICliHost host) => CliRun.Of(host, context => Run(args, context));

    private static int Run(string[] args, CliContext context)
    {
        if (args is ["--version"])
        {
            context.Output.WriteLine(ProgramVersion.Text);
            return ExitCode.Right;
        }

        return CommandLine.Invoke(Commands(context), args, context);
    }

    private static RootCommand Commands(CliContext context)
    {
        var root = new RootCommand(About)
        {
            new NewCommand(context),
            new CheckCommand(context),
            new PositionsCommand(context),
            new BenchCommand(context),
            new DiagnoseCommand(context),
            new DrawCommand(context),
            new SheetCommand(context),
            new PageCommand(context),
            new WatchCommand(context),
            new LanguageServerCommand(context),
            new TemplateCommand(context),
            new ArrangeCommand(context),
            new PartsCommand(context),
            new ExplainCommand(context),
            new FormatCommand(context),
            new FlattenCommand(context),
            new CompareCommand(context),
            new ProposeCommand(context),
            new ResponseCommand(context),
            new ExportCommand(context),
            new HelpCommand(context),
            new CompletionsCommand(context),
            new ManualCommand(context),
        };
        root.Directives.Clear();
        return root;
    }
}
