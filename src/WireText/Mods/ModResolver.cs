using System.Collections.Immutable;
using System.Globalization;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Mods;

/// <summary>Makes one circuit of a mod and of what it stands on; a file that stands alone stays as it is.</summary>
public sealed class ModResolver
{
    /// <summary>How many files may stand on one another. Chosen.</summary>
    internal const int MaxDepth = 16;

    private readonly ISourceProvider sources;
    private readonly FindingSink sink = new();

    private ModResolver(ISourceProvider sources) => this.sources = sources;

    public static ResolvedWiring Resolve(WiringTree tree, ISourceProvider sources)
    {
        var resolver = new ModResolver(sources);
        return resolver.Resolve(tree, []) with { Findings = resolver.sink.ToImmutable() };
    }

    /// <param name="chain">The files that stand on this one, the topmost first.</param>
    private ResolvedWiring Resolve(WiringTree tree, ImmutableArray<SourceText> chain)
    {
        var bases = tree.Statements.OfType<BaseSyntax>().Where(one => !one.IsBroken).ToList();
        if (bases.Count == 0)
        {
            ReportWithoutBase(tree);
            return new ResolvedWiring([.. tree.Statements.Where(statement => !IsChange(statement))], []);
        }

        ReportLate(tree, bases);
        return Load(bases[0], chain.Add(tree.Source)) is { } under
            ? new ResolvedWiring(new BaseChanges(under, sink).Apply(tree.Statements), [])
            {
                Base = under,
                IsWhole = under.Resolved.IsWhole,
            }
            : new ResolvedWiring([.. tree.Statements.Where(statement => !IsChange(statement))], []) { IsWhole = false };
    }

    /// <summary>True for what says how a mod differs from its base.</summary>
    internal static bool IsChange(StatementSyntax statement) =>
        statement is BaseSyntax or LiftSyntax or DropSyntax or DropExpectSyntax or ReplaceSyntax;

    private BaseWiring? Load(BaseSyntax syntax, ImmutableArray<SourceText> chain)
    {
        var load = sources.Load(syntax.Path.Value, syntax.Location.Source);
        if (load.Source is not { } source)
        {
            sink.Add(
                ModFindings.CannotReadBase.At(
                    syntax.Path.Location,
                    $"cannot read '{syntax.Path.Value}': {load.Problem}",
                    "put it below this file's folder, or name its folder with --parts"
                )
            );
            return null;
        }

        var first = chain.FirstOrDefault(above => above.Path == source.Path);
        if (first is not null)
        {
            var round = chain.SkipWhile(above => above != first).Append(first).Select(above => above.Path);
            sink.Add(
                ModFindings.BaseGoesRound.At(
                    syntax.Path.Location,
                    $"the files stand on one another in a ring: {string.Join(" → ", round)}",
                    "let one of them stand on a file that is no mod"
                )
            );
            return null;
        }

        if (chain.Length > MaxDepth)
        {
            sink.Add(
                ModFindings.BaseTooDeep.At(
                    syntax.Path.Location,
                    string.Create(CultureInfo.InvariantCulture, $"more than {MaxDepth} files stand on one another"),
                    "write one of them out with: wiretext flatten"
                )
            );
            return null;
        }

        var tree = WiringParser.Parse(source);
        foreach (var finding in tree.Findings)
        {
            sink.Add(finding);
        }

        return new BaseWiring(tree, Resolve(tree, chain));
    }

    private void ReportLate(WiringTree tree, List<BaseSyntax> bases)
    {
        foreach (var again in bases.Skip(1))
        {
            sink.Add(
                ModFindings
                    .BaseLate.At(again.Location, "a mod stands on one file", "keep one of the two lines")
                    .Beside(bases[0].Location, "it stands on this one")
            );
        }

        var start = bases[0].Location.Span.Start;
        if (tree.Statements.Any(statement => statement is PartSyntax && statement.Location.Span.Start < start))
        {
            sink.Add(
                ModFindings.BaseLate.At(
                    bases[0].Location,
                    "the base is named behind a part",
                    "write it before the first part"
                )
            );
        }
    }

    private void ReportWithoutBase(WiringTree tree)
    {
        foreach (var statement in tree.Statements.Where(one => IsChange(one) && !one.IsBroken))
        {
            sink.Add(
                ModFindings.NotOnBase.At(
                    statement.Location,
                    "this file stands on no other: there is nothing to take out",
                    "name the file that it changes, before the first part: base \"stock.wiring\""
                )
            );
        }
    }
}
