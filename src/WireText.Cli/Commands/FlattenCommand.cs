using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Mods;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext flatten</c></summary>
internal sealed class FlattenCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string?> output = CommonOptions.Output("the text");
    private readonly PartsOption parts = new();

    public FlattenCommand(CliContext context)
        : base(
            "flatten",
            """
            Writes a mod and what it stands on as one file that stands alone, with the comments that still apply. What
            cannot be read is told; checks are for 'wiretext check'.

            Example: wiretext flatten guitar.wiring
            """
        )
    {
        Add(file);
        Add(output);
        Add(parts);
        SetAction(parsed =>
            Run(context, parsed.GetRequiredValue(file), parsed.GetValue(output), parts.In(parsed, context.Sources))
        );
    }

    private static int Run(CliContext context, string file, string? target, FolderSources sources)
    {
        var read = ReadWiring.From(file, sources, context);
        var compiled = read.Compiled;
        read.Tell(compiled.ReadingFindings);
        if (!compiled.Resolved.IsWhole)
        {
            throw new CannotException("what the file stands on cannot be read");
        }

        var text = Flattening.TextOf(compiled.Tree, compiled.Resolved);
        if (target is null)
        {
            context.Data.Write(text);
        }
        else
        {
            context.Results.Write(target, read.Source.Encoded(text));
        }

        return ExitCode.For(compiled.ReadingFindings, isStrict: false);
    }
}
