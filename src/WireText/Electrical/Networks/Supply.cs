using WireText.Circuits;

namespace WireText.Electrical.Networks;

/// <summary>Which amplifiers get their supply: through metal and batteries alone, from the supply lug round to the common.</summary>
public static class Supply
{
    /// <summary>The amplifiers that work, as indices into <see cref="Circuit.Elements"/>; those that need no supply always do.</summary>
    public static HashSet<int> PoweredAmplifiers(Network network, State state)
    {
        var powered = new HashSet<int>();
        int[]? nodeOf = null;
        foreach (var amplifier in network.Circuit.Elements.OfType<Amplifier>())
        {
            if (amplifier.Supply is null)
            {
                powered.Add(amplifier.Index);
                continue;
            }

            nodeOf ??= network.InContact(state);
            if (VoltsOf(network, nodeOf, amplifier) > 0)
            {
                powered.Add(amplifier.Index);
            }
        }

        return powered;
    }

    /// <summary>The voltage from an amplifier's supply lug to its common, through contacts and batteries without load; null when not closed.</summary>
    /// <param name="nodeOf">For each net, its node in contact.</param>
    internal static double? VoltsOf(Network network, int[] nodeOf, Amplifier amplifier) =>
        amplifier.Supply is { } supply ? VoltsBetween(network, nodeOf, supply, amplifier.Common) : null;

    /// <summary>The voltage of one lug against another, through contacts and batteries without load; null when nothing of that kind joins them.</summary>
    /// <param name="nodeOf">For each net, its node in contact.</param>
    private static double? VoltsBetween(Network network, int[] nodeOf, int lug, int against)
    {
        var nets = network.Circuit.Nets.OneNet;
        var volts = new Dictionary<int, double> { [nodeOf[nets[against]]] = 0 };
        var open = new Queue<int>(volts.Keys);
        while (open.TryDequeue(out var node))
        {
            foreach (var battery in network.Circuit.Elements.OfType<Battery>())
            {
                var (plus, minus) = (nodeOf[nets[battery.Plus]], nodeOf[nets[battery.Minus]]);
                if (minus == node && volts.TryAdd(plus, volts[node] + battery.Volts))
                {
                    open.Enqueue(plus);
                }
                else if (plus == node && volts.TryAdd(minus, volts[node] - battery.Volts))
                {
                    open.Enqueue(minus);
                }
            }
        }

        return volts.TryGetValue(nodeOf[nets[lug]], out var found) ? found : null;
    }
}
