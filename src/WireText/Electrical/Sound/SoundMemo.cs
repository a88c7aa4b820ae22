using WireText.Electrical.Solving;

namespace WireText.Electrical.Sound;

/// <summary>What is heard in states of one network; a live part that was met before is not solved again.</summary>
public sealed class SoundMemo(Network network)
{
    private readonly Dictionary<LiveNetwork, JackSound> known = new(LiveNetworkComparer.Instance);

    public Network Network => network;

    /// <summary>How many different live parts were solved.</summary>
    public int SolvedCount => known.Count;

    /// <param name="positions">A position for each control; one at <see cref="Situation.Any"/> stays open.</param>
    public JackSound Of(ReadOnlySpan<int> positions, DialSetting dials) =>
        Of(LiveNetwork.Of(network, positions, dials));

    internal JackSound Of(LiveNetwork live)
    {
        if (!known.TryGetValue(live, out var sound))
        {
            known.Add(live, sound = JackSound.Of(network.Circuit, live));
        }

        return sound;
    }
}
