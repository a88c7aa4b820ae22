namespace WireText.Cli.Hosting;

/// <summary>The real console.</summary>
internal sealed class ConsoleHost : ICliHost
{
    public Stream Input => Console.OpenStandardInput();

    public Stream Output => Console.OpenStandardOutput();

    public Stream Error => Console.OpenStandardError();

    public bool IsTerminal => !Console.IsOutputRedirected;

    public bool IsErrorTerminal => !Console.IsErrorRedirected;

    public bool IsInputTerminal => !Console.IsInputRedirected;

    public string WorkingFolder
    {
        get
        {
            try
            {
                return Directory.GetCurrentDirectory();
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new CannotException("the folder in which the program was started is gone");
            }
        }
    }

    public string? Variable(string name) => Environment.GetEnvironmentVariable(name);

    public CancellationToken Ending => EndSignals.Told;

    public Task EndOf(int process) => OtherProcess.EndOf(process);

    public void OpenInBrowser(string address) => BrowserStart.Open(address);
}
