using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;
using WireText.Tests.Judging;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>Which pickups are heard, by the solver of the judge.</summary>
internal static class Sounding
{
    /// <summary>Where it is listened, in hertz.</summary>
    private const double Listening = 330;

    /// <summary>Below this part of the loudest coil a coil is not heard: −26 dB.</summary>
    private static readonly double HeardBeside = Math.Pow(10, -26.0 / 20);

    /// <summary>Below this part of a coil's own voltage nothing is heard: −60 dB.</summary>
    private const double HeardAtAll = 1e-3;

    /// <summary>The names of the parts that are heard, in order of declaration.</summary>
    public static ImmutableArray<string> PickupsAt(Circuit circuit, BenchSetting setting)
    {
        var network = new BenchNetwork(circuit, setting);
        var levels = network.Read(Listening).Volts.Select(Complex.Abs).ToList();
        var least = Math.Max(HeardAtAll, HeardBeside * levels.Max());
        return
        [
            .. network
                .Coils.Where((_, place) => levels[place] >= least)
                .Select(coil => circuit.Parts[coil.Part].Name)
                .Distinct(),
        ];
    }

    /// <summary>True when some position gives a sound: plugged in, dials at rest.</summary>
    public static bool IsHeardAnywhere(Circuit circuit) =>
        BenchSetting
            .AllPositions(circuit)
            .Where(setting => circuit.Controls.All(c => !c.IsPlug || setting.Positions[c.Index] == c.Rest))
            .Any(setting => !PickupsAt(circuit, setting).IsEmpty);
}
