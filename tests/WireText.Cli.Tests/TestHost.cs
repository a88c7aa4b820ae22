using System.Text;
using WireText.Cli.Hosting;

namespace WireText.Cli.Tests;

/// <summary>A console in memory.</summary>
internal sealed class TestHost : ICliHost, IDisposable
{
    private readonly MemoryStream output = new();
    private readonly ToldStream error;
    private readonly Dictionary<string, string> variables = new(StringComparer.Ordinal) { ["TERM"] = "xterm" };

    public TestHost(string input = "")
        : this(Encoding.UTF8.GetBytes(input)) { }

    public TestHost(byte[] input)
    {
        Input = new MemoryStream(input);
        error = new ToldStream(TakePlace);
    }

    public Stream Input { get; }

    public Stream Output => output;

    public Stream Error => error;

    public bool IsTerminal { get; init; }

    public bool IsErrorTerminal { get; init; }

    public bool IsInputTerminal { get; init; }

    public string WorkingFolder
    {
        get
        {
            TakePlace();
            return field;
        }
        init;
    } = Directory.GetCurrentDirectory();

    /// <summary>What takes place while the program works: after it has read its file, where it has settings to read or much to complain of.</summary>
    public Action? Meanwhile { get; set; }

    public byte[] WrittenBytes => output.ToArray();

    public string Written => Encoding.UTF8.GetString(output.ToArray());

    public string Complaint => Encoding.UTF8.GetString(error.ToArray());

    /// <summary>What asking for a variable throws; null for nothing.</summary>
    public Exception? Trouble { get; init; }

    public string? Variable(string name) => Trouble is null ? variables.GetValueOrDefault(name) : throw Trouble;

    public void Dispose()
    {
        Input.Dispose();
        output.Dispose();
        error.Dispose();
    }

    private void TakePlace()
    {
        var now = Meanwhile;
        Meanwhile = null;
        now?.Invoke();
    }

    public TestHost With(string variable, string value)
    {
        variables[variable] = value;
        return this;
    }

    /// <summary>Tells when something is written to it.</summary>
    private sealed class ToldStream(Action tell) : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count)
        {
            tell();
            base.Write(buffer, offset, count);
        }

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            tell();
            base.Write(buffer);
        }
    }
}
