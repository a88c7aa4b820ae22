using System.Collections.Immutable;
using System.Globalization;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Makes wires, cables and joins from the lines that connect lugs.</summary>
internal sealed class WireBinder(CircuitDraft draft, LugResolver resolver, ColourBinder colours)
{
    private readonly Dictionary<string, int> wireIds = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<int, SourceLocation> endedLeads = [];
    private int runs;

    public void Bind(WireSyntax syntax)
    {
        if (HasColourForLug(syntax))
        {
            return;
        }

        var colour = colours.Read(syntax.Colour);
        var keys = ReadKeys(syntax.Pairs);
        var lugs = syntax.Lugs.Select(resolver.Resolve).ToList();
        if (syntax.IsBroken)
        {
            return;
        }

        for (var i = 0; i < lugs.Count; i++)
        {
            if (lugs[i] is { IsLead: true } lead)
            {
                CheckLead(lead, syntax.Lugs[i], isInside: i > 0 && i < lugs.Count - 1);
            }
        }

        if (lugs.Count == 2 && lugs[0] is { IsLead: true } first && lugs[1] is { IsLead: true } second)
        {
            ReportTwoLeads(syntax.Lugs[0], syntax.Lugs[1], first, second);
        }

        for (var i = 1; i < lugs.Count; i++)
        {
            if (lugs[i - 1] is { } from && lugs[i] is { } to)
            {
                var at = syntax.Lugs[i - 1].Location.To(syntax.Lugs[i].Location);
                Add(
                    new NewWire(WireKind.Wire, from.Index, to.Index, colour, at)
                    {
                        FromAt = syntax.Lugs[i - 1].Location,
                        ToAt = syntax.Lugs[i].Location,
                        IsSleeved = syntax.Sleeved is not null,
                        Length = keys.Length,
                        Gauge = keys.Gauge,
                    }
                );
            }
        }

        runs++;
    }

    public void Bind(SpliceSyntax syntax)
    {
        if (draft.FindLug(syntax.Name.Text) is not { } joint)
        {
            return;
        }

        foreach (var lugSyntax in syntax.Lugs)
        {
            if (resolver.Resolve(lugSyntax) is { } lug)
            {
                CheckLead(lug, lugSyntax, isInside: false);
                Add(
                    new NewWire(WireKind.SpliceLead, lug.Index, joint.Index, null, lugSyntax.Location)
                    {
                        FromAt = lugSyntax.Location,
                    },
                    JoinKind.Splice
                );
                runs++;
            }
        }
    }

    public void Bind(CableSyntax syntax)
    {
        var keys = ReadKeys(syntax.Pairs);
        var cable = draft.Cables.Count;
        var cores = ImmutableArray.CreateBuilder<int>();
        foreach (var core in syntax.Cores)
        {
            var (from, to) = (resolver.Resolve(core.From), resolver.Resolve(core.To));
            var colour = colours.Read(core.Colour);
            if (from is not null && to is not null)
            {
                CheckLead(from, core.From, isInside: false);
                CheckLead(to, core.To, isInside: false);
                var newCore = new NewWire(WireKind.Core, from.Index, to.Index, colour, core.Location)
                {
                    FromAt = core.From.Location,
                    ToAt = core.To.Location,
                    Cable = cable,
                    Length = keys.Length,
                    Gauge = keys.Gauge,
                };
                cores.Add(Add(newCore));
            }

            runs++;
        }

        int? braid = syntax.Braid is { } ends ? BindBraid(ends, cable) : null;
        if (cores.Count > 0)
        {
            draft.Cables.Add(new Cable(cable, cores.ToImmutable(), braid, syntax.Twisted is not null, syntax.Location));
        }
    }

    public void Bind(TouchSyntax syntax)
    {
        var lugs = syntax.Lugs.Select(resolver.Resolve).OfType<Lug>().ToList();
        for (var i = 1; i < lugs.Count; i++)
        {
            draft.Joins.Add(
                new Join(draft.Joins.Count, JoinKind.Touch, lugs[i - 1].Index, lugs[i].Index, Wire: -1, syntax.Location)
            );
        }
    }

