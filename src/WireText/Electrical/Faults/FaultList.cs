using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Electrical.Faults;

/// <summary>Every single fault of an instrument, each instance once.</summary>
public sealed class FaultList
{
    /// <summary>Faults of one instrument. Chosen: a harness of forty wires has some five hundred.</summary>
    public const int MostFaults = 4_000;

    /// <summary>What is left of a coil whose turns are shorted: equal steps from 10 to 60 %.</summary>
    private static readonly ImmutableArray<double> TurnsLeft = [0.87, 0.80, 0.72, 0.64, 0.56, 0.46];

    /// <summary>What a pot may be of what the text says; within 20 % it is within tolerance.</summary>
    private static readonly ImmutableArray<double> PotFactors = [0.30, 0.42, 0.56, 0.70, 1.35, 1.6, 2.0];

    private static readonly ImmutableArray<double> Leaks = [5e3, 15e3, 50e3, 200e3, 1e6];

    private static readonly ImmutableArray<double> DirtyOhms = [18, 55, 180, 550];

    private readonly Instrument instrument;
    private readonly Circuit right;
    private readonly ImmutableArray<Fault>.Builder all = ImmutableArray.CreateBuilder<Fault>();
    private readonly ILookup<int, SolderJoint> byLug;

    private FaultList(Instrument instrument)
    {
        this.instrument = instrument;
        right = instrument.Right;
        byLug = instrument.Joints.ToLookup(joint => joint.Lug);
        AddJoints();
        AddCoils();
        AddNeighbours();
        AddParts();
        AddLeaves();
        AddTracks();
        AddCases();
        AddJacks();
    }

    /// <summary>The faults, in the order of their kinds as far as they are found part by part; past the bound the last are left out.</summary>
    public static ImmutableArray<Fault> Of(Instrument instrument)
    {
        var list = new FaultList(instrument).all;
        return list.Count <= MostFaults ? list.ToImmutable() : list.ToImmutable()[..MostFaults];
    }

    private static FaultSize Plain(params ReadOnlySpan<FaultEdit> edits) => new([.. edits]);

    private void Add(FaultKind kind, string words, params ReadOnlySpan<FaultEdit> edits) =>
        all.Add(new Fault(all.Count, kind, words, [Plain(edits)]));

    private void Add(Fault fault) => all.Add(fault with { Index = all.Count });

    private string NameOf(int lug) => right.NameOf(lug);

    private bool IsOnGround(int lug) => instrument.Jacks.Any(jack => right.Nets.SameNet(lug, jack.Jack.Sleeve));

    private void AddJoints()
    {
        foreach (var joint in instrument.Joints)
        {
            var kind = right.Lugs[joint.Lug].IsMetal ? FaultKind.JointOnCase : FaultKind.Joint;
            var words = $"{instrument.Runs[joint.Run].Words}: no joint at {NameOf(joint.Lug)}";
            Add(new Fault(0, kind, words, [Plain(new FaultEdit.LeaveOut(joint.Join))]) { Joint = joint.Index });
        }

        foreach (var touch in instrument.Touches)
        {
            var join = right.Joins[touch];
            Add(
                new Fault(
                    0,
                    FaultKind.Touch,
                    $"{NameOf(join.From)} does not touch {NameOf(join.To)}",
                    [Plain(new FaultEdit.LeaveOut(touch))]
                )
                {
                    Lugs = (join.From, join.To),
                }
            );
        }
    }

    private void AddCoils()
    {
        foreach (var coil in right.Elements.OfType<Coil>())
        {
            Add(InElement(coil, FaultKind.CoilOpen, $"coil {coil.Name} is open", new FaultEdit.LiftEnd(coil.Index, 1)));
            Add(
                InElement(
                    coil,
                    FaultKind.CoilShorted,
                    $"coil {coil.Name} is shorted",
                    new FaultEdit.Bridge(coil.Start, coil.Finish)
                )
            );
            Add(
                new Fault(
                    0,
                    FaultKind.ShortedTurns,
                    $"coil {coil.Name} has shorted turns",
                    [.. TurnsLeft.Select(left => Scaled(coil.Index, left, TurnsLeft, Percent(1 - left) + " of them"))]
                )
                {
                    Element = coil.Index,
                }
            );
        }

        foreach (var part in right.Parts)
        {
            AddExchangedLeads(part);
        }
    }

    private static string Percent(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"some {share * 100:0} %");

    /// <param name="cells">All sizes, in order: the cell of one reaches half way to those beside it.</param>
    private static FaultSize Scaled(int element, double factor, ImmutableArray<double> cells, string words) =>
        Plain(new FaultEdit.Scale(element, factor)) with
        {
            Words = words,
            Sized = element,
            HalfWidth = HalfWidthIn(cells, factor),
        };

