using System.Collections.Immutable;
using WireText.Mods;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>A circuit made from statements, with what was wrong in the lines.</summary>
/// <param name="Circuit">Null when there is none: it is too large, or what a mod stands on cannot be read.</param>
/// <param name="Catalogue">The standard models and those the file defines or includes.</param>
public sealed record BoundCircuit(Circuit? Circuit, PartCatalogue Catalogue, ImmutableArray<Finding> Findings)
{
    /// <summary>The files that the statements include, and those that these include.</summary>
    public ImmutableArray<WiringTree> Included { get; init; } = [];
}

/// <summary>Turns statements into the connection model. They may stand in any order: names first, then what uses them.</summary>
public static class Binder
{
    /// <summary>The circuit of a file; of a mod that of what it stands on, changed.</summary>
    public static BoundCircuit Bind(WiringTree tree, ISourceProvider sources) =>
        Bind(ModResolver.Resolve(tree, sources), sources);

    /// <summary>The same of what was resolved already: what was found in that comes first.</summary>
    public static BoundCircuit Bind(ResolvedWiring wiring, ISourceProvider sources)
    {
        var bound = Bind(wiring.Statements, sources);
        return bound with
        {
            Circuit = wiring.IsWhole ? bound.Circuit : null,
            Findings = wiring.IsWhole ? [.. wiring.Findings, .. bound.Findings] : wiring.Findings,
        };
    }

    /// <summary>The same of statements that may come from several files. What is wrong with one is reported where it stands.</summary>
    public static BoundCircuit Bind(ImmutableArray<StatementSyntax> statements, ISourceProvider sources)
    {
        var sink = new FindingSink();
        var gatherer = new DefinitionGatherer(sources, sink);
        var catalogue = gatherer.Gather(statements);
        var circuit = IsTooLarge(statements, sink)
            ? null
            : BindCircuit(statements, new CircuitDraft(catalogue, sink), gatherer);
        return new BoundCircuit(circuit, catalogue, sink.ToImmutable()) { Included = [.. gatherer.Included] };
    }

    /// <summary>Null when there are more insides than one circuit has room for.</summary>
    private static Circuit? BindCircuit(
        ImmutableArray<StatementSyntax> statements,
        CircuitDraft draft,
        DefinitionGatherer gatherer
    )
    {
        if (!BindParts(statements, draft, gatherer.BrokenModels))
        {
            return null;
        }

        BindControls(statements, draft);
        var resolver = new LugResolver(draft);
        BindWires(statements, new WireBinder(draft, resolver, gatherer.Colours));
        return Finish(statements, draft, resolver);
    }

    /// <summary>False when there are more insides than one circuit has room for: the rest is not made.</summary>
    private static bool BindParts(
        ImmutableArray<StatementSyntax> statements,
        CircuitDraft draft,
        HashSet<string> brokenModels
    )
    {
        var binder = new PartBinder(draft);
        foreach (var statement in statements)
        {
            switch (statement)
            {
                case PartSyntax part when part.IsBroken || UsesBroken(part, brokenModels):
                    draft.MarkBroken(part.Name.Text);
                    break;
                case PartSyntax part when !binder.Bind(part):
                    return false;
                case SpliceSyntax { IsBroken: true } splice:
                    draft.MarkBroken(splice.Name.Text);
                    break;
                case SpliceSyntax splice when !binder.Bind(splice):
                    return false;
            }
        }

        return true;
    }

    private static bool UsesBroken(PartSyntax part, HashSet<string> brokenModels) =>
        part.Arguments.OfType<WordSyntax>().Any(w => brokenModels.Contains($"{part.Kind.Text} {w.Text}"));

    private static void BindControls(ImmutableArray<StatementSyntax> statements, CircuitDraft draft)
    {
        var binder = new ControlBinder(draft);
        foreach (var positions in Whole<PositionsSyntax>(statements))
        {
            binder.Bind(positions);
        }

        foreach (var rest in Whole<RestSyntax>(statements))
        {
            binder.Bind(rest);
        }
    }

