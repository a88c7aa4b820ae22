using System.CommandLine;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Documents;
using WireText.Electrical.Studies;

namespace WireText.Cli.Commands;

/// <summary>A circuit that was read from a file and can be heard: it has an output jack.</summary>
internal sealed class ReadCircuit
{
    private readonly ReadWiring wiring;

    private ReadCircuit(ReadWiring wiring, Study study)
    {
        this.wiring = wiring;
        Study = study;
    }

    public Compilation Compiled => wiring.Compiled;

    /// <summary>Seen from the first jack, or from the one that was asked for.</summary>
    public Study Study { get; }

    public Circuit Circuit => Study.Circuit;

    /// <summary>The same circuit seen from the jack that was asked for.</summary>
    public ReadCircuit At(JackOption jack, ParseResult parsed) => new(wiring, jack.In(parsed, Study));

    /// <summary>The name without its folders; null for standard input.</summary>
    public string? FileName => wiring.Source.Name;

    /// <summary>The exit code when all went well: a circuit with mistakes is computed as it is wired.</summary>
    public int Code => wiring.Code;

    /// <summary>Reads and checks a file; the findings go to standard error.</summary>
    public static ReadCircuit From(string file, FolderSources sources, CliContext context)
    {
        var read = ReadWiring.From(file, sources, context);
        read.Tell(read.Compiled.Findings);
        if (read.Compiled.Circuit is null)
        {
            throw new CannotException("there is no circuit to look at");
        }

        return read.Compiled.Study is { } study
            ? new ReadCircuit(read, study)
            : throw new CannotException("the circuit has no output jack to listen at");
    }

    /// <inheritdoc cref="ReadWiring.PaperFor"/>
    public Paper PaperFor(Paper? asked) => wiring.PaperFor(asked);

    /// <summary>The state that a text says; everything at rest when there is none.</summary>
    public State StateAt(string? text)
    {
        if (text is null)
        {
            return State.Rest(Circuit);
        }

        var read = StateReader.Read(Circuit, text);
        return read.Value ?? throw new CannotException($"--at {text}: {read.Problem}");
    }
}
