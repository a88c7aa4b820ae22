using System.Globalization;

namespace WireText.Tests.Electrical;

/// <summary>The rigs of the check values: a pickup, a volume, a tone, a cable of 500 pF, an input of 1 MΩ.</summary>
internal static class Rigs
{
    public const string SingleCoil = "pickup neck single-coil dcr=6k l=2.5H c=100p eddy=1M";
    public const string TwoCoil = "pickup neck single-coil dcr=8k l=4.5H c=100p eddy=1M";

    /// <summary>Rig S or H with a volume at x, a tone at a fraction before or after it, and parts between lugs 3 and 2.</summary>
    /// <param name="nanofarads">The tone capacitor; null for no tone.</param>
    public static Bench Of(
        string rig,
        double x = 1,
        string? nanofarads = null,
        double tone = 1,
        bool isToneAfter = false,
        string bleed = ""
    )
    {
        var (pickup, pot) = rig == "S" ? (SingleCoil, "250k") : (TwoCoil, "500k");
        return WithPickups(
            pickup,
            pot,
            "neck.hot ~ vol.3; neck.ground ~ vol.1",
            x,
            nanofarads,
            tone,
            isToneAfter,
            bleed
        );
    }

    public static Bench WithPickups(
        string pickups,
        string pot,
        string wiring,
        double x = 1,
        string? nanofarads = null,
        double tone = 1,
        bool isToneAfter = false,
        string bleed = ""
    )
    {
        var text = $"{pickups}; pot vol {pot} linear; jack out; {wiring}; vol.2 ~ out.tip; vol.1 ~ out.sleeve; {bleed}";
        var settings = string.Create(CultureInfo.InvariantCulture, $"vol={10 * x}");
        if (nanofarads is not null)
        {
            var hot = isToneAfter ? "vol.2" : "vol.3";
            text += $"; pot tone {pot} linear; cap dark {nanofarads}n from tone.1 to vol.1; tone.2 ~ {hot}";
            settings += string.Create(CultureInfo.InvariantCulture, $" tone={10 * tone}");
        }

        return Bench.Of(text).Into(500e-12, 1e6).At(settings);
    }
}
