using System.Text;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>Gathers which lugs belong together, and writes them as wires from lug to lug as a bench runs them.</summary>
internal sealed class SolderPlan
{
    public const string Ground = "ground";

    /// <summary>As many as a lug holds; a case holds more.</summary>
    private const int EndsOnALug = 3;

    private static readonly string[] Colours = ["white", "yellow", "red", "blue", "green", "orange", "violet", "grey"];

    private readonly List<string> nets = [];
    private readonly Dictionary<string, List<string>> posts = [];
    private readonly Dictionary<string, List<string>> leads = [];
    private readonly Dictionary<string, string> sameAs = [];
    private readonly Dictionary<string, int> ends = [];
    private readonly List<(string Line, string First, string Second)> hanging = [];

    /// <summary>From now on two nets are one.</summary>
    public void Merge(string net, string into) => sameAs.Add(net, into);

    /// <summary>Lugs of a net, in the order in which the wire passes them. Ground begins with cases.</summary>
    public void Post(string net, params ReadOnlySpan<string> lugs) => Listed(posts, net).AddRange(lugs);

    /// <summary>Leads that end once, on some lug of the net.</summary>
    public void Lead(string net, params ReadOnlySpan<string> names) => Listed(leads, net).AddRange(names);

    /// <summary>A two-lead part by its own leads between lugs of two nets.</summary>
    public void Hang(string part, string first, string second) => hanging.Add((part, first, second));

    /// <summary>Splices and parts by their leads, and then the wires.</summary>
    public string Write()
    {
        var (parts, wires) = (new StringBuilder(), new StringBuilder());
        foreach (var net in nets.Where(net => Listed(posts, net).Count == 0))
        {
            parts.Append($"splice {net} sleeved\n");
            posts[net].Add(net);
        }

        foreach (var net in nets.Where(IsCrowded))
        {
            parts.Append($"splice {net}-joint sleeved\n");
            posts[net].Add($"{net}-joint");
        }

        for (var i = 0; i < nets.Count; i++)
        {
            if (nets[i] == Ground)
            {
                WriteGround(wires);
            }
            else
            {
                Chain(wires, posts[nets[i]], Colours[i % Colours.Length]);
            }
        }

        foreach (var net in nets)
        {
            foreach (var lead in Listed(leads, net))
            {
                wires.Append($"wire {lead} to {Free(net)} {(net == Ground ? "black" : "brown")}\n");
            }
        }

        foreach (var (line, first, second) in hanging)
        {
            parts.Append($"{line} from {Free(Root(first))} to {Free(Root(second))}\n");
        }

        return $"{parts}{wires}";
    }

    private static bool IsCase(string lug) => lug.EndsWith(".case", StringComparison.Ordinal);

    /// <summary>True where the lugs of a net have less room than the ends that come to it; one splice gives enough.</summary>
    private bool IsCrowded(string net)
    {
        var hung = hanging.Count(part => Root(part.First) == net) + hanging.Count(part => Root(part.Second) == net);
        var lugs = posts[net].Count;
        return net != Ground && (2 * (lugs - 1)) + leads[net].Count + hung > EndsOnALug * lugs;
    }

    private void WriteGround(StringBuilder wires)
    {
        var lugs = posts[Ground];
        Chain(wires, [.. lugs.Where(IsCase), "out.sleeve"], "black");
        foreach (var lug in lugs.Where(lug => !IsCase(lug) && lug != "out.sleeve"))
        {
            wires.Append($"wire {lug} to {Free(Ground)} black\n");
            Count(lug);
        }
    }

    private void Chain(StringBuilder wires, List<string> lugs, string colour)
    {
        for (var i = 1; i < lugs.Count; i++)
        {
            wires.Append($"wire {lugs[i - 1]} to {lugs[i]} {colour}\n");
            Count(lugs[i - 1]);
            Count(lugs[i]);
        }
    }

    /// <summary>The lug of a net with the fewest ends, which gets one more; of ground, the case.</summary>
    private string Free(string net)
    {
        var lugs = posts[net];
        var lug = (net == Ground ? lugs.Where(IsCase) : lugs).MinBy(lug => ends.GetValueOrDefault(lug))!;
        Count(lug);
        return lug;
    }

    private void Count(string lug) => ends[lug] = ends.GetValueOrDefault(lug) + 1;

    private List<string> Listed(Dictionary<string, List<string>> lists, string net)
    {
        var root = Root(net);
        if (!nets.Contains(root))
        {
            nets.Add(root);
            posts.Add(root, []);
            leads.Add(root, []);
        }

        return lists[root];
    }

    private string Root(string net) => sameAs.TryGetValue(net, out var other) ? Root(other) : net;
}
