using System.Collections.Concurrent;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;

namespace WireText.Electrical.Sound;

/// <summary>
/// What is heard in states of one network; a live part that was met before is not solved again. Safe to ask from several threads.
/// </summary>
public sealed class SoundMemo
{
    private readonly ConcurrentDictionary<LiveNetwork, Lazy<JackSound>> known;

    public SoundMemo(Network network)
        : this(network, new(LiveNetworkComparer.Instance)) { }

    private SoundMemo(Network network, ConcurrentDictionary<LiveNetwork, Lazy<JackSound>> known)
    {
        Network = network;
        this.known = known;
    }

    public Network Network { get; }

    /// <summary>One for another circuit of the same parts and surroundings, its wires changed: both know what either has solved.</summary>
    public SoundMemo ForRewired(Network other) => new(other, known);

    /// <param name="state">A control at any stays open.</param>
    public JackSound Of(State state) => Of(LiveNetwork.Of(Network, state));

    /// <summary>The same object for every live network that has the same solution.</summary>
    internal JackSound Of(LiveNetwork live) =>
        known.GetOrAdd(live, met => new Lazy<JackSound>(() => JackSound.Of(Network.Circuit, met))).Value;
}
