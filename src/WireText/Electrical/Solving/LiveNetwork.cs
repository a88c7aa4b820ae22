using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Solving;

/// <summary>A live branch between nodes.</summary>
/// <param name="Source">The branch of the network.</param>
/// <param name="Inside">What it is made of; its nodes are numbered as in <see cref="LiveNetwork"/>.</param>
public readonly record struct LiveBranch(Branch Source, TwoPole Inside)
{
    public int From => Inside.From;

    public int To => Inside.To;
}

/// <summary>An amplifier whose output is live. Nodes are numbered as in <see cref="LiveNetwork"/>.</summary>
/// <param name="Element">Its place in <see cref="Circuits.Circuit.Elements"/>.</param>
public readonly record struct LiveAmplifier(int Element, int In, int Out, int Common, double Gain, double OutputOhms);

/// <summary>
/// The live part of a state at a dial setting, ready to be solved. Nets that solder, closed contacts or a zero track
/// section make one are one node: no tiny resistances.
/// </summary>
public sealed class LiveNetwork
{
    /// <summary>The node of the sleeve, or of the net that a voltage is taken against: the reference.</summary>
    public const int Sleeve = 0;

    /// <summary>The node of the tip, or of the net whose voltage is taken.</summary>
    public const int Tip = 1;

    private LiveNetwork(
        bool isShort,
        int nodeCount,
        ImmutableArray<LiveBranch> branches,
        ImmutableArray<LiveAmplifier>? amplifiers
    )
    {
        IsShort = isShort;
        NodeCount = nodeCount;
        Branches = branches;
        HasFeedback = amplifiers is null;
        Amplifiers = amplifiers ?? [];
        Coils = [.. Enumerable.Range(0, branches.Length).Where(i => branches[i].Source.Kind == BranchKind.Coil)];
    }

    /// <summary>True when tip and sleeve are one node.</summary>
    public bool IsShort { get; }

    /// <summary>True when nothing joins tip and sleeve: the jack floats.</summary>
    public bool IsOpen => !IsShort && Branches.IsEmpty;

    /// <summary>Nodes are numbered from 0 by first appearance: sleeve, tip, then as the branches name them.</summary>
    public int NodeCount { get; }

    /// <summary>In order of declaration.</summary>
    public ImmutableArray<LiveBranch> Branches { get; }

    /// <summary>The coils, as indices into <see cref="Branches"/>.</summary>
    public ImmutableArray<int> Coils { get; }

    /// <summary>Each comes before those that drive its input.</summary>
    public ImmutableArray<LiveAmplifier> Amplifiers { get; }

    /// <summary>Between which nodes the input of the amplifier on the jack lies; null where it is not live, or not asked for.</summary>
    public (int From, int To)? Load { get; private init; }

    /// <summary>True when an amplifier can feed its own input: such a network is not computed.</summary>
    public bool HasFeedback { get; }

    /// <summary>True when both have the same branches, with the same values, between the same nodes: they have the same solution.</summary>
    public bool IsLike(LiveNetwork other)
    {
        if (IsShort != other.IsShort || Branches.Length != other.Branches.Length)
        {
            return false;
        }

        for (var i = 0; i < Branches.Length; i++)
        {
            if (
                Branches[i].Source.Index != other.Branches[i].Source.Index
                || Branches[i].Inside != other.Branches[i].Inside
            )
            {
                return false;
            }
        }

        return true;
    }

    /// <param name="state">A control at any stays open.</param>
    /// <param name="edits">What is opened or joined in thought; an amplifier's input stays where it is.</param>
    public static LiveNetwork Of(Network network, State state, BranchEdits? edits = null)
    {
        edits ??= BranchEdits.None;
        var nodeOf = edits.Apply(network, network.AtTheDials(state, edits.Parted));
        var powered = Supply.PoweredAmplifiers(network, state);
        var present = network
            .Branches.Where(branch =>
                (branch.Kind == BranchKind.AmplifierInput || !edits.Opened.Contains(branch.Index))
                && (branch.Kind != BranchKind.AmplifierOutput || powered.Contains(branch.Element))
            )
            .ToArray();
        return Build(network, nodeOf, present, network.DialsOf(state));
    }

    /// <summary>The part that an ohmmeter sees: batteries out, amplifiers as the resistance of their input.</summary>
    public static LiveNetwork ForDirectCurrent(Network network, State state)
    {
        var nodeOf = network.AtTheDials(state);
        var present = network
            .Branches.Where(branch =>
                branch.Kind is not (BranchKind.Capacitor or BranchKind.Battery or BranchKind.AmplifierOutput)
            )
            .ToArray();
        return Build(network, nodeOf, present, network.DialsOf(state));
    }

    /// <summary>The part that a direct current from batteries and working amplifiers flows in, with an amplifier on the jack.</summary>
    /// <param name="probe">The net whose voltage is taken, and the one that it is taken against.</param>
    /// <param name="opened">Branches taken out in thought, as indices into <see cref="Network.Branches"/>.</param>
    internal static LiveNetwork WithSupplies(
        Network network,
        State state,
        (int Net, int Against) probe,
        IReadOnlyCollection<int> opened
    )
    {
        var nodeOf = network.AtTheDials(state);
        var powered = Supply.PoweredAmplifiers(network, state);
        var present = network
            .Branches.Where(branch =>
                branch.Kind != BranchKind.Capacitor
                && (branch.Kind != BranchKind.AmplifierOutput || powered.Contains(branch.Element))
                && !opened.Contains(branch.Index)
            )
            .ToArray();
        return Build(
            network,
            nodeOf,
            present,
            network.DialsOf(state),
            probe,
            [new NetPair(network.Tip, network.Sleeve)]
        );
    }

    private static LiveNetwork Build(Network network, int[] nodeOf, Branch[] present, DialSetting dials) =>
        Build(network, nodeOf, present, dials, (network.Tip, network.Sleeve), []);

    private static LiveNetwork Build(
        Network network,
        int[] nodeOf,
        Branch[] present,
        DialSetting dials,
        (int Net, int Against) probe,
        ReadOnlySpan<NetPair> load
    )
    {
        if (nodeOf[probe.Net] == nodeOf[probe.Against])
        {
            return new LiveNetwork(isShort: true, 1, [], []);
        }

        var isLive = LivePart.Find(network, present, nodeOf, dials, load, probe);
        var live = present.Where((_, i) => isLive[i]).ToArray();
        var (numbers, count) = (new int[nodeOf.Length], Tip + 1);
        Array.Fill(numbers, -1);
        (numbers[nodeOf[probe.Against]], numbers[nodeOf[probe.Net]]) = (Sleeve, Tip);
        var branches = ImmutableArray.CreateBuilder<LiveBranch>(live.Length);
        foreach (var branch in live)
        {
            var inside = TwoPoles.Of(network.Circuit, branch, dials, Number(branch.From), Number(branch.To));
            branches.Add(new LiveBranch(branch, inside));
        }

        (int From, int To)? loaded = load is [var pair] && isLive[^1] ? (Number(pair.Low), Number(pair.High)) : null;
        var made = branches.MoveToImmutable();
        return new LiveNetwork(isShort: false, count, made, AmplifierOrder.Of(network.Circuit, count, made))
        {
            Load = loaded,
        };

        int Number(int net)
        {
            ref var number = ref numbers[nodeOf[net]];
            return number < 0 ? number = count++ : number;
        }
    }
}
