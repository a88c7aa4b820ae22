using System.Text;
using WireText.Cli.Hosting;

namespace WireText.Cli.Tests;

/// <summary>A console in memory.</summary>
internal sealed class TestHost : ICliHost, IDisposable
{
    private readonly MemoryStream output = new();
    private readonly MemoryStream error = new();
    private readonly Dictionary<string, string> variables = new(StringComparer.Ordinal);

    public TestHost(string input = "")
        : this(Encoding.UTF8.GetBytes(input)) { }

    public TestHost(byte[] input) => Input = new MemoryStream(input);

    public Stream Input { get; }

    public Stream Output => output;

    public Stream Error => error;

    public bool IsTerminal { get; init; }

    public bool IsErrorTerminal { get; init; }

    public string WorkingFolder { get; init; } = Directory.GetCurrentDirectory();

    public byte[] WrittenBytes => output.ToArray();

    public string Written => Encoding.UTF8.GetString(output.ToArray());

    public string Complaint => Encoding.UTF8.GetString(error.ToArray());

    public string? Variable(string name) => variables.GetValueOrDefault(name);

    public void Dispose()
    {
        Input.Dispose();
        output.Dispose();
        error.Dispose();
    }

    public TestHost With(string variable, string value)
    {
        variables[variable] = value;
        return this;
    }
}
