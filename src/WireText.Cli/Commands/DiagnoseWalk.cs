using System.Collections.Immutable;
using System.Text;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Diagnosing;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary>Walks the bench: asks for a measurement, writes the answer into the file, and reasons again.</summary>
internal sealed class DiagnoseWalk : IDisposable
{
    private const string Skip = "skip";

    private readonly CliContext context;
    private readonly string file;
    private readonly FolderSources parts;
    private readonly StreamReader answers;
    private ImmutableArray<Measurement> skipped = [];

    public DiagnoseWalk(CliContext context, string file, FolderSources parts)
    {
        if (file == StandardStream.Name)
        {
            throw new CannotException("answers come from standard input: name the file that they are written to");
        }

        (this.context, this.file, this.parts) = (context, file, parts);
        answers = new StreamReader(
            context.Host.Input,
            Encoding.UTF8,
            detectEncodingFromByteOrderMarks: true,
            leaveOpen: true
        );
    }

    public void Dispose() => answers.Dispose();

    /// <returns>The exit code of where it ended.</returns>
    public int Run()
    {
        var isFirst = true;
        while (true)
        {
            var read = ReadWiring.From(file, parts, context);
            if (isFirst)
            {
                read.Tell(read.Compiled.ReadingFindings);
                Say(DiagnosisText.Safety + "\n");
                Say(
                    "an answer is a value, 0, open, or words such as: heard neck, thin; skip where it cannot be measured; an empty line ends\n"
                );
                isFirst = false;
            }

            var circuit = DiagnoseCommand.CircuitOf(read);
            var diagnosis = Diagnostician.Of(circuit, circuit.Found, read.FaultWeights, skipped);
            Say("\n" + DiagnosisText.WriteShort(diagnosis));
            if (diagnosis.Next is not { } next || !Take(read, next))
            {
                return DiagnoseCommand.CodeOf(diagnosis);
            }
        }
    }

    /// <summary>Asks until an answer can be read; false where there is none.</summary>
    private bool Take(ReadWiring read, NextMeasurement next)
    {
        while (true)
        {
            Say("? ");
            if (answers.ReadLine() is not { Length: > 0 } answer || string.IsNullOrWhiteSpace(answer))
            {
                return false;
            }

            if (answer.Trim().Equals(Skip, StringComparison.OrdinalIgnoreCase))
            {
                skipped = skipped.Add(new Measurement(next.Place, next.IsByEar));
                return true;
            }

            var line = FoundLine.Of(next, answer);
            var (text, problems) = FoundLine.AddTo(read.Source.Text, line, parts);
            if (problems.IsEmpty)
            {
                context.Results.Replace(read.Source, text.Content);
                return true;
            }

            foreach (var problem in problems)
            {
                Say($"{problem.Message}{(problem.Help is { } help ? $"; {help}" : "")}\n");
            }
        }
    }

    private void Say(string text)
    {
        context.Output.Write(text);
        context.Data.Flush();
    }
}
