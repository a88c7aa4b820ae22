using System.Collections.Immutable;
using Sprache;

namespace WireText.Syntax;

/// <summary>One parser a statement, for what follows its first word. The node has the whole line for its place.</summary>
internal static class StatementParsers
{
    private static readonly Parser<SyntaxNode> Argument =
        from node in Words
            .Pair("a key with a value, such as value=250k")
            .Select(pair => (SyntaxNode)pair)
            .Or(Words.Text)
            .Or(Words.Plain("a model, a value or a word"))
        select node;

    private static readonly Parser<FromToSyntax> Hangs =
        from keyword in Words.Literal("from")
        from first in Words.Lug("the lug for its first lead")
        from to in Words.Literal("to", "between the two lugs")
        from second in Words.Lug("the lug for its second lead")
        select new FromToSyntax(first, second, keyword.Location.To(second.Location));

    private static readonly Parser<IEnumerable<PairSyntax>> Pairs = Words.Pair("a key with a value").Many();

    private static readonly Parser<IEnumerable<PairSyntax>> State =
        from rest in Words.Literal("rest").Optional()
        from pairs in rest.IsDefined
            ? Parse.Return(Enumerable.Empty<PairSyntax>())
            : Words.Pair("'rest' or a control with its position, such as sel=neck").AtLeastOnce()
        select pairs;

    private static readonly Dictionary<string, Parser<StatementSyntax>> ByKeyword = new(
        StringComparer.OrdinalIgnoreCase
    )
    {
        ["circuit"] = from text in Words.Text from line in Words.WholeLine select new CircuitSyntax(text, line),
        ["note"] = from text in Words.Text from line in Words.WholeLine select new NoteSyntax(text, line),
        ["include"] = from text in Words.Text from line in Words.WholeLine select new IncludeSyntax(text, line),
        ["base"] = from text in Words.Text from line in Words.WholeLine select new BaseSyntax(text, line),
        ["finish"] =
            from word in Words.Plain("the finish, such as nitrocellulose")
            from line in Words.WholeLine
            select new FinishSyntax(word, line),
        ["load"] =
            from pairs in Words.Pair("a key with a value, such as cable=470p").AtLeastOnce()
            from line in Words.WholeLine
            select new LoadSyntax([.. pairs], line),
        ["rest"] =
            from pairs in Words.Pair("a control with its position, such as sel=neck").AtLeastOnce()
            from line in Words.WholeLine
            select new RestSyntax([.. pairs], line),
        ["arrange"] = from line in Words.WholeLine select new ArrangeSyntax([], line),
        ["replace"] =
            from name in Words.Name("the name of a part")
            from arguments in Argument.Many()
            from line in Words.WholeLine
            select new ReplaceSyntax(name, [.. arguments], line),
        ["wire"] = Wire(),
        ["cable"] = Cable(),
        ["splice"] = Splice(),
        ["touch"] =
            from first in Words.Lug("a lug")
            from others in Words.Lug("another lug that it touches").AtLeastOnce()
            from line in Words.WholeLine
            select new TouchSyntax([first, .. others], line),
        ["positions"] =
            from control in Words.Lug("a control, such as sel or vol.pull")
            from names in Words.Plain("a word for each position").AtLeastOnce()
            from line in Words.WholeLine
            select new PositionsSyntax(control, [.. names], line),
        ["place"] = Place(),
        ["expect"] = Expect(),
        ["allow"] =
            from check in Words.Identifier("the name of a check")
            from at in After("at", Words.Lug("a lug or a part")).Optional()
            from reason in Words.Text
            from line in Words.WholeLine
            select new AllowSyntax(check, at.GetOrDefault(), reason, line),
        ["lift"] =
            from lug in Words.Lug("a lug")
            from to in After("to", Words.Lug("the lug at the other end")).Optional()
            from line in Words.WholeLine
            select new LiftSyntax(lug, to.GetOrDefault(), line),
        ["drop"] = Drop(),
        ["define"] =
            from kind in Words.Identifier("a kind of part, such as switch")
            from model in Words.Identifier("a name for the model")
            from remark in Words.Text.Optional()
            from line in Words.WholeLine
            select new DefineSyntax(kind, model, remark.GetOrDefault(), [], line),
    };

    /// <summary>The parser for what follows a statement's first word; null when the word starts a part.</summary>
    public static Parser<StatementSyntax>? For(string keyword) => ByKeyword.GetValueOrDefault(keyword);

