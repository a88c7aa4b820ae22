namespace WireText.Cli.Hosting;

/// <summary>What the program meets of the world besides files: its streams, and what it is told of the terminal.</summary>
public interface ICliHost
{
    Stream Input { get; }

    Stream Output { get; }

    Stream Error { get; }

    /// <summary>True when what is written to <see cref="Output"/> is read on a terminal.</summary>
    bool IsTerminal { get; }

    /// <summary>True when what is written to <see cref="Error"/> is read on a terminal.</summary>
    bool IsErrorTerminal { get; }

    /// <summary>True when <see cref="Input"/> is what somebody types on a terminal.</summary>
    bool IsInputTerminal => false;

    /// <summary>The folder in which the program was started; paths that are not whole are taken from there.</summary>
    string WorkingFolder { get; }

    /// <summary>The value of an environment variable, or null.</summary>
    string? Variable(string name);

    /// <summary>Cancelled when somebody tells the program to end, as with Ctrl-C. From the first time that it is asked for, to end is left to who asked.</summary>
    CancellationToken Ending => CancellationToken.None;

    /// <summary>Waits for the end of another process of this machine; without an end where that cannot be seen from here.</summary>
    Task EndOf(int process) => new TaskCompletionSource().Task;

    /// <summary>Shows an address in the browser of who works here.</summary>
    /// <exception cref="IOException">There is no browser that can be started.</exception>
    void OpenInBrowser(string address) => throw new IOException("there is no browser here");
}
