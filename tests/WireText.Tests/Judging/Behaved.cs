using System.Collections.Immutable;
using System.Numerics;
using WireText.Circuits;

namespace WireText.Tests.Judging;

/// <summary>How bare metal comes to the sleeve.</summary>
internal enum Grounding
{
    None,
    ByContact,
    ByTouch,
    BySolder,
}

/// <summary>What a coil does for the jack.</summary>
internal enum CoilStand
{
    /// <summary>Nothing leads from it to the sleeve.</summary>
    Free,

    /// <summary>It hangs, and nothing that strays into it comes to the jack.</summary>
    Still,

    /// <summary>It gives nothing of its own, but what strays into it comes to the jack.</summary>
    Antenna,

    /// <summary>Both of its ends are one piece of metal.</summary>
    Shorted,

    /// <summary>Its voltage comes to the jack.</summary>
    Heard,
}

/// <summary>All that is measured of a circuit in one position of its switches and plugs, its dials turned.</summary>
internal sealed class Behaved
{
    /// <summary>Two figures agree when they differ by no more than this part of the larger. Chosen: rounding is far below.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>A voltage below this is none, in volts for 1 V in a coil. Chosen: −180 dB, and rounding is far below.</summary>
    private const double NoVolts = 1e-9;

    /// <summary>An impedance below this is none, in ohms: the resistance of a joint. Chosen.</summary>
    private const double NoOhms = 1e-3;

    /// <summary>A current below this is none, in amperes. Chosen: a millionth of what any stage draws.</summary>
    private const double NoAmperes = 1e-10;

    /// <summary>A low note, the middle, and where pickups resonate. Chosen.</summary>
    private static readonly double[] Hertz = [97, 1130, 5310];

    private readonly ImmutableArray<Grounding> metal;
    private readonly ImmutableArray<Turn> turns;

    /// <param name="circuit">Values are taken as they stand.</param>
    public Behaved(Circuit circuit, BenchSetting positions)
    {
        metal = MetalOf(circuit, positions);
        turns = [.. positions.Turned().Select(setting => Turn.Of(circuit, setting))];
    }

    /// <param name="sign">-1 to take the other's voltages with the other sign.</param>
    public bool IsLike(Behaved other, int sign) =>
        metal.SequenceEqual(other.metal) && turns.Zip(other.turns).All(pair => pair.First.IsLike(pair.Second, sign));

    private static ImmutableArray<Grounding> MetalOf(Circuit circuit, BenchSetting positions)
    {
        var sleeve = circuit.Outputs[0].Sleeve;
        var (solder, touch) = (MetalPieces.Soldered(circuit), MetalPieces.Touching(circuit));
        var contact = MetalPieces.InContact(circuit, positions);
        return
        [
            .. circuit
                .Lugs.Where(lug => lug.IsMetal)
                .Select(lug =>
                    solder.AreOne(lug.Index, sleeve) ? Grounding.BySolder
                    : touch.AreOne(lug.Index, sleeve) ? Grounding.ByTouch
                    : contact.AreOne(lug.Index, sleeve) ? Grounding.ByContact
                    : Grounding.None
                ),
        ];
    }

    private static bool IsNear(double one, double other, double none) =>
        Math.Abs(one - other) <= Math.Max(none, Tolerance * Math.Max(Math.Abs(one), Math.Abs(other)));

    private static bool IsNear(Complex one, Complex other, double none) =>
        Complex.Abs(one - other) <= Math.Max(none, Tolerance * Math.Max(Complex.Abs(one), Complex.Abs(other)));

    /// <summary>What is measured at one setting of the dials.</summary>
    private sealed record Turn(
        ImmutableArray<int> Powered,
        ImmutableArray<double> Currents,
        ImmutableArray<CoilStand> Coils,
        ImmutableArray<JackReading> Readings
    )
    {
        public static Turn Of(Circuit circuit, BenchSetting setting)
        {
            var network = new BenchNetwork(circuit, setting);
            ImmutableArray<JackReading> readings = [.. Hertz.Select(network.Read)];
            return new Turn(
                [.. SupplyBench.PoweredAmplifiers(circuit, setting).Order()],
                SupplyBench.Currents(circuit, setting),
                [.. network.Coils.Select((coil, place) => StandOf(network, coil, place, readings))],
                readings
            );
        }

        public bool IsLike(Turn other, int sign) =>
            Powered.SequenceEqual(other.Powered)
            && Currents.Zip(other.Currents).All(pair => IsNear(pair.First, pair.Second, NoAmperes))
            && Coils.SequenceEqual(other.Coils)
            && Readings.Zip(other.Readings).All(pair => IsLike(pair.First, pair.Second, sign));

        private static bool IsLike(JackReading one, JackReading other, int sign) =>
            IsNear(one.Ohms, other.Ohms, NoOhms)
            && one.Volts.Zip(other.Volts).All(pair => IsNear(pair.First, sign * pair.Second, NoVolts));

        private static CoilStand StandOf(
            BenchNetwork network,
            Coil coil,
            int place,
            ImmutableArray<JackReading> readings
        ) =>
            readings.Any(reading => Complex.Abs(reading.Volts[place]) > NoVolts) ? CoilStand.Heard
            : network.IsShorted(coil) ? CoilStand.Shorted
            : readings.Any(reading => Complex.Abs(reading.Strays[place]) > NoOhms) ? CoilStand.Antenna
            : network.IsHeld(coil) ? CoilStand.Still
            : CoilStand.Free;
    }
}
