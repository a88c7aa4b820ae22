using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Mods;

/// <summary>All that is soldered to a lug, or what leads from it to another: a run of wire, a core, a braid, a lead.</summary>
/// <param name="Lug">As it is written.</param>
/// <param name="To">Null for all that is on the lug.</param>
internal readonly record struct Lifting(string Lug, string? To)
{
    /// <summary>The word for a wire of bare metal: what a part's own lead is.</summary>
    private const string Bare = "bare";

    /// <summary>What is left of a statement: one that is changed, several, or none. Null when nothing of it is lifted.</summary>
    public ImmutableArray<StatementSyntax>? LeftOf(StatementSyntax statement) =>
        statement switch
        {
            WireSyntax wire => IsLifted(wire.Lugs) ? [] : null,
            SpliceSyntax splice => LeftOf(splice),
            CableSyntax cable => LeftOf(cable),
            PartSyntax { Hangs: { } hangs } part => LeftOf(part, hangs),
            _ => null,
        };

    /// <summary>True for a run that touches the lug; with another lug, for one that touches both.</summary>
    private bool IsLifted(IEnumerable<LugSyntax> lugs)
    {
        var (lug, to) = this;
        var names = lugs.Select(one => one.FullName).ToList();
        return names.Exists(name => Naming.Alike(name, lug))
            && (to is null || names.Exists(name => Naming.Alike(name, to)));
    }

    /// <summary>A lead comes out of the splice; from the splice's own name all do.</summary>
    private ImmutableArray<StatementSyntax>? LeftOf(SpliceSyntax splice)
    {
        var lifting = this;
        var left = splice.Lugs.RemoveAll(lead => lifting.IsLifted([lead, new LugSyntax([splice.Name])]));
        return left.Length == splice.Lugs.Length ? null : [splice with { Lugs = left }];
    }

    /// <summary>The last core takes the braid with it; a lifted end of a braid alone is cut back.</summary>
    private ImmutableArray<StatementSyntax>? LeftOf(CableSyntax cable)
    {
        var lifting = this;
        var cores = cable.Cores.RemoveAll(core => lifting.IsLifted([core.From, core.To]));
        var braid = cable.Braid is { } whole ? LeftOf(whole) : null;
        return cores.Length == cable.Cores.Length && braid == cable.Braid ? null
            : cores.IsEmpty ? []
            : [cable with { Cores = cores, Braid = braid }];
    }

    private BraidSyntax? LeftOf(BraidSyntax braid)
    {
        var ends = new[] { braid.From, braid.To }.OfType<LugSyntax>().ToList();
        if (!IsLifted(ends))
        {
            return braid;
        }

        var (from, to) = (Stays(braid.From), Stays(braid.To));
        return from is null && to is null ? null : braid with { From = from, To = to };
    }

    private LugSyntax? Stays(LugSyntax? end) =>
        end is not null && To is null && !Naming.Alike(end.FullName, Lug) ? end : null;

    /// <summary>A part that hung from lug to lug keeps the lead that is not lifted, as a wire of its own.</summary>
    private ImmutableArray<StatementSyntax>? LeftOf(PartSyntax part, FromToSyntax hangs)
    {
        (LugSyntax Lead, LugSyntax On)[] leads = [(LeadOf(part, "1"), hangs.From), (LeadOf(part, "2"), hangs.To)];
        var lifting = this;
        var left = leads.Where(lead => !lifting.IsLifted([lead.Lead, lead.On])).ToList();
        return left.Count == leads.Length
            ? null
            : [part with { Hangs = null }, .. left.Select(lead => WireOf(part, lead.Lead, lead.On))];
    }

    private static LugSyntax LeadOf(PartSyntax part, string lead) =>
        new([part.Name, new WordSyntax(lead, part.Name.Location)]);

    private static WireSyntax WireOf(PartSyntax part, LugSyntax lead, LugSyntax on) =>
        new([lead, on], new WordSyntax(Bare, on.Location), null, [], part.Location);
}
