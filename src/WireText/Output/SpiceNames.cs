using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Output;

/// <summary>Names for nodes and elements that ngspice takes, made from those of lugs and parts: <c>vol.3</c> becomes <c>vol_3</c>.</summary>
internal sealed class SpiceNames
{
    private const string Ground = "0";

    private readonly Network network;
    private readonly int[] nodeOf;
    private readonly HashSet<string> taken = new(StringComparer.Ordinal) { "cable", "input" };
    private readonly SortedDictionary<int, string> nodes = [];
    private readonly string[] elements;

    public SpiceNames(Network network, State state)
    {
        this.network = network;
        nodeOf = network.AtTheDials(state);
        var output = network.Circuit.Outputs[0];
        nodes.Add(nodeOf[network.Sleeve], Ground);
        if (nodeOf[network.Tip] != nodeOf[network.Sleeve])
        {
            nodes.Add(nodeOf[network.Tip], Unique(network.Circuit.NameOf(output.Tip)));
        }

        Tip = nodes[nodeOf[network.Tip]];
        NameJoined(network.DialsOf(state));
        elements = [.. network.Branches.Select(branch => Unique(PlainName(branch)))];
    }

    /// <summary>The node of the tip; ground when tip and sleeve are joined.</summary>
    public string Tip { get; }

    /// <summary>True when tip and sleeve are one node.</summary>
    public bool IsShort => Tip == Ground;

    public string NodeOf(int net) => nodes[nodeOf[net]];

    public string NodeOfLug(int lug) => NodeOf(network.Circuit.Nets.OneNet[lug]);

    public string ElementOf(Branch branch) => elements[branch.Index];

    /// <summary>True when a branch lies between two nodes that elements or the load join with the sleeve.</summary>
    public bool IsIn(Branch branch) =>
        nodeOf[branch.From] != nodeOf[branch.To]
        && nodes.ContainsKey(nodeOf[branch.From])
        && nodes.ContainsKey(nodeOf[branch.To]);

    /// <summary>A comment for each node that holds more than one net, and the parts that float.</summary>
    public void WriteNodes(StringBuilder deck)
    {
        var circuit = network.Circuit;
        foreach (var (node, name) in nodes)
        {
            var lugs = circuit
                .Lugs.Where(lug => nodeOf[circuit.Nets.OneNet[lug.Index]] == node)
                .Select(lug => lug.Name);
            deck.Append(CultureInfo.InvariantCulture, $"* node {name}: {string.Join(' ', lugs)}\n");
        }

        var floating = network
            .Branches.Where(branch => !nodes.ContainsKey(nodeOf[branch.From]) || !nodes.ContainsKey(nodeOf[branch.To]))
            .Select(branch => circuit.Elements[branch.Element].Name)
            .Distinct(StringComparer.Ordinal)
            .ToList();
        if (floating.Count > 0)
        {
            deck.Append(CultureInfo.InvariantCulture, $"* floats, left out: {string.Join(' ', floating)}\n");
        }
    }

    private void NameJoined(DialSetting dials)
    {
        bool grew;
        do
        {
            grew = false;
            foreach (var branch in network.Branches.Where(branch => dials.StateOf(branch) == SectionState.Kept))
            {
                var (from, to) = (nodeOf[branch.From], nodeOf[branch.To]);
                if (nodes.ContainsKey(from) != nodes.ContainsKey(to))
                {
                    var node = nodes.ContainsKey(from) ? to : from;
                    nodes.Add(node, Unique(FirstLugOf(node)));
                    grew = true;
                }
            }
        } while (grew);
    }

    private string FirstLugOf(int node)
    {
        var circuit = network.Circuit;
        return circuit.Lugs.First(lug => nodeOf[circuit.Nets.OneNet[lug.Index]] == node).Name;
    }

    private string PlainName(Branch branch)
    {
        var name = network.Circuit.Elements[branch.Element].Name;
        return branch.Kind switch
        {
            BranchKind.TrackLow => name + "_low",
            BranchKind.TrackHigh => name + "_high",
            BranchKind.AmplifierOutput => name + "_drive",
            _ => name,
        };
    }

    private string Unique(string name)
    {
        var plain = new StringBuilder();
        foreach (var letter in name)
        {
            // ngspice reads upper and lower case as one.
            plain.Append(char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '_');
        }

        var unique = plain.ToString();
        for (var i = 2; !taken.Add(unique); i++)
        {
            unique = string.Create(CultureInfo.InvariantCulture, $"{plain}_{i}");
        }

        return unique;
    }
}
