using System.Collections.Immutable;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Documents;
using WireText.Electrical.Faults;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary>A wiring that was read from a file, under the settings of its folder.</summary>
internal sealed class ReadWiring
{
    private readonly CliContext context;
    private readonly SettingsFiles settings;

    private ReadWiring(CliContext context, SourceFile source, FolderSources parts)
    {
        this.context = context;
        Source = source;
        settings = new SettingsFiles(context.Host, context.Sources);
        Compiled = Compilation.Of(source.Text, parts, settings: settings.For(source.Path));
    }

    public SourceFile Source { get; }

    public Compilation Compiled { get; }

    /// <summary>The exit code when all went well.</summary>
    public int Code => ExitCode.For(Compiled.Findings, isStrict: false);

    /// <param name="file">A path, or <c>-</c>.</param>
    /// <param name="parts">Where files that it names are looked for.</param>
    /// <exception cref="CannotException">The file cannot be read.</exception>
    public static ReadWiring From(string file, FolderSources parts, CliContext context) =>
        new(context, context.Sources.Read(file, SourceRole.Wiring), parts);

    /// <summary>Writes findings to standard error.</summary>
    public void Tell(ImmutableArray<Finding> findings) => FindingText.Write(findings, context.Error);

    /// <summary>How often faults are met, as the settings say.</summary>
    public FaultWeights FaultWeights => settings.FaultsFor(Source.Path);

    /// <summary>What it is printed on: what was asked for, else what the settings say.</summary>
    public Paper PaperFor(Paper? asked) => asked ?? settings.PaperFor(Source.Path);
}
