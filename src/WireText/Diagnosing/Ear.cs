using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Parts;

namespace WireText.Diagnosing;

/// <summary>What is heard at all.</summary>
internal enum HeardKind
{
    Sound,

    /// <summary>Nothing, and no hum.</summary>
    Silence,

    /// <summary>Nothing, and it hums.</summary>
    Dead,

    /// <summary>It cannot be computed: the ear says nothing of it.</summary>
    Unknown,
}

/// <summary>Which way a sound is off.</summary>
internal enum Shade
{
    Right,
    Dark,
    Bright,
}

/// <summary>What an ear tells at a plug with an amplifier.</summary>
/// <param name="Coils">Those that sound when they are tapped, as indices of elements.</param>
/// <param name="Thin">Coils cancel.</param>
/// <param name="Hums">Coils do not cancel the hum.</param>
/// <param name="Shade">Against a right instrument in the same state.</param>
/// <param name="Weak">Against a right instrument in the same state.</param>
/// <param name="Buzzes">Until the strings are touched.</param>
internal sealed record HeardAtPlug(
    HeardKind Kind,
    ImmutableArray<int> Coils,
    bool Thin,
    bool Hums,
    Shade Shade,
    bool Weak,
    bool Buzzes
)
{
    public bool Equals(HeardAtPlug? other) =>
        other is not null
        && Kind == other.Kind
        && Thin == other.Thin
        && Hums == other.Hums
        && Shade == other.Shade
        && Weak == other.Weak
        && Buzzes == other.Buzzes
        && Coils.AsSpan().SequenceEqual(other.Coils.AsSpan());

    public override int GetHashCode() => HashCode.Combine(Kind, Thin, Hums, Shade, Weak, Buzzes, Coils.Length);
}

/// <summary>What is heard of an instrument with a fault in it; a network that was met before is not solved again.</summary>
internal sealed class Ear(Instrument instrument)
{
    /// <summary>A sum below this of its parts is thin: 35 %, in dB.</summary>
    private const double ThinDecibels = -9.12;

    /// <summary>A residue above this hums: 30 %, in dB.</summary>
    private const double HumDecibels = -10.46;

    /// <summary>Treble that moved by this against the middle is dark or bright, in dB.</summary>
    private const double ShadeDecibels = 6;

    /// <summary>Quieter by this is weak, in dB.</summary>
    private const double WeakDecibels = 8;

    private readonly Dictionary<LiveNetwork, JackSound> known = new(LiveNetworkComparer.Instance);
    private readonly Dictionary<(int Jack, State State), (double Level, double Treble)?> right = [];
    private readonly ImmutableArray<int> metal =
    [
        .. instrument.Circuit.Parts.Where(part => part.Kind == PartKinds.Metal).SelectMany(part => part.Lugs),
    ];

    /// <summary>Networks that were solved.</summary>
    public int Solved => known.Count;

    public HeardAtPlug Hear(Suspect suspect, int jack, State state)
    {
        var sound = SoundOf(suspect, jack, state);
        var buzzes = metal.Any(lug =>
            !suspect.Circuit.Nets.SameNet(lug, suspect.Circuit.Outputs[jack].Sleeve)
            && instrument.Right.Nets.SameNet(lug, instrument.Right.Outputs[jack].Sleeve)
        );
        var kind = sound.Outcome switch
        {
            Outcome.Sound => HeardKind.Sound,
            Outcome.Short or Outcome.Quiet => HeardKind.Silence,
            Outcome.Dead or Outcome.Open => HeardKind.Dead,
            _ => HeardKind.Unknown,
        };
        if (kind != HeardKind.Sound)
        {
            return new HeardAtPlug(kind, [], false, false, Shade.Right, false, buzzes);
        }

        var (level, treble) = FiguresOf(sound);
        var (shade, weak) = (Shade.Right, false);
        if (RightAt(jack, state) is { } should)
        {
            var moved = treble - should.Treble;
            shade =
                moved < -ShadeDecibels ? Shade.Dark
                : moved > ShadeDecibels ? Shade.Bright
                : Shade.Right;
            weak = level - should.Level < -WeakDecibels;
        }

        return new HeardAtPlug(
            kind,
            [.. sound.Heard.Select(coil => coil.Coil.Index).Order()],
            sound.LevelDecibels - sound.Gains!.PowerDecibels < ThinDecibels,
            sound.Hum is { } hum && hum.ResidueDecibels > HumDecibels,
            shade,
            weak,
            buzzes
        );
    }

    private static (double Level, double Treble) FiguresOf(JackSound sound) =>
        (sound.LevelDecibels, sound.Gains!.TrebleDecibels - sound.Gains.PowerDecibels);

    /// <summary>What it should be; null where a right instrument is silent.</summary>
    private (double Level, double Treble)? RightAt(int jack, State state)
    {
        if (!right.TryGetValue((jack, state), out var figures))
        {
            var circuit = instrument.Right.SeenFrom(instrument.Right.Outputs[jack]);
            var sound = SoundOf(LiveNetwork.Of(Electrical.Networks.Network.Of(circuit)!, state), circuit);
            right.Add((jack, state), figures = sound.Outcome == Outcome.Sound ? FiguresOf(sound) : null);
        }

        return figures;
    }

    private JackSound SoundOf(Suspect suspect, int jack, State state)
    {
        var network = suspect.NetworkAt(jack);
        return SoundOf(LiveNetwork.Of(network, state), network.Circuit);
    }

    private JackSound SoundOf(LiveNetwork live, Circuit circuit)
    {
        if (!known.TryGetValue(live, out var sound))
        {
            known.Add(live, sound = JackSound.Of(circuit, live));
        }

        return sound;
    }
}
