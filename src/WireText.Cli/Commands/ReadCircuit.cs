using System.CommandLine;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Electrical.Studies;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary>A circuit that was read from a file and can be heard: it has an output jack.</summary>
internal sealed class ReadCircuit
{
    private readonly CliContext context;
    private readonly string file;

    private ReadCircuit(CliContext context, string file, Compilation compiled, Study study)
    {
        this.context = context;
        this.file = file;
        Compiled = compiled;
        Study = study;
    }

    public Compilation Compiled { get; }

    /// <summary>Seen from the first jack, or from the one that was asked for.</summary>
    public Study Study { get; }

    public Circuit Circuit => Study.Circuit;

    /// <summary>The same circuit seen from the jack that was asked for.</summary>
    public ReadCircuit At(JackOption jack, ParseResult parsed) => new(context, file, Compiled, jack.In(parsed, Study));

    /// <summary>The name without its folders; null for standard input.</summary>
    public string? FileName => file == StandardStream.Name ? null : Path.GetFileName(file);

    /// <summary>The exit code when all went well: a circuit with mistakes is computed as it is wired.</summary>
    public int Code => ExitCode.For(Compiled.Findings, isStrict: false);

    /// <summary>Reads and checks a file; the findings go to standard error.</summary>
    public static ReadCircuit From(string file, FolderSources sources, CliContext context)
    {
        var compiled = Compilation.Of(
            context.Sources.Read(file, SourceRole.Wiring).Text,
            sources,
            settings: new SettingsFiles(context.Host, context.Sources).For(file)
        );
        FindingText.Write(compiled.Findings, context.Error);
        if (compiled.Circuit is null)
        {
            throw new CannotException("there is no circuit to look at");
        }

        return compiled.Study is { } study
            ? new ReadCircuit(context, file, compiled, study)
            : throw new CannotException("the circuit has no output jack to listen at");
    }

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
