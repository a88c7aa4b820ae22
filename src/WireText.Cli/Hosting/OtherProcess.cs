using System.ComponentModel;
using System.Diagnostics;

namespace WireText.Cli.Hosting;

/// <summary>A process that this one did not start.</summary>
internal static class OtherProcess
{
    /// <summary>Waits for its end; without an end where there is none of that number, or none that may be looked at.</summary>
    public static Task EndOf(int id)
    {
        try
        {
            return Process.GetProcessById(id).WaitForExitAsync();
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or Win32Exception)
        {
            return new TaskCompletionSource().Task;
        }
    }
}
