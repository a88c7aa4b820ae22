using System.Collections.Immutable;
using System.Globalization;
using Sprache;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>The parsers of single words. Each notes what it looked for, so that the furthest failure can be explained.</summary>
internal static class WordParsers
{
    /// <summary>A word that is typed just so, upper and lower case alike.</summary>
    public static Parser<WordSyntax> Literal(string literal, string? role = null) =>
        Where(
            role is null ? $"'{literal}'" : $"'{literal}' {role}",
            text => string.Equals(text, literal, StringComparison.OrdinalIgnoreCase)
        );

    /// <summary>A word that fits, explained by <paramref name="what"/> when it does not.</summary>
    /// <param name="why">Says why a word will not do, where that is not plain.</param>
    public static Parser<WordSyntax> Where(string what, Func<string, bool> fits, Func<string, string?>? why = null) =>
        input =>
        {
            var line = (LineInput)input;
            var place = line.Reading.WordAt(line.Position);
            var text = place.Text;
            if (text.Length > 0 && fits(text))
            {
                return Result.Success(new WordSyntax(text, place), LineInput.At(line.Reading, place.Span.End));
            }

            line.Reading.NoteExpected(line.Position, what, text.Length == 0 ? null : why?.Invoke(text));
            return Result.Failure<WordSyntax>(input, what, []);
        };

    /// <summary>A name for a part, a splice or a kind.</summary>
    public static Parser<WordSyntax> Name(string what) =>
        Where(what, text => Names.WhyNoName(text) is null, Names.WhyNoName);

    /// <summary>A kind, a model or a word inside a definition.</summary>
    public static Parser<WordSyntax> Identifier(string what) =>
        Where(what, text => Names.WhyNoIdentifier(text) is null, Names.WhyNoIdentifier);

    /// <summary>A lug's name inside a definition, dotted where the part has sections; a number may come first.</summary>
    public static Parser<WordSyntax> Terminal(string what) =>
        Where(what, text => WhyNoTerminal(text) is null, WhyNoTerminal);

    /// <summary>The code of a colour, as it stands on a wire's tag.</summary>
    public static Parser<WordSyntax> ColourCode(string what) =>
        Where(what, text => text.Length is >= 2 and <= 4 && text.All(char.IsAsciiLetter));

    /// <summary>How a colour is drawn: red, green and blue, two hexadecimal digits each.</summary>
    public static Parser<WordSyntax> Paint(string what) =>
        Where(
            what,
            IsPaint,
            text => text[0] == '#' ? "a paint is # and six digits of 0–9 and a–f: red, green, blue" : null
        );

    /// <summary>A plain word: a model, a value, a colour, a position.</summary>
    public static Parser<WordSyntax> Plain(string what) => Where(what, IsPlain);

    public static readonly Parser<TextSyntax> Text =
        from word in Where(
            "words in quotes",
            IsText,
            text => text.Contains('"', StringComparison.Ordinal) ? "a quote stands inside a word" : null
        )
        select new TextSyntax(word.Text[1..^1], word.Location);

    public static Parser<PairSyntax> Pair(string what) =>
        from word in Where(what, IsPair)
        let mark = word.Text.IndexOf('=', StringComparison.Ordinal)
        select new PairSyntax(word.Part(0, mark), word.Part(mark + 1, word.Text.Length));

    /// <summary>A lug or a part: <c>neck.hot</c>, <c>saddle</c>.</summary>
    public static Parser<LugSyntax> Lug(string what) =>
        from word in Where(what, text => WhyNoLug(text) is null, WhyNoLug)
        select new LugSyntax(SplitAt(word, '.'));

    public static Parser<PointSyntax> Point(string what) =>
        from word in Where(what, text => ReadPoint(text) is not null)
        let point = ReadPoint(word.Text)!.Value
        select new PointSyntax(point.X, point.Y, word.Location);

    public static Parser<double> Number(string what) =>
        from word in Where(what, text => ReadNumber(text) is not null)
        select ReadNumber(word.Text)!.Value;