    /// <summary>A two-lead part soldered in by its own leads.</summary>
    public void BindHanging(PartSyntax syntax)
    {
        if (
            syntax.Hangs is not { } hangs
            || draft.FindPart(syntax.Name.Text) is not { } part
            || part.NameAt != syntax.Name.Location
        )
        {
            return;
        }

        var leads = part.Lugs.Where(l => !draft.Lugs[l].IsInner).ToList();
        if (leads.Count != 2)
        {
            draft.Sink.Add(
                WireFindings.NotTwoLeads.At(
                    hangs.Location,
                    $"'{part.Name}' has {leads.Count} lugs; only a part with two leads hangs from lug to lug",
                    "wire its lugs one by one"
                )
            );
            return;
        }

        var (first, second) = (resolver.Resolve(hangs.From), resolver.Resolve(hangs.To));
        if (first is null || second is null)
        {
            return;
        }

        CheckLead(first, hangs.From, isInside: false);
        CheckLead(second, hangs.To, isInside: false);
        Hang(part, leads[0], first, hangs.From);
        Hang(part, leads[1], second, hangs.To);
        draft.Parts[part.Index] = part with { HangsOn = (first.Index, second.Index) };
    }

    private void Hang(Part part, int lead, Lug on, LugSyntax at)
    {
        endedLeads[lead] = at.Location;
        Add(new NewWire(WireKind.PartLead, lead, on.Index, InsulationColour.Bare, at.Location) { ToAt = at.Location });
        runs++;
    }

    private int? BindBraid(BraidSyntax ends, int cable)
    {
        var (from, to) = (End(ends.From), End(ends.To));
        if (ends.From is not null && from is null || ends.To is not null && to is null)
        {
            return null;
        }

        var braid = new NewWire(
            WireKind.Braid,
            from?.Index ?? -1,
            to?.Index ?? -1,
            InsulationColour.Bare,
            ends.Location
        )
        {
            FromAt = ends.From?.Location,
            ToAt = ends.To?.Location,
            Cable = cable,
        };
        return Add(braid);

        Lug? End(LugSyntax? syntax)
        {
            var lug = syntax is null ? null : resolver.Resolve(syntax);
            if (lug is not null)
            {
                CheckLead(lug, syntax!, isInside: false);
            }

            return lug;
        }
    }

    private int Add(NewWire wire, JoinKind kind = JoinKind.Wire)
    {
        var index = draft.Wires.Count;
        draft.Wires.Add(
            new Wire(
                index,
                IdOf(wire),
                wire.Kind,
                wire.From,
                wire.To,
                wire.Colour,
                runs,
                wire.Cable,
                wire.IsSleeved,
                wire.Length,
                wire.Gauge,
                wire.At
            )
            {
                FromAt = wire.FromAt,
                ToAt = wire.ToAt,
            }
        );
        if (wire.From >= 0 && wire.To >= 0)
        {
            draft.Joins.Add(new Join(draft.Joins.Count, kind, wire.From, wire.To, index, wire.At));
        }

        return index;
    }

    private string IdOf(NewWire wire)
    {
        var id = $"{NameOf(wire.From)}--{NameOf(wire.To)}";
        var count = wireIds.GetValueOrDefault(id) + 1;
        wireIds[id] = count;
        return count == 1 ? id : string.Create(CultureInfo.InvariantCulture, $"{id}~{count}");

        string NameOf(int lug) => lug < 0 ? "cut" : draft.Lugs[lug].Name;
    }

