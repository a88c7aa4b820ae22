using WireText.Cli.Hosting;

namespace WireText.Cli.Running;

/// <summary>What every command writes to.</summary>
internal sealed record CliContext(ICliHost Host, TextWriter Output, TextWriter Error)
{
    /// <summary>Colour only on a terminal, and not when NO_COLOR says otherwise.</summary>
    public bool InColour => Host.IsTerminal && string.IsNullOrEmpty(Host.Variable("NO_COLOR"));
}