    private static double HalfWidthIn(ImmutableArray<double> cells, double cell)
    {
        var at = cells.IndexOf(cell);
        var gaps = new[] { at - 1, at + 1 }
            .Where(beside => beside >= 0 && beside < cells.Length)
            .Select(beside => Math.Abs(Math.Log(cells[beside] / cell)))
            .Where(gap => gap < MostGap);
        return gaps.DefaultIfEmpty(MostGap).Max() / 2;
    }

    /// <summary>Cells further apart in ln R have what is within tolerance between them.</summary>
    private const double MostGap = 1.7;

    private static Fault InElement(Element element, FaultKind kind, string words, FaultEdit edit) =>
        new(0, kind, words, [Plain(edit)]) { Element = element.Index };

    private void AddExchangedLeads(Part part)
    {
        var coils = part.Elements.Select(element => right.Elements[element]).OfType<Coil>().ToList();
        if (coils.Count == 0)
        {
            return;
        }

        var outside = part.Lugs.Where(lug => right.Lugs[lug] is { IsInner: false, IsMetal: false }).ToList();
        foreach (var one in outside)
        {
            foreach (var other in outside.Where(other => other > one && !right.Nets.SameNet(one, other)))
            {
                if (ExchangeOf(one, other) is not { } edit)
                {
                    continue;
                }

                var turned = coils.Find(coil => coil.Ends.Contains(one) && coil.Ends.Contains(other));
                var isOnlyCoil = coils.Count == 1 || turned is not null;
                Add(
                    new Fault(
                        0,
                        isOnlyCoil ? FaultKind.CoilTurned : FaultKind.LeadsExchanged,
                        $"{NameOf(one)} and {NameOf(other)} are exchanged",
                        [Plain(edit)]
                    )
                    {
                        Lugs = (one, other),
                        Element = turned?.Index,
                    }
                );
            }
        }
    }

    /// <summary>Two leads change places, or what is soldered to two lugs does; null where one of them is free.</summary>
    private FaultEdit? ExchangeOf(int one, int other)
    {
        var (leads, lugs) = (right.Lugs[one].IsLead, byLug.Contains(one) && byLug.Contains(other));
        return leads && right.Lugs[other].IsLead && HasRun(one) && HasRun(other)
                ? new FaultEdit.ExchangeNodes(one, other)
            : !leads && lugs ? new FaultEdit.ExchangeLugs(one, other)
            : null;
    }

    private bool HasRun(int lead) => instrument.Runs.Any(run => run.Node == lead);

    private void AddNeighbours()
    {
        foreach (var lug in right.Lugs.Take(instrument.Circuit.Lugs.Length).Where(lug => !lug.IsLead && !lug.IsInner))
        {
            foreach (var beside in NeighbouringLugs.Of(instrument.Circuit, lug.Index))
            {
                if (right.Lugs[beside].IsLead)
                {
                    continue;
                }

                AddBeside(lug.Index, beside);
            }
        }
    }

    private void AddBeside(int lug, int beside)
    {
        var isOneNet = right.Nets.SameNet(lug, beside);
        if (lug < beside && !isOneNet && (byLug.Contains(lug) || byLug.Contains(beside)))
        {
            Add(
                new Fault(
                    0,
                    FaultKind.Bridge,
                    $"solder bridge from {NameOf(lug)} to {NameOf(beside)}",
                    [Plain(new FaultEdit.Bridge(lug, beside))]
                )
                {
                    Lugs = (lug, beside),
                }
            );
        }

        foreach (var joint in byLug[lug])
        {
            if (!isOneNet && !instrument.Runs[joint.Run].Lugs.Contains(beside))
            {
                Add(
                    new Fault(
                        0,
                        FaultKind.WireBeside,
                        $"{instrument.Runs[joint.Run].Words} is on {NameOf(beside)} instead of {NameOf(lug)}",
                        [Plain(new FaultEdit.MoveTo(joint.Join, beside))]
                    )
                    {
                        Joint = joint.Index,
                        Lugs = (instrument.Runs[joint.Run].Lugs.First(end => end != lug), beside),
                    }
                );
            }

            foreach (var other in byLug[beside].Where(other => lug < beside && !isOneNet && other.Run != joint.Run))
            {
                Add(
                    new Fault(
                        0,
                        FaultKind.WiresExchanged,
                        $"{instrument.Runs[joint.Run].Words} is on {NameOf(beside)} and {instrument.Runs[other.Run].Words} on {NameOf(lug)}",
                        [Plain(new FaultEdit.MoveTo(joint.Join, beside), new FaultEdit.MoveTo(other.Join, lug))]
                    )
                    {
                        Joint = joint.Index,
                    }
                );
            }
        }
    }

