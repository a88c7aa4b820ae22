using System.Collections.Immutable;
using WireText.Checks;
using WireText.Circuits;

namespace WireText.Proposing;

/// <summary>What is to be found: the open lugs of a circuit, what wires on them may lead to, and what must be true in each state.</summary>
internal sealed class HarnessProblem
{
    private HarnessProblem(
        Circuit circuit,
        LandingNets landing,
        OpenLugs lugs,
        ImmutableArray<HarnessState> states,
        Joining forced,
        ImmutableArray<int> loose
    )
    {
        Circuit = circuit;
        Nets = landing.Nets;
        MustBeReached = landing.MustBeReached;
        Lugs = lugs;
        States = states;
        Forced = forced;
        LooseMetal = loose;
        Bare = WithoutOpenContacts(circuit, loose);
    }

    /// <summary>As the text says it, nothing on the open lugs but what is soldered already.</summary>
    public Circuit Circuit { get; }

    /// <summary>The same without the contacts that are open, and with metal leads grounded: what joinings are tried on.</summary>
    public Circuit Bare { get; }

    public ImmutableArray<LandingNet> Nets { get; }

    /// <summary>Of each group of nets one at least must be reached.</summary>
    public ImmutableArray<ImmutableArray<int>> MustBeReached { get; }

    public OpenLugs Lugs { get; }

    public ImmutableArray<HarnessState> States { get; }

    /// <summary>Leads that are metal and end a coil: joined to the sleeve for good, whatever else is found.</summary>
    public Joining Forced { get; }

    /// <summary>Leads of bare metal that are wired nowhere: each is soldered to the sleeve's net.</summary>
    public ImmutableArray<int> LooseMetal { get; }

    /// <summary>The problem, or why there is none.</summary>
    public static (HarnessProblem? Problem, string? Why) Of(Circuit circuit)
    {
        if (
            circuit
                .Open.Select(open => circuit.Controls[open.Control])
                .FirstOrDefault(control => control.Positions.Length > OpenLugs.MostPositions) is
            { } large
        )
        {
            return (null, $"'{large.Name}' has more than {OpenLugs.MostPositions} positions");
        }

        var landing = LandingNets.Of(circuit);
        var lugs = OpenLugs.Of(circuit, landing.OnOpenLugs);
        if (HarnessSearch.WhyTooLarge(landing.Nets.Length, lugs) is { } why)
        {
            return (null, why);
        }

        if (HarnessStates.Of(circuit, lugs) is not { } states)
        {
            return (null, $"the controls have more than {HarnessStates.Limit} states together");
        }

        var forced = Joining.Apart;
        for (var net = 1; net < landing.Nets.Length; net++)
        {
            if (landing.Nets[net].Free is { } lead && circuit.Lugs[lead].IsMetal)
            {
                forced = forced.With(0, net);
            }
        }

        return (new HarnessProblem(circuit, landing, lugs, states, forced, Loose(circuit, landing)), null);
    }

    /// <summary>The bare circuit with nets joined.</summary>
    public Circuit Joined(Joining joining)
    {
        var joins = Bare.Joins.ToBuilder();
        for (var net = 1; net < Nets.Length; net++)
        {
            if (joining[net] != net)
            {
                joins.Add(JoinOf(joins.Count, Representative(joining[net]), Representative(net)));
            }
        }

        return Bare with
        {
            Joins = joins.ToImmutable(),
            Nets = NetBuilder.Build(Bare.Lugs.Length, joins),
        };
    }

    /// <summary>The states in which a column of contacts closes, as indices into <see cref="States"/>.</summary>
    public List<int> StatesOf(int column) =>
        [.. Enumerable.Range(0, States.Length).Where(state => States[state].Columns.Contains(column))];

    /// <summary>A lug of a landing net.</summary>
    public int Representative(int net) =>
        Nets[net].Lugs is [var first, ..] ? first : Lugs.Lugs.First(lug => Lugs.FixedOn(lug) == net);

    /// <summary>The same with one state, or several, of which nothing is said.</summary>
    public HarnessProblem Without(Func<HarnessState, bool> isLeftOut) =>
        new(this, [.. States.Where(state => !isLeftOut(state))]);

    private HarnessProblem(HarnessProblem other, ImmutableArray<HarnessState> states)
    {
        (Circuit, Bare, Nets, MustBeReached) = (other.Circuit, other.Bare, other.Nets, other.MustBeReached);
        (Lugs, States, Forced, LooseMetal) = (other.Lugs, states, other.Forced, other.LooseMetal);
    }

    private static ImmutableArray<int> Loose(Circuit circuit, LandingNets landing)
    {
        var context = CheckContext.Of(circuit, null);
        var landed = landing.Nets.SelectMany(net => net.Lugs).ToHashSet();
        return
        [
            .. circuit
                .Lugs.Where(lug => lug is { IsLead: true, IsMetal: true } && !context.IsJointed(lug.Index))
                .Select(lug => lug.Index)
                .Where(lug => !landed.Contains(lug)),
        ];
    }

    private static Circuit WithoutOpenContacts(Circuit circuit, ImmutableArray<int> loose)
    {
        var open = circuit.Open.Select(one => one.Control).ToHashSet();
        var joins = circuit.Joins.ToBuilder();
        foreach (var lug in loose)
        {
            joins.Add(JoinOf(circuit, joins.Count, circuit.Outputs[0].Sleeve, lug));
        }

        return circuit with
        {
            Controls =
            [
                .. circuit.Controls.Select(control =>
                    open.Contains(control.Index)
                        ? control with
                        {
                            Positions = [.. control.Positions.Select(position => position with { Closed = [] })],
                        }
                        : control
                ),
            ],
            Joins = joins.ToImmutable(),
            Nets = NetBuilder.Build(circuit.Lugs.Length, joins),
        };
    }

    private Join JoinOf(int index, int from, int to) => JoinOf(Circuit, index, from, to);

    private static Join JoinOf(Circuit circuit, int index, int from, int to) =>
        new(index, JoinKind.Wire, from, to, -1, circuit.Open[0].DeclaredAt);
}
