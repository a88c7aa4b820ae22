using System.Collections.Immutable;
using System.Globalization;
using WireText.Checks;
using WireText.Circuits;

namespace WireText.Proposing;

/// <summary>Lays a harness out as lines of wiring: a chain along the lugs of each net, one wire on to the rest of it, and leads where there is room.</summary>
internal sealed class HarnessWires
{
    /// <summary>Colours for nets that have none yet, in turn. Chosen: none of them is a ground's or a hot rail's.</summary>
    private static readonly ImmutableArray<string> Colours =
    [
        "white",
        "yellow",
        "blue",
        "orange",
        "violet",
        "green",
        "grey",
        "pink",
    ];

    /// <summary>The usual colour of the rail that leads to a volume. Common practice.</summary>
    private const string HotColour = "red";

    /// <summary>Joints on a case up to which another is put there. Chosen: <c>check</c> speaks of one more.</summary>
    private const int MostOnACase = 8;

    /// <summary>Between lugs of different parts, in millimetres, for the order of a chain alone. Chosen.</summary>
    private const double Apart = 60;

    private readonly HarnessProblem problem;
    private readonly Circuit circuit;
    private readonly Harness harness;
    private readonly int[] ends;
    private readonly List<string> lines = [];
    private int coloured;
    private int splices;
    private double length;

    private HarnessWires(HarnessProblem problem, Harness harness)
    {
        (this.problem, this.harness, circuit) = (problem, harness, problem.Circuit);
        ends = new int[circuit.Lugs.Length];
        foreach (
            var (lug, _) in circuit
                .Wires.SelectMany(wire => new[] { (wire.From, wire.Run), (wire.To, wire.Run) })
                .Where(end => end.Item1 >= 0)
                .Distinct()
        )
        {
            ends[lug]++;
        }
    }

    /// <summary>The lines, in the order of the nets.</summary>
    public static ImmutableArray<string> Of(HarnessProblem problem, Harness harness) =>
        [.. Laid(problem, harness).lines];

    /// <summary>How long the wires are, in tenths of a millimetre: true between lugs of one part, elsewhere all alike.</summary>
    public static long LengthOf(HarnessProblem problem, Harness harness) => (long)(Laid(problem, harness).length * 10);

    private static HarnessWires Laid(HarnessProblem problem, Harness harness)
    {
        var wires = new HarnessWires(problem, harness);
        for (var net = 0; net < problem.Nets.Length; net++)
        {
            if (harness.Direct[net] == net)
            {
                wires.AddNet(net);
            }
        }

        for (var jumper = problem.Nets.Length; jumper < Joining.MostNodes; jumper++)
        {
            if (wires.LugsOn(jumper) is { Count: > 0 } lugs)
            {
                wires.AddChain(lugs, null, wires.NextColour());
            }
        }

        foreach (var lead in problem.LooseMetal)
        {
            wires.AddWire([lead, wires.Rail(0, [])!.Value], WireLines.GroundColour);
        }

        return wires;
    }

    private List<int> LugsOn(int node) => [.. problem.Lugs.Lugs.Where((_, i) => harness.Labels[i] == node)];

    private void AddNet(int net)
    {
        var members = Enumerable
            .Range(net, problem.Nets.Length - net)
            .Where(one => harness.Direct[one] == net)
            .ToList();
        var free = members.Select(one => problem.Nets[one].Free).OfType<int>().ToList();
        var leads = free.FindAll(lug => circuit.Lugs[lug].IsLead);
        var lugs = LugsOn(net).Concat(free.Except(leads)).ToList();
        var rest = members.Where(one => !problem.Nets[one].IsFree).SelectMany(RestOf).ToList();
        if (lugs.Count + rest.Count == 0)
        {
            AddSplice(leads);
            return;
        }

        if (LugsOn(net).Count == 0 && members.Count == 1)
        {
            return;
        }

        var colour = ColourOf(net, rest);
        AddChain(lugs, rest.Count == 0 ? null : Rail(net, rest), colour);
        foreach (var lead in leads)
        {
            var at = lugs.Concat(rest.Where(lug => !circuit.Lugs[lug].IsLead))
                .OrderBy(Crowd)
                .ThenBy(lug => lugs.Contains(lug) ? 0 : 1)
                .ThenBy(lug => lug)
                .First();
            AddWire([lead, at], colour);
        }
    }