    private void AddParts()
    {
        foreach (var element in right.Elements)
        {
            switch (element)
            {
                case Capacitor cap:
                    var leak = right.Elements.Length;
                    Add(
                        InElement(
                            cap,
                            FaultKind.CapacitorShorted,
                            $"capacitor {cap.Name} is shorted",
                            new FaultEdit.Bridge(cap.A, cap.B)
                        )
                    );
                    Add(
                        new Fault(
                            0,
                            FaultKind.CapacitorLeaky,
                            $"capacitor {cap.Name} leaks",
                            [
                                .. Leaks.Select(ohms =>
                                    Plain(new FaultEdit.Bridge(cap.A, cap.B, ohms)) with
                                    {
                                        Words = ValueText.Label(ohms, Unit.Ohm),
                                        Sized = leak,
                                        HalfWidth = HalfWidthIn(Leaks, ohms),
                                    }
                                ),
                            ]
                        )
                        {
                            Element = cap.Index,
                        }
                    );
                    Add(
                        InElement(
                            cap,
                            FaultKind.CapacitorOpen,
                            $"capacitor {cap.Name} is open",
                            new FaultEdit.LiftEnd(cap.Index, 1)
                        )
                    );
                    break;
                case Resistor or Inductor:
                    Add(
                        InElement(
                            element,
                            FaultKind.ResistorOpen,
                            $"{KindOf(element)} {element.Name} is open",
                            new FaultEdit.LiftEnd(element.Index, 1)
                        )
                    );
                    Add(
                        InElement(
                            element,
                            FaultKind.ResistorShorted,
                            $"{KindOf(element)} {element.Name} is shorted",
                            new FaultEdit.Bridge(element.Ends[0], element.Ends[1])
                        )
                    );
                    break;
                case Battery battery:
                    Add(
                        InElement(
                            battery,
                            FaultKind.BatteryFlat,
                            $"battery {battery.Name} is flat",
                            new FaultEdit.LiftEnd(battery.Index, 0)
                        )
                    );
                    break;
            }
        }
    }

    private static string KindOf(Element element) => element is Resistor ? "resistor" : "choke";

    private void AddLeaves()
    {
        foreach (var leaf in instrument.Leaves)
        {
            if (!LeadsSomewhere(leaf.Common) || !LeadsSomewhere(leaf.Throw))
            {
                continue;
            }

            var control = right.Controls[leaf.Control];
            var name = $"contact {NameOf(leaf.Common)} to {NameOf(leaf.Throw)}";
            var ring = control.IsPlug && IsRing(leaf);
            Add(
                new Fault(
                    0,
                    ring ? FaultKind.RingSpring : FaultKind.ContactOpen,
                    ring ? $"the ring of {control.Name} does not meet the plug" : $"{name} does not close",
                    [Plain(new FaultEdit.NeverCloses(leaf.Index))]
                )
                {
                    Leaf = leaf.Index,
                }
            );
            if (ring)
            {
                continue;
            }

            Add(
                new Fault(
                    0,
                    FaultKind.ContactDirty,
                    $"{name} is dirty",
                    [
                        .. DirtyOhms.Select(ohms =>
                            Plain(new FaultEdit.Resists(leaf.Index, ohms)) with
                            {
                                Words = ValueText.Label(ohms, Unit.Ohm),
                                Sized = right.Elements.Length,
                                HalfWidth = HalfWidthIn(DirtyOhms, ohms),
                            }
                        ),
                    ]
                )
                {
                    Leaf = leaf.Index,
                }
            );
            Add(
                new Fault(
                    0,
                    FaultKind.ContactStuck,
                    $"{name} never opens",
                    [Plain(new FaultEdit.NeverOpens(leaf.Index))]
                )
                {
                    Leaf = leaf.Index,
                }
            );
        }
    }

    private bool IsRing(Leaf leaf) =>
        instrument.Jacks.Any(jack => jack.Jack.Ring is { } ring && (leaf.Common == ring || leaf.Throw == ring));

    /// <summary>True where something besides the lug itself is on its net.</summary>
    private bool LeadsSomewhere(int lug) => right.Nets.Members[right.Nets.OneNet[lug]].Length > 1;

