using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Diagnosing;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext diagnose</c></summary>
internal sealed class DiagnoseCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly ChoiceOption<bool> format = new("--format", "How it is written", ("text", false), ("json", true));
    private readonly PartsOption parts = new();

    public DiagnoseCommand(CliContext context)
        : base(
            "diagnose",
            """
            Says which fault explains what was found at the bench: the found lines of FILE. It ranks every single fault of
            the instrument, prints what each would also show, and says what to measure next.

            Exit code: 0 one answer, or nothing is wrong; 1 several remain; 2 it could not be done.

            Example: wiretext diagnose guitar.wiring
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
        var read = ReadWiring.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        read.Tell(read.Compiled.ReadingFindings);
        if (read.Compiled.Circuit is not { Outputs.IsEmpty: false } circuit)
        {
            throw new CannotException("there is no circuit with an output jack to measure at");
        }

        var diagnosis = Diagnostician.Of(circuit, circuit.Found);
        if (format.In(parsed))
        {
            context.Data.Write(DiagnosisJson.Write(diagnosis));
        }
        else
        {
            context.Output.Write(DiagnosisText.Write(diagnosis));
        }

        return diagnosis.End is DiagnosisEnd.OneFault or DiagnosisEnd.OneGroup or DiagnosisEnd.NothingWrong
            ? ExitCode.Right
            : ExitCode.Findings;
    }
}
