using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>What can be done with a text from a line of it.</summary>
public enum LensKind
{
    Draw,
    Positions,

    /// <summary>How it differs from the file that it stands on.</summary>
    Compare,
}

/// <param name="At">The words above which it is offered.</param>
public sealed record Lens(TextSpan At, LensKind Kind);

/// <summary>What can be done with a text: to draw it and to say what its positions do at its first statement, to compare it where it names its base.</summary>
public static class Lenses
{
    public static ImmutableArray<Lens> Of(WiringTree tree)
    {
        if (tree.Statements.IsEmpty)
        {
            return [];
        }

        var first = tree.Statements[0].Span;
        return
        [
            new(first, LensKind.Draw),
            new(first, LensKind.Positions),
            .. tree.Statements.OfType<BaseSyntax>().Take(1).Select(under => new Lens(under.Span, LensKind.Compare)),
        ];
    }
}
