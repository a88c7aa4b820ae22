using System.ComponentModel;
using System.Diagnostics;

namespace WireText.Cli.Hosting;

/// <summary>Starts the browser that the system has for an address.</summary>
internal static class BrowserStart
{
    /// <exception cref="IOException">There is none.</exception>
    public static void Open(string address)
    {
        try
        {
            using var started = Process.Start(
                OperatingSystem.IsWindows()
                    ? new ProcessStartInfo(address) { UseShellExecute = true }
                    : new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address])
                    {
                        UseShellExecute = false,

                        // What a browser says of itself is not said here.
                        RedirectStandardOutput = true,
                        RedirectStandardError = true,
                    }
            );
        }
        catch (Exception e) when (e is Win32Exception or FileNotFoundException)
        {
            throw new IOException("no browser can be started here", e);
        }
    }
}
