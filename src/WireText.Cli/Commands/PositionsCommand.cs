using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Running;
using WireText.Electrical.Positions;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext positions</c></summary>
internal sealed class PositionsCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly ChoiceOption<Func<PositionTable, string>> format = new(
        "--format",
        "How the table is written",
        ("text", PositionText.Write),
        ("json", PositionData.WriteJson),
        ("csv", PositionData.WriteCsv),
        ("markdown", PositionText.WriteMarkdown)
    );
    private readonly Option<bool> expect = new("--expect")
    {
        Description = "Write expect lines instead, which pin what the circuit does now, ready to paste",
    };
    private readonly PartsOption parts = new();

    public PositionsCommand(CliContext context)
        : base(
            "positions",
            """
            Says what every position really does: what is heard and how it is joined, how loud, whether hum cancels, what
            an ohmmeter on the plug reads, and where the peak lies. Findings go to standard error.

            Example: wiretext positions guitar.wiring
            """
        )
    {
        Add(file);
        Add(format);
        Add(expect);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var read = ReadCircuit.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        var table = read.Study.Positions;
        var text = parsed.GetValue(expect) ? ExpectLines.Write(read.Study) : format.In(parsed)(table);
        context.Output.Write(text);
        return read.Code;
    }
}
