using System.Collections.Concurrent;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>
/// Analyses states of one circuit; a live network that was met before is not solved again. Safe to ask from several threads.
/// </summary>
public sealed class Analyst
{
    /// <summary>Live networks that are handed on; with more the next starts empty, so that an editor open all day keeps its size. Chosen.</summary>
    internal const int MostShared = 65_536;

    private readonly ConcurrentDictionary<LiveNetwork, KnownNetwork> known;

    public Analyst(Network network)
        : this(new SoundMemo(network), new(LiveNetworkComparer.Instance)) { }

    private Analyst(SoundMemo sounds, ConcurrentDictionary<LiveNetwork, KnownNetwork> known)
    {
        Sounds = sounds;
        this.known = known;
    }

    public Network Network => Sounds.Network;

    /// <summary>What is heard in states of the circuit.</summary>
    public SoundMemo Sounds { get; }

    /// <summary>
    /// One for another circuit of the same parts and surroundings, its wires changed: both know what either has solved.
    /// </summary>
    public Analyst ForRewired(Network other) =>
        known.Count < MostShared ? new(Sounds.ForRewired(other), known) : new(other);

    /// <param name="state">A control at any stays open.</param>
    public StateAnalysis Analyse(State state)
    {
        var live = LiveNetwork.Of(Network, state);
        return new StateAnalysis(known.GetOrAdd(live, met => Meet(met, state)), Network, state);
    }

    private KnownNetwork Meet(LiveNetwork live, State state)
    {
        var circuit = Network.Circuit;
        return new KnownNetwork(
            new(() => Sounds.Of(live)),
            new(() => FormFinder.Find(Network, state, Sounds.Of(live))),
            new(() =>
                Sounds.Of(live).Outcome == Outcome.Sound && StringResponse.Of(circuit, live) is { } response
                    ? Resonance.Find(response)
                    : null
            ),
            // The meter's part lies inside the live part: what carries a direct current round the jack carries signals.
            new(() => Ohmmeter.Read(Network, state))
        );
    }
}