    private static void BindWires(ImmutableArray<StatementSyntax> statements, WireBinder binder)
    {
        foreach (var statement in statements.Where(s => !s.IsBroken))
        {
            switch (statement)
            {
                case PartSyntax part:
                    binder.BindHanging(part);
                    break;
                case WireSyntax wire:
                    binder.Bind(wire);
                    break;
                case SpliceSyntax splice:
                    binder.Bind(splice);
                    break;
                case CableSyntax cable:
                    binder.Bind(cable);
                    break;
                case TouchSyntax touch:
                    binder.Bind(touch);
                    break;
            }
        }
    }

    private static Circuit Finish(ImmutableArray<StatementSyntax> statements, CircuitDraft draft, LugResolver resolver)
    {
        var places = new PlaceBinder(draft, resolver);
        foreach (var arrange in Whole<ArrangeSyntax>(statements))
        {
            places.Bind(arrange);
        }

        foreach (var place in Whole<PlaceSyntax>(statements))
        {
            places.Bind(place);
        }

        ImmutableArray<OutputJack> outputs = [.. OutputsOf(draft)];
        return new Circuit
        {
            Title = Single<CircuitSyntax>(statements, draft.Sink, c => c.Title)?.Title.Value,
            Finish = Single<FinishSyntax>(statements, draft.Sink, f => f.Finish)?.Finish.Text,
            About = ReadAbout(statements, draft.Sink),
            Remarks = [.. Whole<RemarkSyntax>(statements).Select(remark => remark.Words.Value)],
            Parts = [.. draft.Parts],
            Lugs = [.. draft.Lugs],
            Controls = [.. draft.Controls],
            Dials = [.. draft.Dials],
            Elements = [.. draft.Elements],
            Wires = [.. draft.Wires],
            Cables = [.. draft.Cables],
            Joins = [.. draft.Joins],
            Outputs = outputs,
            Surroundings = new SurroundingsBinder(draft.Sink).Bind(
                Single<LoadSyntax>(statements, draft.Sink, load => load)
            ),
            Nets = NetBuilder.Build(draft.Lugs.Count, draft.Joins),
            Arrangement = [.. places.Rows],
            Places = [.. places.Places],
            Allowances =
            [
                .. Whole<AllowSyntax>(statements)
                    .Select(allow => ReadAllowance(allow, draft, resolver))
                    .OfType<Allowance>(),
            ],
            Expectations = BindExpectations(statements, draft, outputs),
            Open = BindOpen(statements, draft, resolver),
            Found = BindFound(statements, draft, resolver, outputs),
        };
    }

    private static ImmutableArray<Expectation> BindExpectations(
        ImmutableArray<StatementSyntax> statements,
        CircuitDraft draft,
        ImmutableArray<OutputJack> outputs
    )
    {
        var binder = new ExpectBinder(draft, new StateBinder(draft, outputs));
        return [.. Whole<ExpectSyntax>(statements).Select(binder.Bind).OfType<Expectation>()];
    }

    private static ImmutableArray<OpenControl> BindOpen(
        ImmutableArray<StatementSyntax> statements,
        CircuitDraft draft,
        LugResolver resolver
    )
    {
        var binder = new OpenBinder(draft, resolver);
        foreach (var find in Whole<FindSyntax>(statements))
        {
            binder.Bind(find);
        }

        return [.. binder.Open];
    }

    private static ImmutableArray<Found> BindFound(
        ImmutableArray<StatementSyntax> statements,
        CircuitDraft draft,
        LugResolver resolver,
        ImmutableArray<OutputJack> outputs
    )
    {
        var binder = new FoundBinder(draft, resolver, new StateBinder(draft, outputs));
        return [.. Whole<FoundSyntax>(statements).Select(binder.Bind).OfType<Found>()];
    }

