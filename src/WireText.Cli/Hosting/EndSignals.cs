using System.Runtime.InteropServices;

namespace WireText.Cli.Hosting;

/// <summary>The signals by which a program is told to end, for one that has something to put away first.</summary>
internal static class EndSignals
{
    private static readonly CancellationTokenSource Source = new();

    private static readonly PosixSignalRegistration[] Registered =
    [
        .. new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP }.Select(signal =>
            PosixSignalRegistration.Create(signal, Take)
        ),
    ];

    /// <summary>Cancelled by the first of them. From the first time that it is asked for, none of them ends the program by itself.</summary>
    public static CancellationToken Told => Registered.Length > 0 ? Source.Token : CancellationToken.None;

    private static void Take(PosixSignalContext signal)
    {
        signal.Cancel = true;
        Source.Cancel();
    }
}
