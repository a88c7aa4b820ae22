using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Connections;
using WireText.Circuits;

namespace WireText.Proposing;

/// <summary>Finds the nets that wires from open lugs may lead to, and the lugs that the harness has to reach.</summary>
internal sealed class LandingNets
{
    private LandingNets(
        ImmutableArray<LandingNet> nets,
        Dictionary<int, int> onOpenLugs,
        ImmutableArray<ImmutableArray<int>> mustBeReached
    ) => (Nets, OnOpenLugs, MustBeReached) = (nets, onOpenLugs, mustBeReached);

    /// <summary>The first is the sleeve's; the others in the order of their first lugs.</summary>
    public ImmutableArray<LandingNet> Nets { get; }

    /// <summary>For each open lug that has a wire already, its net.</summary>
    public Dictionary<int, int> OnOpenLugs { get; }

    /// <summary>Of each group of nets one at least must be reached: a lead, a lug that may not stay empty, either end of a track.</summary>
    public ImmutableArray<ImmutableArray<int>> MustBeReached { get; }

    public static LandingNets Of(Circuit circuit)
    {
        var open = OpenLugs.Of(circuit).ToHashSet();
        var context = CheckContext.Of(circuit, null);
        var missing = circuit
            .Parts.SelectMany(part => new JointRules(context, part).Missing())
            .Where(one => one.Fault != JointFault.DeadEnd && !open.Contains(one.Lug))
            .ToList();
        var wanted = Wanted(circuit, context, open, missing);
        var nets = new List<(int Net, LandingNet Landing)>();
        foreach (var net in wanted)
        {
            var members = circuit.Nets.Members[net];
            ImmutableArray<int> lugs = [.. members.Where(lug => !open.Contains(lug))];
            int? free =
                members is [var only]
                && !context.IsJointed(only)
                && (circuit.Lugs[only].IsLead || !circuit.Lugs[only].IsMetal)
                    ? only
                    : null;
            nets.Add((net, new LandingNet(lugs, free)));
        }

        var places = nets.Select((one, i) => (one.Net, i)).ToDictionary(one => one.Net, one => one.i);
        return new LandingNets(
            [.. nets.Select(one => one.Landing)],
            open.Where(lug => context.IsJointed(lug) && places.ContainsKey(circuit.Nets.OneNet[lug]))
                .ToDictionary(lug => lug, lug => places[circuit.Nets.OneNet[lug]]),
            [
                .. Reached(circuit, missing)
                    .Select(group =>
                        group
                            .Select(lug => circuit.Nets.OneNet[lug])
                            .Where(places.ContainsKey)
                            .Select(net => places[net])
                            .ToImmutableArray()
                    ),
            ]
        );
    }

    /// <summary>The numbers of the nets, the sleeve's first.</summary>
    private static List<int> Wanted(
        Circuit circuit,
        CheckContext context,
        HashSet<int> open,
        List<MissingJoint> missing
    )
    {
        var (tip, sleeve) = (circuit.Outputs[0].Tip, circuit.Outputs[0].Sleeve);
        var wipers = circuit.Elements.OfType<Track>().Select(track => circuit.Nets.OneNet[track.Wiper]).ToHashSet();
        var lugs = new SortedSet<int>(open.Where(context.IsJointed));
        lugs.UnionWith(circuit.Elements.OfType<Coil>().SelectMany(coil => coil.Ends));
        lugs.UnionWith(
            circuit.Elements.OfType<Amplifier>().SelectMany(amplifier => new[] { amplifier.In, amplifier.Out })
        );
        lugs.UnionWith(circuit.Open.SelectMany(one => one.At));
        lugs.UnionWith(missing.Where(one => one.Fault == JointFault.NoJoint).Select(one => one.Lug));
        lugs.UnionWith(TrackEnds(circuit, context));
        lugs.UnionWith(OtherContacts(circuit, context, open));
        lugs.UnionWith(
            circuit.Outputs.Select(output => output.Tip).Where(one => !wipers.Contains(circuit.Nets.OneNet[one]))
        );
        return
        [
            circuit.Nets.OneNet[sleeve],
            .. lugs.Where(lug => !circuit.Lugs[lug].IsInner)
                .Select(lug => circuit.Nets.OneNet[lug])
                .Distinct()
                .Where(net => net != circuit.Nets.OneNet[sleeve] && !IsTipBehindAWiper(net)),
        ];

        // What is to be switched there is switched before the volume, unless the text says otherwise.
        bool IsTipBehindAWiper(int net) =>
            net == circuit.Nets.OneNet[tip]
            && wipers.Contains(net)
            && !circuit.Open.SelectMany(one => one.At).Any(lug => circuit.Nets.OneNet[lug] == net)
            && !open.Any(lug => circuit.Nets.OneNet[lug] == net);
    }

    /// <summary>
    /// Track ends in use, and free ends of a pot whose wiper is wired: of a track that is grounded at its other end the free one, of a
    /// track with neither end wired both, unless the text names one.
    /// </summary>
    private static IEnumerable<int> TrackEnds(Circuit circuit, CheckContext context)
    {
        var named = circuit.Open.SelectMany(one => one.At).ToHashSet();
        foreach (var track in circuit.Elements.OfType<Track>().Where(track => context.IsJointed(track.Wiper)))
        {
            foreach (var (end, other) in new[] { (track.Low, track.High), (track.High, track.Low) })
            {
                if (
                    context.IsJointed(end)
                    || circuit.Nets.SameNet(other, circuit.Outputs[0].Sleeve)
                    || (!context.IsJointed(other) && !named.Contains(other))
                )
                {
                    yield return end;
                }
            }
        }
    }

    /// <summary>Nets of nothing but contacts of other controls, and an empty common of one whose throws are wired.</summary>
    private static IEnumerable<int> OtherContacts(Circuit circuit, CheckContext context, HashSet<int> open)
    {
        var controls = circuit.Controls.Where(control =>
            !control.IsPlug && circuit.Open.All(one => one.Control != control.Index)
        );
        var contacts = controls
            .SelectMany(control => control.Positions)
            .SelectMany(position => position.Closed)
            .SelectMany(group => group)
            .Where(lug => !open.Contains(lug))
            .ToHashSet();
        foreach (var lug in contacts.Order())
        {
            var isJointed = context.IsJointed(lug);
            if (
                isJointed
                    ? circuit.Nets.Members[circuit.Nets.OneNet[lug]].All(contacts.Contains)
                    : circuit
                        .Controls.SelectMany(control => control.Positions)
                        .SelectMany(position => position.Closed)
                        .Count(group => group.Contains(lug) && group.Any(context.IsJointed)) > 1
            )
            {
                yield return lug;
            }
        }
    }

    private static IEnumerable<ImmutableArray<int>> Reached(Circuit circuit, List<MissingJoint> missing)
    {
        foreach (var lug in missing.Where(one => one.Fault == JointFault.NoJoint).Select(one => one.Lug))
        {
            yield return [lug];
        }

        foreach (
            var track in missing
                .Where(one => one.Fault == JointFault.EitherEnd)
                .Select(one => circuit.Elements.OfType<Track>().First(track => track.Ends.Contains(one.Lug)))
                .Distinct()
        )
        {
            yield return [track.Low, track.High];
        }
    }
}
