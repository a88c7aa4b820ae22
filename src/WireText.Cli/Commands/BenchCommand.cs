using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Running;
using WireText.Electrical.BenchPlans;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext bench</c></summary>
internal sealed class BenchCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly ChoiceOption<Form> format = new(
        "--format",
        "How the plan is written: for people, the readings as a table, or what wrong readings point to as a table",
        ("text", new Form(BenchText.Write, IsData: false)),
        ("csv", new Form(BenchData.WriteReadings, IsData: true)),
        ("faults-csv", new Form(BenchData.WriteFaults, IsData: true))
    );
    private readonly PartsOption parts = new();

    public BenchCommand(CliContext context)
        : base(
            "bench",
            """
            Writes how to test the finished instrument: what an ohmmeter on the plug must read in every position, what must
            sound when it is tapped, and which single faults a wrong reading points to. Findings go to standard error.

            Example: wiretext bench guitar.wiring
            """
        )
    {
        Add(file);
        Add(format);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var read = ReadCircuit.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        var form = format.In(parsed);
        (form.IsData ? context.Data : context.Output).Write(form.Write(BenchPlan.Of(read.Study)));
        return read.Code;
    }

    /// <param name="IsData">True for what other programs read.</param>
    private sealed record Form(Func<BenchPlan, string> Write, bool IsData);
}
