using System.Globalization;
using WireText.Electrical.Tolerances;

namespace WireText.Checks.Intent;

/// <summary>The words for how many instruments of a run a claim is right for.</summary>
internal static class RunText
{
    /// <summary>The share and its error: <c>81.2 % of a run (79.5 to 82.8 %, 4,096 drawn)</c>.</summary>
    public static string Of(RunShare run) =>
        run.Count == 0
            ? $"{Percent(run.Share)} of a run"
            : $"{Percent(run.Share)} of a run ({Number(run.Low)} to {Percent(run.High)}, {run.Count.ToString("#,0", CultureInfo.InvariantCulture)} drawn)";

    /// <summary>The share that may be claimed and will hold, in whole percents; null below one.</summary>
    public static string? Claimable(RunShare run) =>
        Math.Floor(100 * run.Low) is >= 1 and var percent
            ? percent.ToString("0", CultureInfo.InvariantCulture) + "%"
            : null;

    private static string Percent(double share) => Number(share) + " %";

    private static string Number(double share) => (100 * share).ToString("0.0", CultureInfo.InvariantCulture);
}
