using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Comparing;

/// <summary>Puts what came out of a circuit behind all that is in the later one.</summary>
internal sealed class OverlayBuilder
{
    private readonly CircuitComparison circuits;
    private readonly List<Part> parts;
    private readonly List<Lug> lugs;
    private readonly List<Wire> wires;
    private readonly List<Element> elements;
    private readonly Dictionary<int, int> lugOf = [];

    public OverlayBuilder(CircuitComparison circuits)
    {
        this.circuits = circuits;
        var now = circuits.After;
        (parts, lugs) = ([.. now.Parts], [.. now.Lugs]);
        (wires, elements) = ([.. now.Wires], [.. now.Elements]);
    }

    /// <summary>The wires of the earlier circuit that go, by their place in the built one.</summary>
    public ImmutableDictionary<int, Wire> Gone { get; private set; } = ImmutableDictionary<int, Wire>.Empty;

    public Circuit Build()
    {
        foreach (var part in circuits.Dropped)
        {
            Add(part);
        }

        var gone = ImmutableDictionary.CreateBuilder<int, Wire>();
        foreach (var wire in circuits.Wires.Where(change => change.Kind != WireChangeKind.Exchanged))
        {
            if (wire.Before is { } was && LugOf(was.From) is { } from && LugOf(was.To) is { } to)
            {
                gone.Add(wires.Count, was);
                wires.Add(Loose(was, from, to));
            }
        }

        Gone = gone.ToImmutable();
        return circuits.After with
        {
            Parts = [.. parts],
            Lugs = [.. lugs],
            Wires = [.. wires],
            Elements = [.. elements],
            Nets = NetBuilder.Build(lugs.Count, circuits.After.Joins),
        };
    }

    private void Add(Part part)
    {
        var (index, before) = (parts.Count, circuits.Before);
        var name = Free(part.Name, taken => parts.Exists(other => Naming.Alike(other.Name, taken)));
        foreach (var lug in part.Lugs.Select(lug => before.Lugs[lug]))
        {
            lugOf[lug.Index] = lugs.Count;
            lugs.Add(lug with { Index = lugs.Count, Part = index, Name = name + lug.Name[part.Name.Length..] });
        }

        var own = part.Elements.Select(element => Moved(before.Elements[element], index)).OfType<Element>().ToList();
        elements.AddRange(own);
        parts.Add(
            part with
            {
                Index = index,
                Name = name,
                Lugs = [.. part.Lugs.Select(lug => lugOf[lug])],
                Controls = [],
                Dials = [],
                Elements = [.. own.Select(element => element.Index)],
                HangsOn = null,
            }
        );
    }

    /// <summary>What a face is made from; null for the rest, which nobody computes here.</summary>
    private Element? Moved(Element element, int part) =>
        element switch
        {
            Coil coil => coil with
            {
                Index = elements.Count,
                Part = part,
                Start = lugOf[coil.Start],
                Finish = lugOf[coil.Finish],
            },
            Capacitor capacitor => capacitor with
            {
                Index = elements.Count,
                Part = part,
                A = lugOf[capacitor.A],
                B = lugOf[capacitor.B],
            },
            _ => null,
        };

    /// <summary>A wire by itself: what it was twisted with, or braided over, stays or goes by its own line.</summary>
    private Wire Loose(Wire wire, int from, int to) =>
        wire with
        {
            Index = wires.Count,
            Id = Free($"{lugs[from].Name}--{lugs[to].Name}", taken => wires.Exists(other => other.Id == taken)),
            Kind = wire.Kind is WireKind.Core or WireKind.Braid ? WireKind.Wire : wire.Kind,
            From = from,
            To = to,
            Run = wires.Select(other => other.Run + 1).DefaultIfEmpty().Max(),
            Cable = null,
        };

    /// <summary>Null where a lug of that name is there no more, and for an end that was cut back.</summary>
    private int? LugOf(int lug) =>
        lug < 0 ? null
        : lugOf.TryGetValue(lug, out var own) ? own
        : circuits.Parts.AfterOf(lug);

    private static string Free(string name, Func<string, bool> isTaken) =>
        Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? name : $"{name}~{n}").First(tried => !isTaken(tried));
}
