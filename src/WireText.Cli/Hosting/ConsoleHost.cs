namespace WireText.Cli.Hosting;

/// <summary>The real console.</summary>
internal sealed class ConsoleHost : ICliHost
{
    public Stream Input => Console.OpenStandardInput();

    public Stream Output => Console.OpenStandardOutput();

    public Stream Error => Console.OpenStandardError();

    public bool IsTerminal => !Console.IsOutputRedirected;

    public bool IsErrorTerminal => !Console.IsErrorRedirected;

    public string WorkingFolder => Directory.GetCurrentDirectory();

    public string? Variable(string name) => Environment.GetEnvironmentVariable(name);
}