    /// <summary>Lugs joined with plus signs.</summary>
    public static Parser<JointSyntax> Joint(string what) =>
        from word in Where(what, IsJoint)
        select new JointSyntax(SplitAt(word, '+'));

    /// <summary>The place of all that the line says. It takes no word.</summary>
    public static readonly Parser<SourceLocation> WholeLine = input =>
        Result.Success(((LineInput)input).Reading.Content, input);

    /// <summary>The end of the line.</summary>
    public static readonly Parser<bool> End = input =>
    {
        var line = (LineInput)input;
        if (line.AtEnd)
        {
            return Result.Success(true, input);
        }

        line.Reading.NoteExpected(line.Position, "the end of the line");
        return Result.Failure<bool>(input, "the end of the line", []);
    };

    /// <summary>A parser that must take all of the line.</summary>
    public static Parser<T> ToTheEnd<T>(Parser<T> parser) => from node in parser from end in End select node;

    /// <summary>True for a word without a sign that another form of word has.</summary>
    public static bool IsPlain(string text) =>
        text.IndexOfAny(['=', '"', ',', ':', '(', ')']) < 0 && !Names.IsConnective(text) && text != ".";

    private static string? WhyNoTerminal(string text) =>
        Names.IsConnective(text) ? $"'{text}' joins other words and names nothing" : WhyNoDotted(text, 0);

    private static string? WhyNoLug(string text)
    {
        var dot = text.IndexOf('.', StringComparison.Ordinal);
        var name = dot < 0 ? text : text[..dot];
        return Names.WhyNoIdentifier(name) ?? (dot < 0 ? null : WhyNoDotted(text, dot + 1));
    }

    private static string? WhyNoDotted(string text, int start)
    {
        foreach (var word in text[start..].Split('.'))
        {
            if (Names.WhyNoLugWord(word) is { } reason)
            {
                return reason;
            }
        }

        return null;
    }

    private static bool IsText(string text) =>
        text.Length >= 2 && text[0] == '"' && text.IndexOf('"', 1) == text.Length - 1;

    private static bool IsPaint(string text) =>
        text.Length == 7 && text[0] == '#' && text[1..].All(char.IsAsciiHexDigit);

    /// <summary>With the mark of a pair behind it a word that joins others is a key like any other: <c>at=162mm</c>.</summary>
    private static bool IsPair(string text)
    {
        var mark = text.IndexOf('=', StringComparison.Ordinal);
        return mark > 0
            && mark < text.Length - 1
            && (WhyNoLug(text[..mark]) is null || Names.IsConnective(text[..mark]))
            && text.IndexOf('=', mark + 1) < 0
            && !text.Contains('"', StringComparison.Ordinal);
    }

    private static bool IsJoint(string text)
    {
        var words = text.Split('+');
        return words.Length > 1 && words.All(word => WhyNoTerminal(word) is null);
    }

    private static (double X, double Y)? ReadPoint(string text)
    {
        var halves = text.Split(',');
        return halves.Length == 2 && ReadNumber(halves[0]) is { } x && ReadNumber(halves[1]) is { } y ? (x, y) : null;
    }

    private static double? ReadNumber(string text) =>
        text.Length <= 12
        && double.TryParse(
            text,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var number
        )
        && Math.Abs(number) <= MaxCoordinate
            ? number
            : null;

    /// <summary>Nothing on a guitar is longer, in millimetres.</summary>
    private const double MaxCoordinate = 10_000;

    public static ImmutableArray<WordSyntax> SplitAt(WordSyntax word, char mark)
    {
        var words = ImmutableArray.CreateBuilder<WordSyntax>();
        var start = 0;
        for (var i = 0; i <= word.Text.Length; i++)
        {
            if (i == word.Text.Length || word.Text[i] == mark)
            {
                words.Add(word.Part(start, i));
                start = i + 1;
            }
        }

        return words.ToImmutable();
    }
}