    private void CheckLead(Lug lug, LugSyntax at, bool isInside)
    {
        if (!lug.IsLead)
        {
            return;
        }

        if (isInside)
        {
            draft.Sink.Add(
                WireFindings.LeadInARun.At(
                    at.Location,
                    $"'{lug.Name}' is a lead: a run starts or ends with it",
                    "write it first or last on the line"
                )
            );
        }
        else if (endedLeads.TryGetValue(lug.Index, out var earlier))
        {
            draft.Sink.Add(
                WireFindings
                    .LeadEndsTwice.At(
                        at.Location,
                        $"lead '{lug.Name}' has its end elsewhere already",
                        "join the other wire at the lug where this lead ends, or splice them"
                    )
                    .Beside(earlier, "it ends here")
            );
        }
        else
        {
            endedLeads.Add(lug.Index, at.Location);
        }
    }

    private void ReportTwoLeads(LugSyntax from, LugSyntax to, Lug first, Lug second) =>
        draft.Sink.Add(
            WireFindings.LeadToLead.At(
                from.Location.To(to.Location),
                $"'{first.Name}' and '{second.Name}' are leads: two leads meet in a splice",
                $"write: splice NAME {first.Name} {second.Name}"
            )
        );

    /// <summary>Reports a line whose last lug and colour have changed places: <c>wire vol.2 to black out.tip</c>.</summary>
    private bool HasColourForLug(WireSyntax syntax)
    {
        var last = syntax.Lugs[^1];
        if (
            draft.FindLug(last.FullName) is not null
            || !colours.Palette.Has(last.FullName)
            || colours.Palette.Has(syntax.Colour.Text)
            || draft.FindLug(syntax.Colour.Text) is null
        )
        {
            return false;
        }

        var line = $"wire {string.Join(" to ", syntax.Lugs[..^1].Select(lug => lug.FullName))}";
        var finding = WireFindings.UnknownColour.At(
            last.Location.To(syntax.Colour.Location),
            $"the colour stands behind the last lug: '{last.FullName}' behind '{syntax.Colour.Text}'",
            $"write: {line} to {syntax.Colour.Text} {last.FullName}"
        );
        TextEdit[] exchange = [new(last.Location, syntax.Colour.Text), new(syntax.Colour.Location, last.FullName)];
        draft.Sink.Add(finding with { Edits = [.. exchange] });
        return true;
    }

    private (double? Length, double? Gauge) ReadKeys(ImmutableArray<PairSyntax> pairs)
    {
        double? length = null;
        double? gauge = null;
        foreach (var pair in pairs)
        {
            switch (pair.Key.Text.ToUpperInvariant())
            {
                case "LENGTH":
                    var reading = ValueReader.Read(pair.Value.Text, ValueUse.WireLength);
                    length = reading.Value;
                    if (reading.Problem is { } problem)
                    {
                        draft.Sink.Add(ValueFindings.BadValue.At(pair.Value.Location, problem));
                    }

                    break;
                case "AWG":
                    if (
                        int.TryParse(pair.Value.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                        && number <= 60
                    )
                    {
                        gauge = number;
                    }
                    else
                    {
                        draft.Sink.Add(
                            ValueFindings.BadValue.At(
                                pair.Value.Location,
                                $"'{pair.Value.Text}' is no gauge",
                                "write a number such as awg=24"
                            )
                        );
                    }

                    break;
                default:
                    var near = DidYouMean.Nearest(pair.Key.Text, ["length", "awg"]);
                    draft.Sink.Add(
                        PartFindings.UnknownKey.At(
                            pair.Key.Location,
                            $"a wire has no '{pair.Key.Text}='",
                            near is null ? "it takes length= and awg=" : $"did you mean '{near}='?"
                        )
                    );
                    break;
            }
        }

        return (length, gauge);
    }

    private sealed record NewWire(WireKind Kind, int From, int To, InsulationColour? Colour, SourceLocation At)
    {
        public SourceLocation? FromAt { get; init; }

        public SourceLocation? ToAt { get; init; }

        public int? Cable { get; init; }

        public bool IsSleeved { get; init; }

        public double? Length { get; init; }

        public double? Gauge { get; init; }
    }
}
