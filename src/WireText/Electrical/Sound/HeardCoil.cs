using WireText.Circuits;

namespace WireText.Electrical.Sound;

public enum Presence
{
    Absent,

    /// <summary>Between absent and heard: told, but not part of how the coils are joined.</summary>
    Trace,

    Heard,
}

/// <summary>How strongly a live coil with a magnet comes through.</summary>
/// <param name="Place">Its place in <see cref="FixedGains.Coils"/>.</param>
/// <param name="Decibels">Its gain over that of the loudest, at 330 Hz with the load on; 0 for the loudest.</param>
public sealed record HeardCoil(Coil Coil, int Place, double Decibels)
{
    public Presence Presence =>
        Decibels >= Thresholds.HeardDecibels ? Presence.Heard
        : Decibels >= Thresholds.TraceDecibels ? Presence.Trace
        : Presence.Absent;

    public bool IsHeard => Presence == Presence.Heard;
}
