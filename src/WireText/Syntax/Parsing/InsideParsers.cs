using Sprache;
using WireText.Syntax.Nodes;

namespace WireText.Syntax.Parsing;

/// <summary>One parser a line under <c>define</c>, for what follows its first word.</summary>
internal static class InsideParsers
{
    private static readonly Parser<IEnumerable<PairSyntax>> Pairs = WordParsers.Pair("a key with a value").Many();

    private static readonly Parser<WordSyntax> Lug = WordParsers.Terminal("a lug of this part");

    private static readonly Parser<WordSyntax> As =
        from keyword in WordParsers.Literal("as")
        from name in WordParsers.Identifier("a name for the section")
        select name;

    private static readonly Parser<PointSyntax> At =
        from keyword in WordParsers.Literal("at")
        from at in WordParsers.Point("its place, such as -20.7,0")
        select at;

    /// <summary>The parser for what follows a line's first word; null when there is no such line.</summary>
    public static Parser<InsideSyntax>? For(WordSyntax keyword) =>
        keyword.Text.ToUpperInvariant() switch
        {
            "BODY" => Body(),
            "HOLE" => Hole(),
            "LUGS" or "LEADS" => Terminals(keyword),
            "METAL" or "SPARE" or "INNER" => Marked(keyword),
            "BETWEEN" => Between(),
            "JOINED" => Joined(),
            "COIL" => Coil(),
            "TRACK" => Track(),
            "POSITION" => Position(),
            "REST" => Rest(),
            "AMP" => Amp(),
            "RESISTOR" or "CAP" or "INDUCTOR" or "BATTERY" => TwoLead(keyword),
            _ => null,
        };

    private static Parser<InsideSyntax> Body() =>
        from size in Shape("box", "the body's width and depth, such as 46,16")
        from line in WordParsers.WholeLine
        select new BodySyntax(size.First, size.Second, line);

    private static Parser<InsideSyntax> Hole() =>
        from size in Shape("slot", "the slot's width and height, such as 26,2.5")
        from at in At.Optional()
        from line in WordParsers.WholeLine
        select new HoleSyntax(size.First, size.Second, at.GetOrDefault(), line);

    private static Parser<(double First, double? Second)> Shape(string box, string size)
    {
        var round =
            from keyword in WordParsers.Literal("round")
            from diameter in WordParsers.Where("a diameter in millimetres", IsPositive)
            select (Read(diameter.Text), (double?)null);
        var other =
            from keyword in WordParsers.Literal(box)
            from point in WordParsers.Point(size)
            select (point.X, (double?)point.Y);
        return round.Or(other);
    }

    private static bool IsPositive(string text) =>
        text.Length <= 12
        && double.TryParse(
            text,
            System.Globalization.NumberStyles.AllowDecimalPoint,
            System.Globalization.CultureInfo.InvariantCulture,
            out var number
        )
        && number > 0;

    private static double Read(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static Parser<InsideSyntax> Terminals(WordSyntax keyword)
    {
        var terminal =
            from name in WordParsers.Terminal("a name for a lug")
            from at in WordParsers.Point("its place, such as -5,6").Optional()
            select (name, at.GetOrDefault());
        return from terminals in terminal.AtLeastOnce()
            from line in WordParsers.WholeLine
            select new TerminalsSyntax(keyword, [.. terminals], line);
    }

    private static Parser<InsideSyntax> Marked(WordSyntax keyword) =>
        from names in Lug.AtLeastOnce()
        from line in WordParsers.WholeLine
        select new NamesSyntax(keyword, [.. names], line);

    private static Parser<InsideSyntax> Joined() =>
        from joints in WordParsers.Joint("joined lugs, such as A0+B0").AtLeastOnce()
        from line in WordParsers.WholeLine
        select new JoinedSyntax([.. joints], line);

    private static Parser<InsideSyntax> Between() =>
        from manner in WordParsers.Literal("make-before-break").Or(WordParsers.Literal("break-before-make"))
        from endless in WordParsers.Literal("endless").Optional()
        from line in WordParsers.WholeLine
        select new BetweenSyntax(manner, endless.GetOrDefault(), line);

    private static Parser<InsideSyntax> Coil() =>
        from start in Lug
        from finish in Lug
        from name in As.Optional()
        from pairs in Pairs
        from line in WordParsers.WholeLine
        select new CoilInsideSyntax(start, finish, name.GetOrDefault(), [.. pairs], line);

    private static Parser<InsideSyntax> Track() =>
        from low in Lug
        from wiper in Lug
        from high in Lug
        from name in As.Optional()
        from pairs in Pairs
        from line in WordParsers.WholeLine
        select new TrackInsideSyntax(low, wiper, high, name.GetOrDefault(), [.. pairs], line);

    private static Parser<InsideSyntax> Position() =>
        from position in ControlAndPosition
        from joints in WordParsers.Joint("joined lugs, such as A0+A1").Many()
        from line in WordParsers.WholeLine
        select new PositionSyntax(position.Control, position.Position, [.. joints], line);

    private static Parser<InsideSyntax> Rest() =>
        from position in ControlAndPosition
        from line in WordParsers.WholeLine
        select new RestInsideSyntax(position.Control, position.Position, line);

    private static Parser<(WordSyntax? Control, WordSyntax Position)> ControlAndPosition =>
        WordParsers
            .Pair("a position, such as 1 or pull=in")
            .Select(pair => ((WordSyntax?)pair.Key, pair.Value))
            .Or(WordParsers.Plain("a position, such as 1").Select(word => ((WordSyntax?)null, word)));

    private static Parser<InsideSyntax> Amp() =>
        from input in Lug
        from output in Lug
        from common in Lug
        from pairs in Pairs
        from line in WordParsers.WholeLine
        select new AmpInsideSyntax(input, output, common, [.. pairs], line);

    private static Parser<InsideSyntax> TwoLead(WordSyntax keyword) =>
        from first in Lug
        from second in Lug
        from value in WordParsers.Plain("a value").Optional()
        from line in WordParsers.WholeLine
        select new TwoLeadInsideSyntax(keyword, first, second, value.GetOrDefault(), line);
}
