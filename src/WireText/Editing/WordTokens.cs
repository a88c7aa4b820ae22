using System.Collections.Immutable;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Editing;

/// <summary>Says of the words of a text what each is. A line that cannot be read is divided all the same.</summary>
public static class WordTokens
{
    /// <summary>Words of the language that stand behind the first of a line.</summary>
    private static readonly ImmutableHashSet<string> Inner = ImmutableHashSet.Create<string>(
        Naming.Comparer,
        [
            .. Names.Connectives,
            .. Names.WordsOfExpect,
            "sleeved",
            "twisted",
            "braid",
            "cut",
            "turned",
            "measured",
            "for",
        ]
    );

    /// <summary>In the order of the text; no two overlap.</summary>
    public static ImmutableArray<WordToken> Of(Compilation compiled)
    {
        var tree = compiled.Tree;
        var uses = NameTable.Of(compiled).Own.ToLookup(use => use.At.Position.Line);
        var tokens = ImmutableArray.CreateBuilder<WordToken>();
        foreach (var line in tree.Lines)
        {
            var scan = LineScan.Of(tree.Source, line.Number);
            AddWords(tokens, tree.Source, scan, [.. uses[line.Number]]);
            if (scan.HasComment)
            {
                tokens.Add(
                    new WordToken(TextSpan.FromBounds(scan.CommentStart, line.Span.End), WordKind.Comment, false)
                );
            }
        }

        return tokens.ToImmutable();
    }

    private static void AddWords(
        ImmutableArray<WordToken>.Builder tokens,
        SourceText source,
        LineScan scan,
        ImmutableArray<NameUse> uses
    )
    {
        var words = LineScan.WordsIn(source.Content, scan.Content);
        for (var i = 0; i < words.Count; i++)
        {
            var isFirst = i == 0;
            if (isFirst && Naming.Alike(source.Slice(words[0]), Keywords.Expect))
            {
                // Behind this word marks are words of their own.
                words = LineScan.WordsIn(source.Content, scan.Content, hasMarks: true);
            }

            AddWord(tokens, source, words[i], isFirst, uses);
        }
    }

    private static void AddWord(
        ImmutableArray<WordToken>.Builder tokens,
        SourceText source,
        TextSpan word,
        bool isFirst,
        ImmutableArray<NameUse> uses
    )
    {
        var at = word.Start;
        foreach (var use in uses.Where(use => use.At.Span.Start >= word.Start && use.At.Span.End <= word.End))
        {
            AddPlain(tokens, source, TextSpan.FromBounds(at, use.At.Span.Start), isFirst: false);
            tokens.Add(new WordToken(use.At.Span, KindOf(use.Kind), use.IsDeclaration));
            at = use.At.Span.End;
        }

        AddPlain(tokens, source, TextSpan.FromBounds(at, word.End), isFirst && at == word.Start);
    }

    /// <summary>A word, or what is left of it, that names nothing.</summary>
    private static void AddPlain(
        ImmutableArray<WordToken>.Builder tokens,
        SourceText source,
        TextSpan span,
        bool isFirst
    )
    {
        var text = source.Slice(span);
        if (text.Length == 0 || text is "." or "/" or ":" or "," or "(" or ")")
        {
            return;
        }

        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals >= 0 && text[0] != '"')
        {
            Add(TextSpan.FromBounds(span.Start, span.Start + equals), WordKind.Key);
            var value = TextSpan.FromBounds(span.Start + equals + 1, span.End);
            Add(value, KindOfWord(source.Slice(value)) ?? WordKind.Choice);
        }
        else if (isFirst)
        {
            Add(span, Keywords.Statements.Has(text) || Keywords.Insides.Has(text) ? WordKind.Keyword : WordKind.Kind);
        }
        else if (KindOfWord(text) is { } kind)
        {
            Add(span, kind);
        }

        void Add(TextSpan at, WordKind kind)
        {
            if (at.Length > 0)
            {
                tokens.Add(new WordToken(at, kind, false));
            }
        }
    }

    private static WordKind? KindOfWord(string text) =>
        text.Length == 0 ? null
        : text[0] == '"' ? WordKind.Text
        : Inner.Contains(text) ? WordKind.Keyword
        : char.IsAsciiDigit(text[0]) || text[0] is '-' or '±' or '?' ? WordKind.Number
        : char.IsLetter(text[0]) ? WordKind.Choice
        : null;

    private static WordKind KindOf(NameKind kind) =>
        kind switch
        {
            NameKind.Part => WordKind.Part,
            NameKind.Lug or NameKind.Section => WordKind.Lug,
            NameKind.Position => WordKind.Choice,
            NameKind.Kind => WordKind.Kind,
            NameKind.Model => WordKind.Model,
            NameKind.Colour => WordKind.Colour,
            _ => WordKind.Check,
        };
}
