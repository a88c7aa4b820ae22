using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Drawing.Layout;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext arrange</c></summary>
internal sealed class ArrangeCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<bool> write = new("--write")
    {
        Description = "Put the lines into FILE, behind its last part",
    };
    private readonly PartsOption parts = new();

    public ArrangeCommand(CliContext context)
        : base(
            "arrange",
            """
            Prints the places that a drawing of FILE finds for its parts, as lines to paste. With them, a later change
            moves no part.

            Example: wiretext arrange guitar.wiring --write
            """
        )
    {
        Add(file);
        Add(write);
        Add(parts);
        SetAction(parsed =>
            Run(context, parsed.GetRequiredValue(file), parsed.GetValue(write), parts.In(parsed, context.Sources))
        );
    }

    private static int Run(CliContext context, string file, bool isWritten, FolderSources sources)
    {
        if (isWritten && file == StandardStream.Name)
        {
            throw new CannotException("standard input cannot be written to; leave --write out, and paste the lines");
        }

        var read = ReadWiring.From(file, sources, context);
        var compiled = read.Compiled;
        var findings = compiled.Findings.AddRange(compiled.DrawingFindings);
        read.Tell(findings);
        if (compiled.PlanFor(LayoutEffort.Full)?.Layout is not { } layout)
        {
            throw new CannotException("there is no circuit to arrange");
        }

        var lines = ArrangeLines.Write(layout);
        if (lines.Length == 0)
        {
            context.Error.WriteLine($"{compiled.Tree.Source.Path}: every part has its place already");
        }
        else if (isWritten)
        {
            context.Results.Replace(read.Source, ArrangeLines.Insert(compiled.Tree, lines));
        }
        else
        {
            context.Data.Write(lines);
        }

        return ExitCode.For(findings, isStrict: false);
    }
}
