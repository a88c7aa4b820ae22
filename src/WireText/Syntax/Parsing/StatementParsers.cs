using System.Collections.Immutable;
using Sprache;
using WireText.Syntax.Nodes;

namespace WireText.Syntax.Parsing;

/// <summary>One parser a statement, for what follows its first word. The node has the whole line for its place.</summary>
internal static class StatementParsers
{
    private static readonly Parser<SyntaxNode> Argument =
        from node in WordParsers
            .Pair("a key with a value, such as value=250k")
            .Select(pair => (SyntaxNode)pair)
            .Or(WordParsers.Text)
            .Or(WordParsers.Plain("a model, a value or a word"))
        select node;

    private static readonly Parser<FromToSyntax> Hangs =
        from keyword in WordParsers.Literal("from")
        from first in WordParsers.Lug("the lug for its first lead")
        from to in WordParsers.Literal("to", "between the two lugs")
        from second in WordParsers.Lug("the lug for its second lead")
        select new FromToSyntax(first, second, keyword.Location.To(second.Location));

    private static readonly Parser<IEnumerable<PairSyntax>> Pairs = WordParsers.Pair("a key with a value").Many();

    private static readonly Parser<IEnumerable<PairSyntax>> State =
        from rest in WordParsers.Literal("rest").Optional()
        from pairs in rest.IsDefined
            ? Parse.Return(Enumerable.Empty<PairSyntax>())
            : WordParsers.Pair("'rest' or a control with its position, such as sel=neck").AtLeastOnce()
        select pairs;

    /// <summary>The jack that a line of claims names before its state; what is no jack and state is left to be read as a state alone.</summary>
    private static readonly Parser<WordSyntax?> ClaimedJack = input =>
    {
        var named =
            from jack in WordParsers.Name("the name of a jack")
            from colon in WordParsers.Literal(":")
            select jack;
        var isJack = named.Then(_ => State)(input).WasSuccessful;
        return isJack ? named(input) : Result.Success<WordSyntax?>(null, input);
    };

