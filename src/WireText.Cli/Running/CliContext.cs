using System.Text;
using WireText.Cli.Hosting;
using WireText.Cli.Storage;
using WireText.Output;

namespace WireText.Cli.Running;

/// <summary>What every command reads from and writes to.</summary>
internal sealed class CliContext
{
    public CliContext(ICliHost host)
    {
        Host = host;
        Data = WriterTo(host.Output);
        Error = new MessageWriter(WriterTo(host.Error), inColour: false);
        Sources = new SourceReader(host);
    }

    public ICliHost Host { get; }

    /// <summary>Standard output as people read it.</summary>
    public MessageWriter Output => field ??= new MessageWriter(Data, InColour);

    /// <summary>Standard output as programs read it, every character as it is.</summary>
    public TextWriter Data { get; }

    public MessageWriter Error { get; }

    public SourceReader Sources { get; }

    public ResultWriter Results => new(Host, Sources);

    /// <summary>True when the count of what is done may be written again and again over itself.</summary>
    public bool ShowsProgress => Host.IsErrorTerminal && TakesCodes;

    /// <summary>Colour only on a terminal that takes it, and not when NO_COLOR says otherwise.</summary>
    private bool InColour => Host.IsTerminal && TakesCodes && string.IsNullOrEmpty(Host.Variable("NO_COLOR"));

    /// <summary>A terminal that is called dumb, or nothing at all, shows codes for colours and the cursor as letters.</summary>
    private bool TakesCodes => OperatingSystem.IsWindows() || Host.Variable("TERM") is not (null or "" or "dumb");

    /// <summary>Says something of the run itself on standard error.</summary>
    public void Tell(string message) => Error.Write($"wiretext: {message}\n");

    /// <remarks>Not disposed by anybody: that would try once more to write what a full disk refused.</remarks>
    private static StreamWriter WriterTo(Stream stream) => new(stream, new UTF8Encoding(false)) { NewLine = "\n" };
}
