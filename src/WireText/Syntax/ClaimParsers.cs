using Sprache;
using WireText.Text;

namespace WireText.Syntax;

/// <summary>What an <c>expect</c> claims.</summary>
internal static class ClaimParsers
{
    /// <summary>How deep brackets may stand in brackets.</summary>
    public const int MaxDepth = 32;

    /// <summary>A longer claim is not repeated in a message; in UTF-16 units.</summary>
    private const int LongestShown = 80;

    private static readonly Parser<CoilsSyntax> Coils = Parse.Ref(() => Joined!);

    private static readonly Parser<CoilsSyntax> Group =
        from open in Words.Literal("(")
        from coils in Coils
        from close in Words.Literal(")", "after the group")
        select new CoilSyntax(false, null, null, coils, TextSpan.FromBounds(open.Span.Start, close.Span.End));

    private static readonly Parser<CoilsSyntax> Named =
        from coil in CoilName
        from through in Through.Optional()
        select new CoilSyntax(
            false,
            coil,
            through.GetOrDefault(),
            null,
            TextSpan.FromBounds(coil.Span.Start, through.IsDefined ? through.Get().Span.End : coil.Span.End)
        );

    private static readonly Parser<CoilsSyntax> Coil =
        from reversed in Words.Literal("reversed").Optional()
        from coil in Group.Or(Named)
        select reversed.IsDefined
            ? (CoilSyntax)coil with
            {
                IsReversed = true,
                Span = TextSpan.FromBounds(reversed.Get().Span.Start, coil.Span.End),
            }
            : coil;

    private static readonly Parser<CoilsSyntax> Joined =
        from first in Coil
        from parallel in After("parallel").Many()
        from series in parallel.Any() ? NoMix("series", first, parallel) : After("series").Many()
        from mixed in series.Any() ? NoMix("parallel", first, series) : Parse.Return(Enumerable.Empty<CoilsSyntax>())
        select Join(first, parallel.ToList(), series.ToList());

    private static Parser<LugSyntax> CoilName =>
        from word in Words.Where("a pickup or a coil, such as neck or bridge.n", IsCoilName)
        select new LugSyntax([
            .. word
                .Text.Split('.')
                .Select(
                    (part, index) =>
                        new WordSyntax(
                            part,
                            new TextSpan(
                                word.Span.Start + word.Text.Split('.').Take(index).Sum(p => p.Length + 1),
                                part.Length
                            )
                        )
                ),
        ]);

    private static Parser<WordSyntax> Through =>
        from keyword in Words.Literal("through")
        from part in Words.Name("the name of a part")
        select part;

    public static readonly Parser<ClaimSyntax> Claim = OneWord("silence")
        .Or(OneWord("dead"))
        .Or(OneWord("open"))
        .Or(OneWord("hum-cancelling"))
        .Or(Battery())
        .Or(Value("reads", "a resistance, such as 6.2k"))
        .Or(Value("resonates", "a frequency, such as 3.4kHz"))
        .Or(Value("level", "a level, such as -6dB"))
        .Or(Coils.Select(coils => (ClaimSyntax)new CoilsClaimSyntax(coils)));

    private static Parser<ClaimSyntax> OneWord(string word) =>
        from found in Words.Literal(word)
        select (ClaimSyntax)new WordClaimSyntax(found);

    private static Parser<ClaimSyntax> Battery() =>
        from battery in Words.Literal("battery")
        from state in Words.Literal("on").Or(Words.Literal("off"))
        select (ClaimSyntax)
            new BatteryClaimSyntax(
                string.Equals(state.Text, "on", StringComparison.OrdinalIgnoreCase),
                TextSpan.FromBounds(battery.Span.Start, state.Span.End)
            );

    private static Parser<ClaimSyntax> Value(string quantity, string what) =>
        from word in Words.Literal(quantity)
        from value in Words.Where(what, text => Words.IsPlain(text) && text.Any(char.IsAsciiDigit))
        from tolerance in Words
            .Where(
                "a tolerance, such as ±1%",
                text => text.StartsWith('±') || text.StartsWith("+-", StringComparison.Ordinal)
            )
            .Optional()
        select (ClaimSyntax)
            new ValueClaimSyntax(
                word,
                value,
                tolerance.GetOrDefault(),
                TextSpan.FromBounds(word.Span.Start, tolerance.IsDefined ? tolerance.Get().Span.End : value.Span.End)
            );

    private static Parser<CoilsSyntax> After(string keyword) =>
        from word in Words.Literal(keyword)
        from coil in Coil
        select coil;

    /// <summary>Refuses the other join: without brackets the claim could be read in two ways, and both are shown.</summary>
    private static Parser<IEnumerable<CoilsSyntax>> NoMix(
        string keyword,
        CoilsSyntax first,
        IEnumerable<CoilsSyntax> others
    ) =>
        input =>
        {
            var line = (LineInput)input;
            var span = line.Reading.WordAt(line.Position);
            var word = line.Source.Substring(span.Start, span.Length);
            if (!string.Equals(word, keyword, StringComparison.OrdinalIgnoreCase))
            {
                return Result.Success(Enumerable.Empty<CoilsSyntax>(), input);
            }

            // The coil behind it is read aside, so that nothing it lacks is noted on this line.
            var aside = new LineReading(line.Source, line.Reading.Content, line.Reading.HasMarks);
            var next = Coil(aside.At(span.End));
            var last = others.Last().Span;
            var (start, end) = (first.Span.Start, next.WasSuccessful ? next.Value.Span.End : span.End);
            var before = line.Source[start..last.Start];
            var after = line.Source[last.End..end] + (next.WasSuccessful ? "" : " ...");
            var middle = line.Source.Substring(last.Start, last.Length);
            var isShort = end - start <= LongestShown;
            line.Reading.NoteTwoWays(
                line.Position,
                isShort ? $"({before}{middle}){after}" : "(a parallel b) series c",
                isShort ? $"{before}({middle}{after})" : "a parallel (b series c)"
            );
            return Result.Failure<IEnumerable<CoilsSyntax>>(input, "brackets", []);
        };

    private static CoilsSyntax Join(CoilsSyntax first, List<CoilsSyntax> parallel, List<CoilsSyntax> series)
    {
        var others = parallel.Count > 0 ? parallel : series;
        return others.Count == 0
            ? first
            : new JoinedCoilsSyntax(
                parallel.Count > 0 ? CoilJoin.Parallel : CoilJoin.Series,
                [first, .. others],
                TextSpan.FromBounds(first.Span.Start, others[^1].Span.End)
            );
    }

    private static bool IsCoilName(string text) =>
        text.Split('.') is { Length: <= 2 } words
        && Names.WhyNoName(words[0]) is null
        && words.Skip(1).All(word => Names.WhyNoLugWord(word) is null);
}
