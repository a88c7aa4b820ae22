using System.CommandLine;
using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Drawing.Layout;
using WireText.Pages;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext page</c></summary>
internal sealed class PageCommand : Command
{
    private const string TooLarge = "the circuit is too large to draw";

    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string?> output = CommonOptions.Output("the page");
    private readonly ChoiceOption<LayoutEffort> effort = CommonOptions.Effort();
    private readonly PartsOption parts = new();

    public PageCommand(CliContext context)
        : base(
            "page",
            """
            Writes a page for a customer: one file of HTML with the drawing, where switches and knobs can be moved and what
            each position does is seen. It asks for nothing outside itself. Findings go to standard error.

            Example: wiretext page guitar.wiring -o guitar.html
            """
        )
    {
        Add(file);
        Add(output);
        Add(effort);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var read = ReadWiring.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        var compiled = read.Compiled;
        read.Tell(compiled.Findings.AddRange(compiled.DrawingFindings));
        if (compiled.HasErrors)
        {
            context.Tell("no page is written: a customer is not shown a wiring with errors");
            return ExitCode.Findings;
        }

        context.Results.Write(
            parsed.GetValue(output) ?? StandardStream.Name,
            Encoding.UTF8.GetBytes(PageOf(compiled, effort.In(parsed), read.Source.Name))
        );
        return read.Code;
    }

    private static string PageOf(Compilation compiled, LayoutEffort effort, string? name)
    {
        if (compiled.Circuit is not { Parts.IsEmpty: false } circuit)
        {
            throw new CannotException("there is nothing to show: the circuit has no parts");
        }

        if (compiled.Study is null)
        {
            throw new CannotException("the circuit has no output jack to listen at");
        }

        if (!compiled.DrawingFindings.IsEmpty)
        {
            throw new CannotException(TooLarge);
        }

        var table =
            compiled.TellStates()
            ?? throw new CannotException(
                $"a page has {PageStates.LimitOf(circuit)} positions of all controls together at most, and this circuit has more; 'wiretext draw --trace' draws those that matter"
            );
        return compiled.WritePage(table, effort, name) ?? throw new CannotException(TooLarge);
    }
}