    private static readonly Dictionary<string, Parser<StatementSyntax>> ByKeyword = new(
        StringComparer.OrdinalIgnoreCase
    )
    {
        ["circuit"] =
            from text in WordParsers.Text
            from line in WordParsers.WholeLine
            select new CircuitSyntax(text, line),
        [Keywords.Remark] = Remark(),
        [Keywords.OlderRemark] = Remark(),
        ["about"] =
            from key in WordParsers.Identifier("what it says, such as customer or date")
            from text in WordParsers.Text
            from line in WordParsers.WholeLine
            select new AboutSyntax(key, text, line),
        ["include"] =
            from text in WordParsers.Text
            from line in WordParsers.WholeLine
            select new IncludeSyntax(text, line),
        ["base"] = from text in WordParsers.Text from line in WordParsers.WholeLine select new BaseSyntax(text, line),
        ["finish"] =
            from word in WordParsers.Plain("the finish, such as nitrocellulose")
            from line in WordParsers.WholeLine
            select new FinishSyntax(word, line),
        [Keywords.Colour] =
            from name in WordParsers.Identifier("a name for the colour")
            from code in WordParsers.ColourCode("a code of two to four letters, such as CR")
            from paint in WordParsers.Paint("its paint, such as #efe3c2")
            from line in WordParsers.WholeLine
            select new ColourSyntax(name, code, paint, line),
        ["load"] =
            from pairs in WordParsers.Pair("a key with a value, such as cable=470p").AtLeastOnce()
            from line in WordParsers.WholeLine
            select new LoadSyntax([.. pairs], line),
        ["rest"] =
            from pairs in WordParsers.Pair("a control with its position, such as sel=neck").AtLeastOnce()
            from line in WordParsers.WholeLine
            select new RestSyntax([.. pairs], line),
        [Keywords.Arrange] = from line in WordParsers.WholeLine select new ArrangeSyntax([], line),
        ["replace"] =
            from name in WordParsers.Name("the name of a part")
            from arguments in Argument.Many()
            from line in WordParsers.WholeLine
            select new ReplaceSyntax(name, [.. arguments], line),
        ["wire"] = Wire(),
        ["cable"] = Cable(),
        [Keywords.Splice] = Splice(),
        ["touch"] =
            from first in WordParsers.Lug("a lug")
            from others in WordParsers.Lug("another lug that it touches").AtLeastOnce()
            from line in WordParsers.WholeLine
            select new TouchSyntax([first, .. others], line),
        ["positions"] =
            from control in WordParsers.Lug("a control, such as sel or vol.pull")
            from names in WordParsers.Plain("a word for each position").AtLeastOnce()
            from line in WordParsers.WholeLine
            select new PositionsSyntax(control, [.. names], line),
        ["place"] = Place(),
        [Keywords.Expect] = Expect(),
        ["allow"] =
            from check in WordParsers.Identifier("the name of a check")
            from at in After("at", WordParsers.Lug("a lug or a part")).Optional()
            from reason in WordParsers.Text
            from line in WordParsers.WholeLine
            select new AllowSyntax(check, at.GetOrDefault(), reason, line),
        [Keywords.Find] =
            from first in WordParsers.Lug("a control, such as sel or vol.pull")
            from others in WordParsers.Lug("another control").Many()
            from at in After("at", WordParsers.Lug("a lug where a wire may land").AtLeastOnce()).Optional()
            from line in WordParsers.WholeLine
            select new FindSyntax([first, .. others], [.. at.GetOrElse([])], line),
        [Keywords.Found] = Found(),
        ["lift"] =
            from lug in WordParsers.Lug("a lug")
            from to in After("to", WordParsers.Lug("the lug at the other end")).Optional()
            from line in WordParsers.WholeLine
            select new LiftSyntax(lug, to.GetOrDefault(), line),
        [Keywords.Drop] = Drop(),
        [Keywords.Define] =
            from kind in WordParsers.Identifier("a kind of part, such as switch")
            from model in WordParsers.Identifier("a name for the model")
            from remark in WordParsers.Text.Optional()
            from line in WordParsers.WholeLine
            select new DefineSyntax(kind, model, remark.GetOrDefault(), [], line),
    };

    /// <summary>The parser for what follows a statement's first word; null when the word starts a part.</summary>
    public static Parser<StatementSyntax>? For(string keyword) => ByKeyword.GetValueOrDefault(keyword);

    /// <summary>A part: what follows its kind.</summary>
    public static Parser<StatementSyntax> Part(WordSyntax kind) =>
        from name in WordParsers.Name("a name for the part")
        from arguments in Argument.Many()
        from hangs in Hangs.Optional()
        from line in WordParsers.WholeLine
        select new PartSyntax(kind, name, [.. arguments], hangs.GetOrDefault(), line);

    private static Parser<StatementSyntax> Remark() =>
        from text in WordParsers.Text
        from line in WordParsers.WholeLine
        select new RemarkSyntax(text, line);

    private static Parser<StatementSyntax> Wire() =>
        from first in WordParsers.Lug("a lug such as vol.2")
        from to in WordParsers.Literal("to", "between the two ends of the wire")
        from second in WordParsers.Lug("a lug such as vol.2")
        from others in After("to", WordParsers.Lug("a lug such as vol.2")).Many()
        from colour in WordParsers.Plain("a colour")
        from rest in WordParsers
            .Pair("length= or awg=")
            .Select(pair => (SyntaxNode)pair)
            .Or(WordParsers.Literal("sleeved"))
            .Many()
        from line in WordParsers.WholeLine
        select new WireSyntax(
            [first, second, .. others],
            colour,
            rest.OfType<WordSyntax>().FirstOrDefault(),
            [.. rest.OfType<PairSyntax>()],
            line
        );

    private static Parser<StatementSyntax> Splice() =>
        from name in WordParsers.Name("a name for the splice")
        from lugs in NotNext("sleeved", WordParsers.Lug("a lead such as neck.hot")).Many()
        from sleeved in WordParsers.Literal("sleeved").Optional()
        from remark in WordParsers.Text.Optional()
        from line in WordParsers.WholeLine
        select new SpliceSyntax(name, [.. lugs], sleeved.GetOrDefault(), remark.GetOrDefault(), line);

