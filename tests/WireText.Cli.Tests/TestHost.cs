using System.Text;

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

/// <summary>What one run of the program came to.</summary>
internal sealed record Ran(int Code, string Output, string Error, byte[] OutputBytes);

/// <summary>A folder of its own for one test, gone afterwards; programs run on the files in it.</summary>
internal sealed class Bench : IDisposable
{
    /// <summary>Nothing is found in it.</summary>
    public const string Right = """
        pickup  neck  single-coil  dcr=6k l=2.4H c=100p
        jack    out   mono
        wire    neck.hot     to out.tip     white
        wire    neck.ground  to out.sleeve  black

        """;

    /// <summary>One warning: the pot was declared and forgotten.</summary>
    public const string Doubtful = Right + "pot     vol   standard 250k audio\n";

    /// <summary>One error: a colour that does not exist, in line 4.</summary>
    public const string Wrong = """
        pickup  neck  single-coil  dcr=6k l=2.4H c=100p
        jack    out   mono
        wire    neck.hot     to out.tip     white
        wire    neck.ground  to out.sleeve  blakc

        """;

    public Bench()
    {
        Folder = Path.Combine(Path.GetTempPath(), $"wiretext-{Path.GetRandomFileName()}");
        Directory.CreateDirectory(Folder);
    }

    public string Folder { get; }

    /// <summary>Every file below the folder, by its name from there.</summary>
    public IEnumerable<string> Names =>
        Directory
            .EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Folder, file))
            .Order(StringComparer.Ordinal);

    public string this[string name] => Path.Combine(Folder, name);

    public string Put(string name, string content) => Put(name, Encoding.UTF8.GetBytes(content));

    public string Put(string name, byte[] content)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[name])!);
        File.WriteAllBytes(this[name], content);
        return this[name];
    }

    public string Text(string name) => File.ReadAllText(this[name]);

    public static Ran Run(params string[] args) => Run(new TestHost(), args);

    public static Ran Run(TestHost host, params string[] args)
    {
        var code = CliProgram.Run(args, host);
        return new Ran(code, host.Written, host.Complaint, host.WrittenBytes);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