    private void AddTracks()
    {
        foreach (var track in right.Elements.OfType<Track>())
        {
            foreach (var (end, lug) in new[] { (0, track.Low), (2, track.High) })
            {
                Add(
                    InElement(
                        track,
                        FaultKind.TrackOpen,
                        $"track {GangOf(track)} is open at {NameOf(lug)}",
                        new FaultEdit.LiftEnd(track.Index, end)
                    )
                );
            }

            Add(
                InElement(
                    track,
                    FaultKind.WiperOpen,
                    $"wiper {NameOf(track.Wiper)} is open",
                    new FaultEdit.LiftEnd(track.Index, 1)
                )
            );
            Add(
                new Fault(
                    0,
                    FaultKind.PotValue,
                    $"pot {GangOf(track)} is of another value",
                    [
                        .. PotFactors.Select(factor =>
                            Scaled(
                                track.Index,
                                factor,
                                PotFactors,
                                "about " + ValueText.Label(Rounded(track.Ohms * factor), Unit.Ohm)
                            )
                        ),
                    ]
                )
                {
                    Element = track.Index,
                }
            );
        }

        foreach (var track in right.Elements.OfType<Track>().Where(track => !track.IsTaperUnknown))
        {
            var other = track.Taper == Taper.Linear ? Taper.Audio : Taper.Linear;
            Add(
                InElement(
                    track,
                    FaultKind.PotLaw,
                    $"pot {GangOf(track)} is {other.Name}, not {track.Taper.Name}",
                    new FaultEdit.Law(track.Index, other)
                )
            );
        }
    }

    /// <summary>The pot, or its gang where it has several: what stands before the name of the wiper's lug.</summary>
    private string GangOf(Track track)
    {
        var wiper = NameOf(track.Wiper);
        return wiper.LastIndexOf('.') is > 0 and var dot ? wiper[..dot] : wiper;
    }

    private static double Rounded(double ohms)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(ohms)) - 1);
        return Math.Round(ohms / step) * step;
    }

    private void AddCases()
    {
        foreach (var part in right.Parts)
        {
            if (part.Kind is not (PartKinds.Pot or PartKinds.Switch or PartKinds.Button or PartKinds.Jack))
            {
                continue;
            }

            int? own = part.Lugs.Where(lug => right.Lugs[lug].IsMetal).Cast<int?>().FirstOrDefault();
            foreach (var lug in part.Lugs.Where(lug => right.Lugs[lug] is { IsInner: false, IsMetal: false }))
            {
                var jack = instrument.Jacks.FirstOrDefault(one => one.Jack.Part == part.Index);
                var onto = own ?? instrument.Jacks.Select(one => one.Jack.Sleeve).Cast<int?>().FirstOrDefault();
                if (onto is not { } metal || IsOnGround(lug) || right.Nets.SameNet(lug, metal) || !LeadsSomewhere(lug))
                {
                    continue;
                }

                var isTip = jack?.Jack.Tip == lug;
                Add(
                    new Fault(
                        0,
                        isTip ? FaultKind.TipOnShield : FaultKind.LugOnCase,
                        $"{NameOf(lug)} touches {(own is null ? "the shielding" : NameOf(metal))}",
                        [Plain(new FaultEdit.Bridge(lug, metal))]
                    )
                    {
                        Lugs = (lug, metal),
                    }
                );
            }
        }
    }

    private void AddJacks()
    {
        foreach (var plugged in instrument.Jacks)
        {
            var name = right.Parts[plugged.Jack.Part].Name;
            Add(
                FaultKind.TipSpring,
                $"tip spring of {name} does not meet the plug",
                new FaultEdit.LeaveOut(plugged.TipSpring)
            );
            Add(
                FaultKind.SleeveSpring,
                $"sleeve of {name} does not meet the plug",
                new FaultEdit.LeaveOut(plugged.SleeveSpring)
            );
            if (byLug.Contains(plugged.Jack.Tip) && byLug.Contains(plugged.Jack.Sleeve))
            {
                Add(
                    FaultKind.JackReversed,
                    $"tip and sleeve of {name} are exchanged",
                    new FaultEdit.ExchangeLugs(plugged.Jack.Tip, plugged.Jack.Sleeve)
                );
            }
        }

        foreach (var cable in right.Cables.Where(cable => cable.Braid is not null))
        {
            var braid = RunOf(cable.Braid!.Value);
            foreach (var core in cable.Cores.Select(RunOf))
            {
                if (!right.Nets.SameNet(braid.Node, core.Node))
                {
                    Add(
                        new Fault(
                            0,
                            FaultKind.BraidOnCore,
                            $"{braid.Words} touches {core.Words}",
                            [Plain(new FaultEdit.Bridge(braid.Node, core.Node))]
                        )
                        {
                            Lugs = (braid.Lugs[0], core.Lugs[0]),
                        }
                    );
                }
            }
        }

        foreach (var plugged in instrument.Jacks.Take(1))
        {
            Add(FaultKind.LeadOpen, "the lead is open", new FaultEdit.LeaveOut(plugged.TipSpring));
            Add(FaultKind.LeadShorted, "the lead is shorted", new FaultEdit.Bridge(plugged.Tip, plugged.Sleeve));
        }
    }

    private Run RunOf(int wire) => instrument.Runs.First(run => run.Wires.Contains(wire));
}
