using WireText.Circuits.States;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Sound;

/// <summary>What is heard in states of one network; a live part that was met before is not solved again.</summary>
public sealed class SoundMemo
{
    private readonly Dictionary<LiveNetwork, JackSound> known;

    public SoundMemo(Network network)
        : this(network, new Dictionary<LiveNetwork, JackSound>(LiveNetworkComparer.Instance)) { }

    private SoundMemo(Network network, Dictionary<LiveNetwork, JackSound> known)
    {
        Network = network;
        this.known = known;
    }

    public Network Network { get; }

    /// <summary>How many different live parts were solved.</summary>
    public int SolvedCount => known.Count;

    /// <summary>One for another circuit of the same parts and surroundings, its wires changed: both know what either has solved.</summary>
    public SoundMemo ForRewired(Network other) => new(other, known);

    /// <param name="state">A control at any stays open.</param>
    public JackSound Of(State state) => Of(LiveNetwork.Of(Network, state));

    internal JackSound Of(LiveNetwork live)
    {
        if (!known.TryGetValue(live, out var sound))
        {
            known.Add(live, sound = JackSound.Of(Network.Circuit, live));
        }

        return sound;
    }
}
