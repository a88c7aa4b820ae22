using Sprache;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>What an <c>expect</c> claims.</summary>
internal static class ClaimParsers
{
    /// <summary>A longer claim is not repeated in a message; in UTF-16 units.</summary>
    private const int LongestShown = 80;

    private static readonly Parser<CoilsSyntax> Coils = Parse.Ref(() => Joined!);

    private static readonly Parser<CoilsSyntax> Group =
        from open in WordParsers.Literal("(")
        from coils in Coils
        from close in WordParsers.Literal(")", "after the group")
        from through in Through.Optional()
        select new CoilSyntax(false, null, through.GetOrDefault(), coils, Whole(open, close, through));

    private static readonly Parser<CoilsSyntax> Named =
        from coil in CoilName
        from through in Through.Optional()
        select new CoilSyntax(false, coil, through.GetOrDefault(), null, Whole(coil, coil, through));

    private static readonly Parser<CoilsSyntax> Coil =
        from reversed in WordParsers.Literal("reversed").Optional()
        from coil in Group.Or(Named)
        select reversed.IsDefined
            ? (CoilSyntax)coil with
            {
                IsReversed = true,
                Location = reversed.Get().Location.To(coil.Location),
            }
            : coil;

    private static readonly Parser<CoilsSyntax> Joined =
        from first in Coil
        from parallel in After("parallel").Many()
        from series in parallel.Any() ? NoMix("series", first, parallel) : After("series").Many()
        from mixed in series.Any() ? NoMix("parallel", first, series) : Parse.Return(Enumerable.Empty<CoilsSyntax>())
        select Join(first, parallel.ToList(), series.ToList());

    internal static Parser<LugSyntax> CoilName =>
        from word in WordParsers.Where("a pickup or a coil, such as neck or bridge.n", IsCoilName)
        select new LugSyntax(WordParsers.SplitAt(word, '.'));

    private static Parser<WordSyntax> Through =>
        from keyword in WordParsers.Literal("through")
        from part in WordParsers.Name("the name of a part")
        select part;

    private static Parser<WordSyntax> Frequency =>
        from keyword in WordParsers.Literal("at")
        from hertz in WordParsers.Where("a frequency, such as 5kHz", IsFigure)
        select hertz;

    private static Parser<WordSyntax> OfARun =>
        from keyword in WordParsers.Literal("for")
        from share in WordParsers.Where("a share of instruments, such as 95%", IsFigure)
        select share;

    public static readonly Parser<ClaimSyntax> Claim = OneWord("silence")
        .Or(OneWord("dead"))
        .Or(OneWord("open"))
        .Or(OneWord("hum-cancelling"))
        .Or(Battery())
        .Or(Value("reads", "a resistance, such as 6.2k"))
        .Or(Value("resonates", "a frequency, such as 3.4kHz"))
        .Or(Value("level", "a level, such as -6dB", Frequency.Optional().Select(at => at.GetOrDefault())))
        .Or(Coils.Select(coils => (ClaimSyntax)new CoilsClaimSyntax(coils)));

    private static Parser<ClaimSyntax> OneWord(string word) =>
        from found in WordParsers.Literal(word)
        select (ClaimSyntax)new WordClaimSyntax(found);

    private static Parser<ClaimSyntax> Battery() =>
        from battery in WordParsers.Literal("battery")
        from state in WordParsers.Literal("on").Or(WordParsers.Literal("off"))
        select (ClaimSyntax)
            new BatteryClaimSyntax(
                string.Equals(state.Text, "on", StringComparison.OrdinalIgnoreCase),
                battery.Location.To(state.Location)
            );

    /// <param name="frequency">Reads the frequency that it is claimed at; null for a quantity that has none.</param>
    private static Parser<ClaimSyntax> Value(string quantity, string what, Parser<WordSyntax?>? frequency = null) =>
        from word in WordParsers.Literal(quantity)
        from value in WordParsers.Where(what, IsFigure)
        from at in frequency ?? Parse.Return<WordSyntax?>(null)
        from tolerance in WordParsers
            .Where(
                "a tolerance, such as ±1%",
                text => text.StartsWith('±') || text.StartsWith("+-", StringComparison.Ordinal)
            )
            .Optional()
        from share in OfARun.Optional()
        select (ClaimSyntax)
            new ValueClaimSyntax(
                word,
                value,
                at,
                tolerance.GetOrDefault(),
                share.GetOrDefault(),
                word.Location.To((share.GetOrDefault() ?? tolerance.GetOrDefault() ?? at ?? value).Location)
            );

    internal static bool IsFigure(string text) => WordParsers.IsPlain(text) && text.Any(char.IsAsciiDigit);

    /// <summary>From the first to the last, or to the part that all of it is heard through.</summary>
    private static SourceLocation Whole(SyntaxNode first, SyntaxNode last, IOption<WordSyntax> through) =>
        first.Location.To(through.IsDefined ? through.Get().Location : last.Location);

    private static Parser<CoilsSyntax> After(string keyword) =>
        from word in WordParsers.Literal(keyword)
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
            var word = line.Reading.WordAt(line.Position);
            if (!string.Equals(word.Text, keyword, StringComparison.OrdinalIgnoreCase))
            {
                return Result.Success(Enumerable.Empty<CoilsSyntax>(), input);
            }

            // The coil behind it is read aside, so that nothing it lacks is noted on this line.
            var aside = line.Reading.Aside();
            var next = Coil(LineInput.At(aside, word.Span.End));
            var last = others.Last().Span;
            var (start, end) = (first.Span.Start, next.WasSuccessful ? next.Value.Span.End : word.Span.End);
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
                first.Location.To(others[^1].Location)
            );
    }

    private static bool IsCoilName(string text) =>
        text.Split('.') is { Length: <= 2 } words
        && Names.WhyNoName(words[0]) is null
        && words.Skip(1).All(word => Names.WhyNoLugWord(word) is null);
}