    /// <summary>The lugs of a net that a wire may be soldered to, those of open controls on which it is already with them.</summary>
    private IEnumerable<int> RestOf(int net) =>
        problem
            .Nets[net]
            .Lugs.Concat(problem.Lugs.Lugs.Where(lug => problem.Lugs.FixedOn(lug) == net))
            .Where(lug => !circuit.Lugs[lug].IsInner && (!circuit.Lugs[lug].IsLead || ends[lug] == 0));

    /// <summary>The lug with fewest conductors; for a ground a case before a lug, and that before bare metal far away.</summary>
    private int? Rail(int net, List<int> rest) =>
        (net == 0 && rest.Count == 0 ? RestOf(0) : rest)
            .OrderBy(lug =>
                net != 0 ? 0
                : IsCase(lug) ? 0
                : circuit.Lugs[lug].IsMetal ? 2
                : 1
            )
            .ThenBy(Crowd)
            .ThenBy(lug => lug)
            .Select(lug => (int?)lug)
            .FirstOrDefault();

    /// <summary>True for the metal of a part that has other lugs, while it has room.</summary>
    private bool IsCase(int lug) =>
        circuit.Lugs[lug] is { IsMetal: true, IsLead: false }
        && circuit.PartOf(circuit.Lugs[lug]).Lugs.Length > 1
        && ends[lug] < MostOnACase;

    /// <summary>A splice has room for any number; a case for many.</summary>
    private int Crowd(int lug) => circuit.PartOf(circuit.Lugs[lug]).Kind == "splice" ? 0 : ends[lug];

    private string ColourOf(int net, List<int> rest) =>
        net == 0 ? WireLines.GroundColour
        : IsHot(net) ? HotColour
        : circuit
            .Wires.Where(wire =>
                wire.Kind == WireKind.Wire && rest.Exists(wire.Touches) && wire.Colour is { IsBare: false }
            )
            .Select(wire => wire.Colour!.Name)
            .FirstOrDefault()
            ?? NextColour();

    /// <summary>True for the end of a volume's track that is not grounded.</summary>
    private bool IsHot(int net)
    {
        return circuit
            .Elements.OfType<Track>()
            .Any(track => IsOver(track.Low, track.High) || IsOver(track.High, track.Low));

        bool IsOver(int end, int other) =>
            circuit.Nets.SameNet(end, circuit.Outputs[0].Sleeve) && problem.Nets[net].Lugs.Contains(other);
    }

    private string NextColour() => Colours[coloured++ % Colours.Length];

    /// <summary>One run along lugs of a net, each time to the nearest that is left, and on to the rest of it.</summary>
    private void AddChain(List<int> lugs, int? rest, string colour)
    {
        var left = new List<int>(lugs);
        var chain = new List<int>();
        while (left.Count > 0)
        {
            var next = chain.Count == 0 ? left[0] : left.MinBy(lug => Distance(chain[^1], lug));
            chain.Add(next);
            left.Remove(next);
        }

        if (rest is { } rail && chain.Count > 0)
        {
            chain.Add(rail);
        }

        if (chain.Count > 1)
        {
            length += chain.Zip(chain.Skip(1)).Sum(pair => Distance(pair.First, pair.Second));
            AddWire(chain, colour);
        }
    }

    private double Distance(int one, int other)
    {
        var (a, b) = (circuit.Lugs[one], circuit.Lugs[other]);
        return a.Part == b.Part && a.Terminal.At is { } from && b.Terminal.At is { } to
            ? Math.Sqrt(((from.X - to.X) * (from.X - to.X)) + ((from.Y - to.Y) * (from.Y - to.Y)))
            : Apart;
    }

    /// <summary>A run; a lead is on a line of its own at the start of it.</summary>
    private void AddWire(List<int> lugs, string colour)
    {
        if (lugs.Count > 2 && circuit.Lugs[lugs[^1]].IsLead)
        {
            AddWire([lugs[^1], lugs[^2]], colour);
            lugs = lugs[..^1];
        }

        foreach (var lug in lugs)
        {
            ends[lug]++;
        }

        lines.Add($"wire {string.Join(" to ", lugs.Select(circuit.NameOf))} {colour}");
    }

    private void AddSplice(List<int> leads)
    {
        if (leads.Count < 2)
        {
            return;
        }

        string name;
        do
        {
            name = string.Create(CultureInfo.InvariantCulture, $"link-{++splices}");
        } while (circuit.FindPart(name) is not null);

        lines.Add($"splice {name} {string.Join(' ', leads.Select(circuit.NameOf))} sleeved");
    }
}