    private static ImmutableArray<AboutLine> ReadAbout(ImmutableArray<StatementSyntax> statements, FindingSink sink) =>
        [
            .. Whole<AboutSyntax>(statements)
                .GroupBy(about => about.Key.Text, Naming.Comparer)
                .Select(same => Single([.. same], sink, about => about.Key)!)
                .Select(about => new AboutLine(about.Key.Text, about.Words.Value)),
        ];

    private static Allowance? ReadAllowance(AllowSyntax allow, CircuitDraft draft, LugResolver resolver)
    {
        if (allow.At is not { } at)
        {
            return new Allowance(allow.Check.Text, null, allow.Reason.Value, allow.Check.Location);
        }

        // A part's name alone means all of it, also where the part has several lugs.
        var name = at.Words.Length == 1 ? draft.FindPart(at.Name.Text)?.Name : null;
        name ??= resolver.Resolve(at)?.Name;
        return name is null ? null : new Allowance(allow.Check.Text, name, allow.Reason.Value, allow.Check.Location);
    }

    private static IEnumerable<OutputJack> OutputsOf(CircuitDraft draft)
    {
        foreach (
            var part in draft.Parts.Where(p =>
                string.Equals(p.Kind, PartKinds.Jack, StringComparison.OrdinalIgnoreCase)
            )
        )
        {
            var (tip, sleeve, ring) = (LugOf(part, "tip"), LugOf(part, "sleeve"), LugOf(part, "ring"));
            if (tip is { } t && sleeve is { } s)
            {
                yield return new OutputJack(part.Index, t, s, ring);
            }
        }

        int? LugOf(Part part, string name) =>
            part.Definition.FindTerminal(name) is { } terminal
                ? part.Lugs[part.Definition.IndexOf(terminal.Name)]
                : null;
    }

    private static T? Single<T>(
        ImmutableArray<StatementSyntax> statements,
        FindingSink sink,
        Func<T, SyntaxNode> placeOf
    )
        where T : StatementSyntax => Single([.. Whole<T>(statements)], sink, placeOf);

    private static T? Single<T>(ImmutableArray<T> all, FindingSink sink, Func<T, SyntaxNode> placeOf)
        where T : StatementSyntax
    {
        foreach (var again in all.Skip(1))
        {
            sink.Add(
                StatementFindings
                    .SaidTwice.At(placeOf(again).Location, "this is said already", "keep one of the two lines")
                    .Beside(placeOf(all[0]).Location, "said here first")
            );
        }

        return all.FirstOrDefault();
    }

    private static IEnumerable<T> Whole<T>(ImmutableArray<StatementSyntax> statements)
        where T : StatementSyntax => statements.OfType<T>().Where(s => !s.IsBroken);

    private static bool IsTooLarge(ImmutableArray<StatementSyntax> statements, FindingSink sink)
    {
        var parts = statements
            .Where(s => s is PartSyntax or SpliceSyntax)
            .Skip(CircuitLimits.MaxParts)
            .FirstOrDefault();
        if (parts is not null)
        {
            sink.Add(
                LineFindings.TooLarge.At(
                    parts.Location,
                    $"one circuit has {CircuitLimits.MaxParts} parts at most",
                    "divide it into several files"
                )
            );
            return true;
        }

        var wires = 0;
        foreach (var statement in statements)
        {
            wires += statement switch
            {
                WireSyntax wire => wire.Lugs.Length - 1,
                CableSyntax cable => cable.Cores.Length + 1,
                SpliceSyntax splice => splice.Lugs.Length,
                PartSyntax { Hangs: not null } => 2,
                _ => 0,
            };
            if (wires > CircuitLimits.MaxWires)
            {
                sink.Add(
                    LineFindings.TooLarge.At(
                        statement.Location,
                        $"one circuit has {CircuitLimits.MaxWires} stretches of wire at most",
                        "divide it into several files"
                    )
                );
                return true;
            }
        }

        return false;
    }
}
