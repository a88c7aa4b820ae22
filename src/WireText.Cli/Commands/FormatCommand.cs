using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Output;
using WireText.Syntax;
using WireText.Syntax.Parsing;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext format</c></summary>
internal sealed class FormatCommand : Command
{
    private readonly Argument<string[]> files = CommonOptions.ManyFiles("Wiring files");
    private readonly Option<bool> check = new("--check")
    {
        Description = "Write nothing; name the files that would change",
    };

    public FormatCommand(CliContext context)
        : base(
            "format",
            """
            Sets the lines in even columns. Words, comments and order stay; a line that cannot be read stays as it is.

            Example: wiretext format --check *.wiring
            """
        )
    {
        Add(files);
        Add(check);
        SetAction(parsed => Run(context, parsed.GetRequiredValue(files), parsed.GetValue(check)));
    }

    private static int Run(CliContext context, string[] files, bool isCheck)
    {
        var code = ExitCode.Right;
        foreach (var file in files)
        {
            try
            {
                code = Math.Max(code, FormatOne(context, file, isCheck));
            }
            catch (CannotException e)
            {
                context.Tell(e.Message);
                code = ExitCode.CouldNot;
            }
        }

        return code;
    }

    private static int FormatOne(CliContext context, string file, bool isCheck)
    {
        var source = context.Sources.Read(file, SourceRole.Wiring);
        var tree = WiringParser.Parse(source.Text);
        var formatted = Formatter.Format(tree);
        var isChanged = !string.Equals(formatted, source.Text.Content, StringComparison.Ordinal);
        FindingText.Write(tree.Findings, context.Error);
        if (isCheck && isChanged)
        {
            context.Output.WriteLine($"{source.Text.Path} would change");
            return ExitCode.Findings;
        }

        if (file == StandardStream.Name && !isCheck)
        {
            context.Results.Write(file, source.Encoded(formatted));
        }
        else if (isChanged)
        {
            context.Results.Replace(source, formatted);
        }

        return ExitCode.For(tree.Findings, isStrict: false);
    }
}
