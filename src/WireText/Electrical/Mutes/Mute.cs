using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Mutes;

/// <summary>How a control silences the jack.</summary>
public enum MuteKind
{
    /// <summary>It joins tip and sleeve and does nothing else.</summary>
    AcrossTheJack,

    /// <summary>It joins tip and sleeve and lifts the signal off the tip as well.</summary>
    ChangeOver,

    /// <summary>It shorts the signal to ground before it reaches the tip.</summary>
    Upstream,

    /// <summary>It opens the only way of the signal, or of its return.</summary>
    Opening,
}

/// <summary>A control that does nothing but silence the jack.</summary>
/// <param name="Control">Index into <see cref="Circuits.Circuit.Controls"/>.</param>
/// <param name="Muting">The positions that silence, in order.</param>
/// <param name="Pair">The nets it joins: tip and sleeve where those are joined, else its only pair.</param>
public sealed record Mute(int Control, MuteKind Kind, ImmutableArray<int> Muting, NetPair Pair)
{
    /// <summary>True when it silences the states.</summary>
    public bool IsIn(State state) => state[Control] is { } position && Muting.Contains(position);
}
