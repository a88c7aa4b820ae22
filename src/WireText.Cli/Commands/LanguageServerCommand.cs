using System.CommandLine;
using WireText.Cli.Answering;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext language-server</c></summary>
internal sealed class LanguageServerCommand : Command
{
    private readonly PartsOption parts = new();

    /// <summary>Editors add it to what they start; there is no other way to talk.</summary>
    private readonly Option<bool> stdio = new("--stdio") { Hidden = true };

    public LanguageServerCommand(CliContext context)
        : base(
            "language-server",
            """
            Tells an editor what it asks about the wirings that are open in it: what is found, what a word means, what may
            follow. Started by the editor, it talks on standard input and output (LSP 3.17), and ends with it.

            Example: wiretext language-server
            """
        )
    {
        Add(parts);
        Add(stdio);
        SetAction(parsed => Run(context, parsed));
    }

    /// <returns>As LSP asks: 0 where the editor said that it would end, else 1.</returns>
    private int Run(CliContext context, ParseResult parsed)
    {
        using var server = new LanguageServer(context, parts.In(parsed, context.Sources));
        return server.Run() ? ExitCode.Right : ExitCode.Findings;
    }
}
