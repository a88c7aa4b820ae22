using System.Collections.Immutable;
using Sprache;
using WireText.Syntax.Nodes;

namespace WireText.Syntax.Parsing;

/// <summary>What a <c>found</c> says: where something was measured or heard, and what.</summary>
internal static class FoundParsers
{
    /// <summary>What an ear tells, and what a part alone is.</summary>
    private static readonly ImmutableArray<string> Words =
    [
        "silence",
        "dead",
        "thin",
        "full",
        "hums",
        "quiet",
        "dark",
        "bright",
        "weak",
        "buzzes",
        "good",
        "open",
        "shorted",
        "leaky",
    ];

    private static readonly Parser<IEnumerable<PairSyntax>> Pairs = WordParsers
        .Pair("a control with its position, such as sel=neck")
        .Many();

    private static readonly Parser<FoundPlaceSyntax> Between =
        from pairs in Pairs
        from first in WordParsers.Lug("a lug for the first probe")
        from to in WordParsers.Literal("to", "between the two probes")
        from second in WordParsers.Lug("a lug for the second probe")
        select (FoundPlaceSyntax)
            new FoundBetweenSyntax(
                [.. pairs],
                first,
                second,
                (pairs.FirstOrDefault()?.Location ?? first.Location).To(second.Location)
            );

    private static readonly Parser<FoundPlaceSyntax> Joint =
        from word in WordParsers.Literal("joint")
        from lug in WordParsers.Lug("the lug of the joint")
        from of in WordParsers.Literal("of", "before a lug where the same wire ends")
        from other in WordParsers.Lug("a lug where the same wire ends")
        select (FoundPlaceSyntax)new FoundAtJointSyntax(lug, other, word.Location.To(other.Location));

    private static readonly Parser<FoundPlaceSyntax> Alone =
        from name in WordParsers.Lug("a part or a coil")
        from word in WordParsers.Literal("alone", "behind a part with an end lifted")
        select (FoundPlaceSyntax)new FoundAloneSyntax(name, name.Location.To(word.Location));

    private static readonly Parser<FoundPlaceSyntax> Lead = WordParsers
        .Literal("lead")
        .Select(word => (FoundPlaceSyntax)new FoundAtLeadSyntax(word));

    private static readonly Parser<FoundPlaceSyntax> Cell =
        from word in WordParsers.Literal("cell")
        from name in WordParsers.Lug("the name of a battery").Optional()
        select (FoundPlaceSyntax)
            new FoundAtCellSyntax(
                name.GetOrDefault(),
                name.IsDefined ? word.Location.To(name.Get().Location) : word.Location
            );

    private static readonly Parser<FoundWhatSyntax> Reading =
        from word in WordParsers.Literal("reads")
        from value in Shown
        select (FoundWhatSyntax)new FoundReadingSyntax(value, IsHighest: false, word.Location.To(value.Location));

    private static readonly Parser<FoundWhatSyntax> Highest =
        from word in WordParsers.Literal("at")
        from most in WordParsers.Literal("most", "before the highest reading")
        from value in Shown
        select (FoundWhatSyntax)new FoundReadingSyntax(value, IsHighest: true, word.Location.To(value.Location));

    private static readonly Parser<FoundWhatSyntax> Coils =
        from word in WordParsers.Literal("heard")
        from first in ClaimParsers.CoilName
        from others in (from and in WordParsers.Literal("and") from coil in ClaimParsers.CoilName select coil).Many()
        select (FoundWhatSyntax)
            new FoundCoilsSyntax(
                [first, .. others],
                word.Location.To(others.Select(other => other.Location).LastOrDefault(first.Location))
            );

    private static readonly Parser<FoundWhatSyntax> Volts = WordParsers
        .Where("a voltage, such as 8.9V", IsVoltage)
        .Select(value => (FoundWhatSyntax)new FoundVoltsSyntax(value));

    public static readonly Parser<FoundWhatSyntax> What = Words
        .Select(word => WordParsers.Literal(word).Select(found => (FoundWhatSyntax)new FoundWordSyntax(found)))
        .Aggregate(Reading.Or(Highest).Or(Coils), (one, other) => one.Or(other))
        .Or(Volts);

    public static readonly Parser<FoundPlaceSyntax> Past = WordParsers
        .Literal("worked")
        .Or(WordParsers.Literal("fresh"))
        .Select(word => (FoundPlaceSyntax)new FoundPastSyntax(word));

    private static bool IsVoltage(string text) =>
        ClaimParsers.IsFigure(text) && text.EndsWith("V", StringComparison.OrdinalIgnoreCase);

    private static Parser<WordSyntax> Shown =>
        WordParsers
            .Where("a reading, such as 7.05k", ClaimParsers.IsFigure)
            .Or(WordParsers.Literal("open", "where the meter shows nothing"));

    /// <param name="atPlug">Reads the jack and the state that a line of claims names too.</param>
    public static Parser<FoundPlaceSyntax> Place(Parser<(WordSyntax? Jack, ImmutableArray<PairSyntax> State)> atPlug)
    {
        var turning =
            from word in WordParsers.Literal("turning", "before a dial")
            from dial in WordParsers.Lug("a dial, such as vol")
            select dial;
        var plug =
            from at in atPlug
            from dial in turning.Optional()
            from line in WordParsers.WholeLine
            select (FoundPlaceSyntax)new FoundAtPlugSyntax(at.Jack, at.State, dial.GetOrDefault(), line);
        return Between.Or(Joint).Or(Alone).Or(Lead).Or(Cell).Or(plug);
    }
}
