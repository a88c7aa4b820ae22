using WireText.Cli.Hosting;
using WireText.Cli.Storage;

namespace WireText.Cli.Running;

/// <summary>What every command reads from and writes to.</summary>
internal sealed record CliContext(ICliHost Host, TextWriter Output, TextWriter Error)
{
    public SourceReader Sources { get; } = new(Host);

    public ResultWriter Results => new(Host, Sources);

    /// <summary>Colour only on a terminal, and not when NO_COLOR says otherwise.</summary>
    public bool InColour => Host.IsTerminal && string.IsNullOrEmpty(Host.Variable("NO_COLOR"));
}
