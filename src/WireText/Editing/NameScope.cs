using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>Where the names that a file uses are declared: in the file, else in the file that it stands on.</summary>
/// <param name="under">The scope of that file; null for a file that stands alone.</param>
internal sealed class NameScope(WiringTree tree, NameScope? under)
{
    private readonly Dictionary<string, (SourceLocation At, PartSyntax? Part)> parts = PartsIn(tree);

    private readonly Dictionary<string, PositionsSyntax> positions = FirstByName(
        tree.Statements.OfType<PositionsSyntax>(),
        line => line.Control.FullName
    );

    /// <summary>The scope of the file that this one stands on; its own where it stands alone.</summary>
    public NameScope Below => under ?? this;

    public ImmutableArray<StatementSyntax> Statements => tree.Statements;

    /// <summary>Where a part gets its name; null where no file says.</summary>
    public SourceLocation? PartNamed(string name) =>
        parts.TryGetValue(name, out var part) ? part.At : under?.PartNamed(name);

    /// <summary>The kind and the words of a part's line; null for a splice, and where no file has it.</summary>
    public PartSyntax? LineOf(string name) => parts.TryGetValue(name, out var part) ? part.Part : under?.LineOf(name);

    /// <summary>The line that names the positions of a control; null where none does.</summary>
    public PositionsSyntax? PositionsOf(string control) =>
        positions.GetValueOrDefault(control)
        // A part of the file's own is another than one of that name below.
        ?? (parts.ContainsKey(control.Split('.')[0]) ? null : under?.PositionsOf(control));

    private static Dictionary<string, (SourceLocation At, PartSyntax? Part)> PartsIn(WiringTree tree)
    {
        var found = new Dictionary<string, (SourceLocation, PartSyntax?)>(Naming.Comparer);
        foreach (var statement in tree.Statements)
        {
            _ = statement switch
            {
                PartSyntax part => found.TryAdd(part.Name.Text, (part.Name.Location, part)),
                SpliceSyntax splice => found.TryAdd(splice.Name.Text, (splice.Name.Location, null)),
                _ => false,
            };
        }

        return found;
    }

    private static Dictionary<string, T> FirstByName<T>(IEnumerable<T> items, Func<T, string> nameOf)
    {
        var found = new Dictionary<string, T>(Naming.Comparer);
        foreach (var item in items)
        {
            found.TryAdd(nameOf(item), item);
        }

        return found;
    }
}