    /// <summary>A part: what follows its kind.</summary>
    public static Parser<StatementSyntax> Part(WordSyntax kind) =>
        from name in Words.Name("a name for the part")
        from arguments in Argument.Many()
        from hangs in Hangs.Optional()
        from line in Words.WholeLine
        select new PartSyntax(kind, name, [.. arguments], hangs.GetOrDefault(), line);

    private static Parser<StatementSyntax> Wire() =>
        from first in Words.Lug("a lug such as vol.2")
        from to in Words.Literal("to", "between the two ends of the wire")
        from second in Words.Lug("a lug such as vol.2")
        from others in After("to", Words.Lug("a lug such as vol.2")).Many()
        from colour in Words.Plain("a colour")
        from rest in Words.Pair("length= or awg=").Select(pair => (SyntaxNode)pair).Or(Words.Literal("sleeved")).Many()
        from line in Words.WholeLine
        select new WireSyntax(
            [first, second, .. others],
            colour,
            rest.OfType<WordSyntax>().FirstOrDefault(),
            [.. rest.OfType<PairSyntax>()],
            line
        );

    private static Parser<StatementSyntax> Splice() =>
        from name in Words.Name("a name for the splice")
        from lugs in NotNext("sleeved", Words.Lug("a lead such as neck.hot")).Many()
        from sleeved in Words.Literal("sleeved").Optional()
        from remark in Words.Text.Optional()
        from line in Words.WholeLine
        select new SpliceSyntax(name, [.. lugs], sleeved.GetOrDefault(), remark.GetOrDefault(), line);

    private static Parser<StatementSyntax> Cable()
    {
        var core =
            from first in Words.Lug("a lug such as vol.2")
            from to in Words.Literal("to", "between the two ends of the core")
            from second in Words.Lug("a lug such as out.tip")
            from colour in Words.Plain("the colour of the core")
            select new CoreSyntax(first, second, colour, first.Location.To(colour.Location));
        var end =
            from cut in Words.Literal("cut").Optional()
            from lug in cut.IsDefined ? Parse.Return<LugSyntax?>(null) : Words.Lug("'cut' or a lug for the braid")
            select (Lug: lug, Place: cut.IsDefined ? cut.Get().Location : lug!.Location);
        var braid =
            from keyword in Words.Literal("braid", "with its two ends")
            from first in end
            from to in Words.Literal("to", "between the two ends of the braid")
            from second in end
            select new BraidSyntax(first.Lug, second.Lug, keyword.Location.To(second.Place));
        return from first in core
            from others in After("and", core).Many()
            from twisted in Words.Literal("twisted").Optional()
            from sheath in twisted.IsDefined ? Parse.Return<BraidSyntax?>(null) : braid
            from pairs in Pairs
            from line in Words.WholeLine
            select new CableSyntax([first, .. others], twisted.GetOrDefault(), sheath, [.. pairs], line);
    }

    private static Parser<StatementSyntax> Place() =>
        from name in Words.Name("the name of a part")
        from at in After("at", Words.Point("a place in millimetres, such as 40,25")).Optional()
        from turned in After("turned", Words.Number("degrees, such as 90")).Optional()
        from line in Words.WholeLine
        select new PlaceSyntax(name, at.GetOrDefault(), turned.IsDefined ? turned.Get() : null, line);

    private static Parser<StatementSyntax> Expect() =>
        from state in State
        from colon in Words.Literal(":", "before what must be true")
        from first in ClaimParsers.Claim
        from others in After(",", ClaimParsers.Claim).Many()
        from line in Words.WholeLine
        select new ExpectSyntax([.. state], [first, .. others], line);

    private static Parser<StatementSyntax> Drop()
    {
        var expectation =
            from keyword in Words.Literal("expect")
            from state in State
            from line in Words.WholeLine
            select (StatementSyntax)new DropExpectSyntax([.. state], line);
        var part =
            from name in Words.Name("the name of a part")
            from line in Words.WholeLine
            select (StatementSyntax)new DropSyntax(name, line);
        return expectation.Or(part);
    }

    /// <summary>A keyword and what follows it.</summary>
    private static Parser<T> After<T>(string keyword, Parser<T> parser) =>
        from word in Words.Literal(keyword)
        from result in parser
        select result;

    /// <summary>A parser that leaves a keyword alone.</summary>
    private static Parser<T> NotNext<T>(string keyword, Parser<T> parser) =>
        from free in Words.Literal(keyword).Not()
        from result in parser
        select result;
}
