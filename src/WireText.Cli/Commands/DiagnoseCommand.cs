using System.CommandLine;
using WireText.Circuits;
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
    private readonly Option<bool> next = new("--next")
    {
        Description = "Ask for each measurement, and write each answer into FILE as a found line, until one is left",
    };
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
        Add(next);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var name = parsed.GetRequiredValue(file);
        if (parsed.GetValue(next))
        {
            using var walk = new DiagnoseWalk(context, name, parts.In(parsed, context.Sources));
            return walk.Run();
        }

        var read = ReadWiring.From(name, parts.In(parsed, context.Sources), context);
        read.Tell(read.Compiled.ReadingFindings);
        var circuit = CircuitOf(read);
        var diagnosis = Diagnostician.Of(circuit, circuit.Found, read.FaultWeights);
        if (format.In(parsed))
        {
            context.Data.Write(DiagnosisJson.Write(diagnosis));
        }
        else
        {
            context.Output.Write(DiagnosisText.Write(diagnosis));
        }

        return CodeOf(diagnosis);
    }

    /// <exception cref="CannotException">There is none to measure at.</exception>
    internal static Circuit CircuitOf(ReadWiring read) =>
        read.Compiled.Circuit is { Outputs.IsEmpty: false } circuit
            ? circuit
            : throw new CannotException("there is no circuit with an output jack to measure at");

    internal static int CodeOf(Diagnosis diagnosis) =>
        diagnosis.End is DiagnosisEnd.OneFault or DiagnosisEnd.OneGroup or DiagnosisEnd.NothingWrong
            ? ExitCode.Right
            : ExitCode.Findings;
}
