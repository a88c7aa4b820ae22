using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Faults;

/// <summary>Makes the circuit of an instrument with faults in it.</summary>
internal sealed class FaultMaker
{
    private readonly Instrument instrument;
    private readonly List<Join> joins;
    private ImmutableArray<Element> elements;
    private ImmutableArray<Control> controls;
    private int loose;

    private FaultMaker(Instrument instrument)
    {
        this.instrument = instrument;
        joins = [.. instrument.Right.Joins];
        elements = instrument.Right.Elements;
        controls = instrument.Right.Controls;
        loose = instrument.FirstLoose;
    }

    /// <summary>The same lugs and states, other nets or values; an element that a fault adds comes last.</summary>
    public static Circuit Make(Instrument instrument, IEnumerable<FaultEdit> edits)
    {
        var maker = new FaultMaker(instrument);
        foreach (var edit in edits)
        {
            maker.Do(edit);
        }

        return instrument.Right with
        {
            Joins = [.. maker.joins],
            Elements = maker.elements,
            Controls = maker.controls,
            Nets = NetBuilder.Build(instrument.Right.Lugs.Length, maker.joins),
        };
    }

    private void Do(FaultEdit edit)
    {
        switch (edit)
        {
            case FaultEdit.LeaveOut leave:
                Set(leave.Join, join => join with { To = join.From });
                break;
            case FaultEdit.MoveTo move:
                Set(move.Join, join => join with { To = move.Lug });
                break;
            case FaultEdit.ExchangeNodes exchange:
                SetAll(join => join with { From = Other(join.From, exchange.One, exchange.Other) });
                break;
            case FaultEdit.ExchangeLugs exchange:
                SetAll(join => join with { To = Other(join.To, exchange.One, exchange.Other) });
                break;
            case FaultEdit.Bridge { Ohms: { } ohms } bridge:
                AddResistor(bridge.One, bridge.Other, ohms);
                break;
            case FaultEdit.Bridge bridge:
                joins.Add(joins[0] with { Index = joins.Count, From = bridge.One, To = bridge.Other, Wire = -1 });
                break;
            case FaultEdit.Scale scale:
                Set(scale.Element, element => Scaled(element, scale.Factor));
                break;
            case FaultEdit.Law law:
                Set(law.Element, element => element is Track track ? track with { Taper = law.Taper } : element);
                break;
            case FaultEdit.LiftEnd lift:
                Set(lift.Element, element => Lifted(element, lift.End, loose++));
                break;
            case FaultEdit.NeverCloses leaf:
                SetContacts(instrument.Leaves[leaf.Leaf], _ => null);
                break;
            case FaultEdit.NeverOpens stuck:
                var shut = instrument.Leaves[stuck.Leaf];
                Do(new FaultEdit.Bridge(shut.Common, shut.Throw));
                break;
            case FaultEdit.Resists resists:
                var (dirty, end) = (instrument.Leaves[resists.Leaf], loose++);
                SetContacts(dirty, _ => ImmutableArray.Create(dirty.Common, end));
                AddResistor(end, dirty.Throw, resists.Ohms);
                break;
        }
    }

    private static int Other(int node, int one, int other) =>
        node == one ? other
        : node == other ? one
        : node;

    /// <summary>Only what is soldered moves: what is one piece inside a part stays.</summary>
    private void SetAll(Func<Join, Join> change)
    {
        foreach (var joint in instrument.Joints)
        {
            joins[joint.Join] = change(joins[joint.Join]);
        }
    }

    private void Set(int join, Func<Join, Join> change) => joins[join] = change(joins[join]);

    private void Set(int element, Func<Element, Element> change) =>
        elements = elements.SetItem(element, change(elements[element]));

    private void AddResistor(int one, int other, double ohms) =>
        elements = elements.Add(new Resistor(elements.Length, 0, "fault", one, other, ohms));

    private void SetContacts(Leaf leaf, Func<ImmutableArray<int>, ImmutableArray<int>?> change)
    {
        var control = controls[leaf.Control];
        var positions = control.Positions.Select(position =>
            position with
            {
                Closed =
                [
                    .. position
                        .Closed.Select(pair => pair[0] == leaf.Common && pair[1] == leaf.Throw ? change(pair) : pair)
                        .Where(pair => pair is not null)
                        .Select(pair => pair!.Value),
                ],
            }
        );
        controls = controls.SetItem(leaf.Control, control with { Positions = [.. positions] });
    }

    /// <summary>Turns that are shorted leave a coil its resistance by their share, its inductance by the square.</summary>
    private static Element Scaled(Element element, double factor) =>
        element switch
        {
            Coil coil => coil with { Ohms = coil.Ohms * factor, Henries = coil.Henries * factor * factor },
            Track track => track with { Ohms = track.Ohms * factor },
            Resistor resistor => resistor with { Ohms = resistor.Ohms * factor },
            _ => element,
        };

    private static Element Lifted(Element element, int end, int at) =>
        element switch
        {
            Coil coil => end == 0 ? coil with { Start = at } : coil with { Finish = at },
            Track track => end switch
            {
                0 => track with { Low = at },
                1 => track with { Wiper = at },
                _ => track with { High = at },
            },
            Resistor resistor => end == 0 ? resistor with { A = at } : resistor with { B = at },
            Capacitor capacitor => end == 0 ? capacitor with { A = at } : capacitor with { B = at },
            Inductor inductor => end == 0 ? inductor with { A = at } : inductor with { B = at },
            Battery battery => end == 0 ? battery with { Plus = at } : battery with { Minus = at },
            _ => element,
        };
}
