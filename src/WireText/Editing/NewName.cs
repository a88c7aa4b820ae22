using System.Buffers;
using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Quantities;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Editing;

/// <summary>What came of giving something another name: the edits, in every file that names it, or why it keeps its name.</summary>
/// <param name="Problem">Null where there are edits.</param>
public sealed record NewName(ImmutableArray<TextEdit> Edits, string? Problem)
{
    /// <summary>What parts a state, a claim or a comment, and is in no name.</summary>
    private static readonly SearchValues<char> Marks = SearchValues.Create("=:,()\"# \t\r\n");

    /// <summary>Why a thing cannot have another name at all; null where it can.</summary>
    public static string? WhyFixed(NameUse use) =>
        use.Kind switch
        {
            NameKind.Lug => "a lug has the name that its part gives it",
            NameKind.Kind => "a kind of part has its own word",
            NameKind.Check => "a check has its own name",
            NameKind.Position when use.DeclaredAt is null =>
                "this is the part's own word; a line 'positions CONTROL …' gives positions other names",
            _ when use.DeclaredAt is null => $"no file says where '{use.At.Text}' gets its name",
            _ => null,
        };

    /// <summary>Gives what is named there another name.</summary>
    /// <param name="tables">Of every text that may name it, the one with the use among them.</param>
    public static NewName Of(NameUse use, string name, IReadOnlyCollection<NameTable> tables)
    {
        var problem = WhyFixed(use) ?? WhyNot(use, name, tables);
        return problem is null
            ? new NewName([.. Places(use, tables).Select(at => new TextEdit(at, name))], null)
            : new NewName([], problem);
    }

    /// <summary>Every place that names the same thing, file by file, each once.</summary>
    public static ImmutableArray<SourceLocation> Places(NameUse use, IEnumerable<NameTable> tables) =>
        [
            .. tables
                .SelectMany(table => table.All)
                .Where(other => other.Kind == use.Kind && other.Key == use.Key)
                .Select(other => other.At)
                .DistinctBy(at => (at.Source.Path, at.Span))
                .OrderBy(at => at.Source.Path, StringComparer.Ordinal)
                .ThenBy(at => at.Span.Start),
        ];

    private static string? WhyNot(NameUse use, string name, IReadOnlyCollection<NameTable> tables)
    {
        var bad = use.Kind switch
        {
            NameKind.Part => Names.WhyNoName(name),
            NameKind.Position => name.Length == 0 || name.AsSpan().ContainsAny(Marks) ? "a position is one word"
            : Naming.Alike(name, StateText.AnyWord) ? "'any' means each of the positions; it names none"
            : null,
            NameKind.Section => Names.WhyNoLugWord(name),
            NameKind.Colour when ColourPalette.Standard.Has(name) => $"'{name}' is a colour already",
            _ => Names.WhyNoIdentifier(name),
        };
        return bad ?? (Naming.Alike(name, use.At.Text) ? null : WhoHas(use, name, tables));
    }

    /// <summary>Says whose the name is already; null where it is free. Of positions and sections those count that stand beside it.</summary>
    private static string? WhoHas(NameUse use, string name, IReadOnlyCollection<NameTable> tables)
    {
        var line = use.DeclaredAt!.Value.Position.Line;
        var taken = tables
            .Where(table => table.All.Any(other => other.Key == use.Key))
            .SelectMany(table => table.All)
            .FirstOrDefault(other =>
                other.Kind == use.Kind
                && other.IsDeclaration
                && other.Key != use.Key
                && Naming.Alike(other.At.Text, name)
                && (use.Kind != NameKind.Position || IsBeside(other.At))
            );
        return taken is null ? null : $"'{name}' is taken in line {taken.At.Position.Line} of '{taken.At.Source.Path}'";

        bool IsBeside(SourceLocation other) =>
            other.Source.Path == use.DeclaredAt.Value.Source.Path && other.Position.Line == line;
    }
}