    private static Parser<StatementSyntax> Cable()
    {
        var core =
            from first in WordParsers.Lug("a lug such as vol.2")
            from to in WordParsers.Literal("to", "between the two ends of the core")
            from second in WordParsers.Lug("a lug such as out.tip")
            from colour in WordParsers.Plain("the colour of the core")
            select new CoreSyntax(first, second, colour, first.Location.To(colour.Location));
        var end =
            from cut in WordParsers.Literal("cut").Optional()
            from lug in cut.IsDefined ? Parse.Return<LugSyntax?>(null) : WordParsers.Lug("'cut' or a lug for the braid")
            select (Lug: lug, Place: cut.IsDefined ? cut.Get().Location : lug!.Location);
        var braid =
            from keyword in WordParsers.Literal("braid", "with its two ends")
            from first in end
            from to in WordParsers.Literal("to", "between the two ends of the braid")
            from second in end
            select new BraidSyntax(first.Lug, second.Lug, keyword.Location.To(second.Place));
        return from first in core
            from others in After("and", core).Many()
            from twisted in WordParsers.Literal("twisted").Optional()
            from sheath in twisted.IsDefined ? Parse.Return<BraidSyntax?>(null) : braid
            from pairs in Pairs
            from line in WordParsers.WholeLine
            select new CableSyntax([first, .. others], twisted.GetOrDefault(), sheath, [.. pairs], line);
    }

    private static Parser<StatementSyntax> Place() =>
        from name in WordParsers.Name("the name of a part")
        from at in After("at", WordParsers.Point("a place in millimetres, such as 40,25")).Optional()
        from turned in After("turned", WordParsers.Number("degrees, such as 90")).Optional()
        from line in WordParsers.WholeLine
        select new PlaceSyntax(name, at.GetOrDefault(), turned.IsDefined ? turned.Get() : null, line);

    private static Parser<StatementSyntax> Expect() =>
        from jack in ClaimedJack
        from state in State
        from colon in WordParsers.Literal(":", "before what must be true")
        from first in ClaimParsers.Claim
        from others in After(",", ClaimParsers.Claim).Many()
        from line in WordParsers.WholeLine
        select new ExpectSyntax(jack, [.. state], [first, .. others], line);

    private static Parser<StatementSyntax> Found()
    {
        var atPlug = from jack in ClaimedJack from state in State select (jack, state.ToImmutableArray());
        var found =
            from place in FoundParsers.Place(atPlug)
            from colon in WordParsers.Literal(":", "before what was found")
            from first in FoundParsers.What
            from others in After(",", FoundParsers.What).Many()
            from line in WordParsers.WholeLine
            select (StatementSyntax)new FoundSyntax(place, [first, .. others], line);
        var past =
            from word in FoundParsers.Past
            from line in WordParsers.WholeLine
            select (StatementSyntax)new FoundSyntax(word, [], line);
        return found.Or(past);
    }

    private static Parser<StatementSyntax> Drop()
    {
        var expectation =
            from keyword in WordParsers.Literal(Keywords.Expect)
            from jack in ClaimedJack
            from state in State
            from line in WordParsers.WholeLine
            select (StatementSyntax)new DropExpectSyntax(jack, [.. state], line);
        var part =
            from name in WordParsers.Name("the name of a part")
            from line in WordParsers.WholeLine
            select (StatementSyntax)new DropSyntax(name, line);
        return expectation.Or(part);
    }

    /// <summary>A keyword and what follows it.</summary>
    private static Parser<T> After<T>(string keyword, Parser<T> parser) =>
        from word in WordParsers.Literal(keyword)
        from result in parser
        select result;

    /// <summary>A parser that leaves a keyword alone.</summary>
    private static Parser<T> NotNext<T>(string keyword, Parser<T> parser) =>
        from free in WordParsers.Literal(keyword).Not()
        from result in parser
        select result;
}
