using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;
using WireText.Electrical.Networks;
using WireText.Parts;

namespace WireText.Diagnosing;

/// <summary>What is allowed to be measured next: at the plug first, then outside, then inside what the suspects bring.</summary>
public sealed class MeasurementList
{
    /// <summary>Measurements that are weighed against each other. Chosen: more than a bench has patience for.</summary>
    internal const int Most = 400;

    private readonly Instrument instrument;
    private readonly Circuit circuit;
    private readonly State middle;
    private readonly List<Measurement> all = [];
    private readonly HashSet<Measurement> met = [];

    private MeasurementList(Instrument instrument)
    {
        this.instrument = instrument;
        circuit = instrument.Circuit;
        middle = State.Rest(circuit).AtAll(5);
    }

    /// <param name="faults">What is still suspected.</param>
    public static ImmutableArray<Measurement> Of(Instrument instrument, IEnumerable<Fault> faults)
    {
        var list = new MeasurementList(instrument);
        list.AddOutside();
        foreach (var fault in faults)
        {
            list.AddInside(fault);
        }

        return [.. list.all.Take(Most)];
    }

    /// <summary>The positions at the plug, each control's one at a time: what is read first.</summary>
    public static ImmutableArray<State> Positions(Circuit circuit)
    {
        var rest = State.Rest(circuit);
        return
        [
            rest,
            .. from control in circuit.Controls
            where !control.IsPlug
            from position in Enumerable.Range(0, control.Positions.Length)
            where position != control.Rest
            select rest.At(control.Index, position),
        ];
    }

    private void AddOutside()
    {
        foreach (var jack in circuit.UsedJacks())
        {
            var positions = Positions(circuit);
            var dialled = from position in positions from dial in circuit.Dials select position.At(dial, 0);
            ImmutableArray<State> middled = [.. circuit.Dials.Select(dial => positions[0].At(dial, 5))];
            foreach (var state in positions.Concat(dialled).Concat(middled))
            {
                Add(new FoundAtPlug(jack.Part, state, Turning: null));
            }

            foreach (var dial in circuit.Dials)
            {
                Add(new FoundAtPlug(jack.Part, positions[0], dial.Index));
            }

            // An ear takes longer than a meter: a dial is turned down in the first position where the signal passes it.
            var network = Network.Of(circuit.SeenFrom(jack))!;
            var heard = circuit.Dials.Select(dial =>
                (positions.FirstOrDefault(state => IsLive(network, state, dial)) ?? positions[0]).At(dial, 0)
            );
            foreach (var state in positions.Concat(heard).Concat(middled))
            {
                Add(new FoundAtPlug(jack.Part, state, Turning: null), isByEar: true);
            }
        }

        foreach (var lug in circuit.Parts.Where(part => part.Kind == PartKinds.Metal).SelectMany(part => part.Lugs))
        {
            Add(new FoundAtMetal(State.Rest(circuit), lug));
        }

        Add(new FoundAtLead());
        foreach (var battery in circuit.Elements.OfType<Battery>())
        {
            Add(new FoundAtCell(battery.Index));
        }
    }

    private bool IsLive(Network network, State state, Dial dial) =>
        LivePart
            .Of(network, state)
            .Select(branch => circuit.Elements[network.Branches[branch].Element])
            .Any(element => element is Track track && track.Dial == dial.Index);

    private void AddInside(Fault fault)
    {
        if (fault.Joint is { } joint)
        {
            AddJoint(instrument.Joints[joint]);
        }

        if (fault.Leaf is { } leaf)
        {
            AddLeaf(instrument.Leaves[leaf]);
        }

        if (fault.Lugs is var (one, other))
        {
            AddBetween(middle, one, other);
        }

        if (fault.Element is { } element)
        {
            AddElement(circuit.Elements[element]);
        }
    }

    private void AddJoint(SolderJoint joint)
    {
        var run = instrument.Runs[joint.Run];
        if (run.Wires.FirstOrDefault(wire => circuit.Wires[wire].Touches(joint.Lug), -1) is >= 0 and var wire)
        {
            Add(new FoundAtJoint(joint.Lug, wire));
        }

        for (var i = 1; i < run.Lugs.Length; i++)
        {
            AddBetween(middle, run.Lugs[i - 1], run.Lugs[i]);
        }
    }

    private void AddLeaf(Leaf leaf)
    {
        var control = circuit.Controls[leaf.Control];
        foreach (var isClosed in new[] { true, false })
        {
            for (var position = 0; position < control.Positions.Length; position++)
            {
                var closes = control
                    .Positions[position]
                    .Closed.Any(group => group.Contains(leaf.Common) && group.Contains(leaf.Throw));
                if (closes == isClosed && !control.IsPlug)
                {
                    AddBetween(middle.At(control.Index, position), leaf.Common, leaf.Throw);
                    break;
                }
            }
        }
    }

    private void AddElement(Element element)
    {
        if (element is Battery)
        {
            return;
        }

        var ends = element.Ends;
        for (var one = 0; one < ends.Length; one++)
        {
            for (var other = one + 1; other < ends.Length; other++)
            {
                AddBetween(middle, ends[one], ends[other]);
            }
        }

        Add(new FoundAlone(element.Index));
    }

    private void AddBetween(State state, int one, int other)
    {
        if (one != other && !circuit.Lugs[one].IsInner && !circuit.Lugs[other].IsInner)
        {
            Add(new FoundBetween(state, Math.Min(one, other), Math.Max(one, other)));
        }
    }

    private void Add(FoundPlace place, bool isByEar = false)
    {
        var measurement = new Measurement(place, isByEar);
        if (met.Add(measurement))
        {
            all.Add(measurement);
        }
    }
}
