using System.Text.RegularExpressions;

namespace WireText.Tests.Syntax;

/// <summary>What stands on the right of a production.</summary>
internal abstract record Ebnf
{
    /// <summary>One of several; the number tells alternatives of a whole grammar apart.</summary>
    public sealed record Choice(IReadOnlyList<Ebnf> Alternatives) : Ebnf;

    public sealed record Sequence(IReadOnlyList<Ebnf> Items) : Ebnf;

    public sealed record Optional(Ebnf Item) : Ebnf;

    public sealed record Repeated(Ebnf Item) : Ebnf;

    public sealed record Literal(string Text) : Ebnf;

    public sealed record Terminal(string Name) : Ebnf;

    public sealed record Production(string Name) : Ebnf;
}

/// <summary>Reads a grammar file in EBNF.</summary>
internal sealed partial class EbnfReader
{
    private readonly Queue<string> tokens;

    private EbnfReader(string text) =>
        tokens = new Queue<string>(Token().Matches(Comment().Replace(text, " ")).Select(m => m.Value));

    public static Dictionary<string, Ebnf> Read(string text)
    {
        var reader = new EbnfReader(text);
        var productions = new Dictionary<string, Ebnf>(StringComparer.Ordinal);
        while (reader.tokens.Count > 0)
        {
            var name = reader.tokens.Dequeue();
            reader.Expect("=");
            productions.Add(name, reader.ReadChoice());
            reader.Expect(";");
        }

        return productions;
    }

    private Ebnf ReadChoice()
    {
        var alternatives = new List<Ebnf> { ReadSequence() };
        while (tokens.Peek() == "|")
        {
            tokens.Dequeue();
            alternatives.Add(ReadSequence());
        }

        return alternatives.Count == 1 ? alternatives[0] : new Ebnf.Choice(alternatives);
    }

    private Ebnf.Sequence ReadSequence()
    {
        var items = new List<Ebnf>();
        while (tokens.Peek() is not ("|" or ")" or "]" or "}" or ";"))
        {
            items.Add(ReadItem());
        }

        return new Ebnf.Sequence(items);
    }

    private Ebnf ReadItem()
    {
        var token = tokens.Dequeue();
        switch (token)
        {
            case "(":
                return Closed(")", choice => choice);
            case "[":
                return Closed("]", choice => new Ebnf.Optional(choice));
            case "{":
                return Closed("}", choice => new Ebnf.Repeated(choice));
            default:
                return token[0] == '"' ? new Ebnf.Literal(token[1..^1])
                    : char.IsUpper(token[0]) ? new Ebnf.Terminal(token)
                    : new Ebnf.Production(token);
        }
    }

    private Ebnf Closed(string end, Func<Ebnf, Ebnf> wrap)
    {
        var choice = ReadChoice();
        Expect(end);
        return wrap(choice);
    }

    private void Expect(string token) => Assert.Equal(token, tokens.Dequeue());

    [GeneratedRegex(@"\(\*.*?\*\)", RegexOptions.Singleline, 2000)]
    private static partial Regex Comment();

    [GeneratedRegex("\"[^\"]*\"|[A-Za-z-]+|[=|;()\\[\\]{}]", RegexOptions.None, 2000)]
    private static partial Regex Token();
}
