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
    private readonly ChoiceOption<Form> format = new(
        "--format",
        "How the table is written",
        ("text", new Form(PositionText.Write, IsData: false)),
        ("json", new Form(PositionData.WriteJson, IsData: true)),
        ("csv", new Form(PositionData.WriteCsv, IsData: true)),
        ("markdown", new Form(PositionText.WriteMarkdown, IsData: false))
    );
    private readonly ChoiceOption<LevelReference> level = new(
        "--level",
        "What 0 dB is: the loudest line, or what the strings induce in one coil, so that two files can be compared",
        ("loudest", LevelReference.LoudestRow),
        ("coil", LevelReference.OneCoil)
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
        Add(level);
        Add(expect);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var read = ReadCircuit.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        var form = parsed.GetValue(expect)
            ? new Form(_ => ExpectLines.Write(read.Study), IsData: true)
            : format.In(parsed);
        var table = read.Study.PositionsAtJacks;
        (form.IsData ? context.Data : context.Output).Write(
            form.Write(level.In(parsed) == LevelReference.OneCoil ? table.AgainstOneCoil() : table)
        );
        return read.Code;
    }

    /// <param name="IsData">True for what other programs read, the lines of wiring among them.</param>
    private sealed record Form(Func<PositionTable, string> Write, bool IsData);
}
