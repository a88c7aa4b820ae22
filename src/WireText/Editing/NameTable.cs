using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>Everything that is named in a text, in the files that it stands on and in those that it includes.</summary>
/// <param name="Own">In the text itself, in its order.</param>
/// <param name="Others">In the other files.</param>
public sealed record NameTable(ImmutableArray<NameUse> Own, ImmutableArray<NameUse> Others)
{
    public IEnumerable<NameUse> All => Own.Concat(Others);

    public static NameTable Of(Compilation compiled)
    {
        var bases = OtherFiles.BasesOf(compiled).ToList();
        var trees = bases.Prepend(compiled.Tree).Concat(compiled.Included).ToList();
        var definitions = new Dictionary<(string, string), DefineSyntax>();
        var colours = new Dictionary<string, SourceLocation>(Naming.Comparer);
        foreach (var statement in trees.SelectMany(tree => tree.Statements))
        {
            _ = statement switch
            {
                DefineSyntax define => definitions.TryAdd(
                    NameFinder.KeyOf(define.Kind.Text, define.Model.Text),
                    define
                ),
                ColourSyntax colour => colours.TryAdd(colour.Name.Text, colour.Name.Location),
                _ => false,
            };
        }

        // The files that others stand on come first: a name that a file lacks is looked for below it.
        NameScope? under = null;
        var others = ImmutableArray.CreateBuilder<NameUse>();
        foreach (var tree in Enumerable.Reverse(bases))
        {
            under = new NameScope(tree, under);
            others.AddRange(UsesIn(under));
        }

        foreach (var tree in compiled.Included)
        {
            others.AddRange(UsesIn(new NameScope(tree, null)));
        }

        return new NameTable(UsesIn(new NameScope(compiled.Tree, under)), others.ToImmutable());

        ImmutableArray<NameUse> UsesIn(NameScope scope) =>
            new NameFinder(scope, compiled.Catalogue, definitions, colours).Find();
    }

    /// <summary>What is named at a place of the text, or directly before it; null for nothing.</summary>
    public NameUse? At(int offset) =>
        Own.LastOrDefault(use => use.At.Span.Start <= offset && offset < use.At.Span.End)
        ?? Own.LastOrDefault(use => use.At.Span.End == offset);

    /// <summary>Where the thing that is named at a place gets its name; of a lug, its part. Null where no file says.</summary>
    public SourceLocation? DeclarationAt(int offset) =>
        At(offset) switch
        {
            null => null,
            { Kind: NameKind.Lug } lug => Own.LastOrDefault(use =>
                use.Kind == NameKind.Part && use.At.Span.End < lug.At.Span.Start
            )?.DeclaredAt,
            var use => use.DeclaredAt,
        };
}
