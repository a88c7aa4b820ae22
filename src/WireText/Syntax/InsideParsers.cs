using Sprache;
using WireText.Text;

namespace WireText.Syntax;

/// <summary>One parser a line under <c>define</c>, for what follows its first word.</summary>
internal static class InsideParsers
{
    private static TextSpan None => default;

    private static readonly Parser<IEnumerable<PairSyntax>> Pairs = Words.Pair("a key with a value").Many();

    private static readonly Parser<WordSyntax> Lug = Words.Terminal("a lug of this part");

    private static readonly Parser<WordSyntax> As =
        from keyword in Words.Literal("as")
        from name in Words.Identifier("a name for the section")
        select name;

    /// <summary>The parser for what follows a line's first word; null when there is no such line.</summary>
    public static Parser<InsideSyntax>? For(WordSyntax keyword) =>
        keyword.Text.ToUpperInvariant() switch
        {
            "BODY" => Shape("box", "the body's width and depth, such as 46,16")
                .Select(InsideSyntax (s) => new BodySyntax(s.First, s.Second, None)),
            "HOLE" => Shape("slot", "the slot's width and length, such as 2,35")
                .Select(InsideSyntax (s) => new HoleSyntax(s.First, s.Second, None)),
            "LUGS" or "LEADS" => Terminals(keyword),
            "METAL" or "SPARE" or "INNER" => Lug.AtLeastOnce()
                .Select(InsideSyntax (names) => new NamesSyntax(keyword, [.. names], None)),
            "BETWEEN" => Between(),
            "JOINED" => Words
                .Joint("joined lugs, such as A0+B0")
                .AtLeastOnce()
                .Select(InsideSyntax (joints) => new JoinedSyntax([.. joints], None)),
            "COIL" => Coil(),
            "TRACK" => Track(),
            "POSITION" => Position(),
            "REST" => Rest(),
            "AMP" => Amp(),
            "RESISTOR" or "CAP" or "INDUCTOR" or "BATTERY" => TwoLead(keyword),
            _ => null,
        };

    private static Parser<(double First, double? Second)> Shape(string box, string size)
    {
        var round =
            from keyword in Words.Literal("round")
            from diameter in Words.Where("a diameter in millimetres", IsPositive)
            select (Read(diameter.Text), (double?)null);
        var other =
            from keyword in Words.Literal(box)
            from point in Words.Point(size)
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
            from name in Words.Terminal("a name for a lug")
            from at in Words.Point("its place, such as -5,6").Optional()
            select (name, at.GetOrDefault());
        return terminal
            .AtLeastOnce()
            .Select(InsideSyntax (terminals) => new TerminalsSyntax(keyword, [.. terminals], None));
    }

    private static Parser<InsideSyntax> Between() =>
        from manner in Words.Literal("make-before-break").Or(Words.Literal("break-before-make"))
        from endless in Words.Literal("endless").Optional()
        select new BetweenSyntax(manner, endless.GetOrDefault(), None);

    private static Parser<InsideSyntax> Coil() =>
        from start in Lug
        from finish in Lug
        from name in As.Optional()
        from pairs in Pairs
        select new CoilInsideSyntax(start, finish, name.GetOrDefault(), [.. pairs], None);

    private static Parser<InsideSyntax> Track() =>
        from low in Lug
        from wiper in Lug
        from high in Lug
        from name in As.Optional()
        from pairs in Pairs
        select new TrackInsideSyntax(low, wiper, high, name.GetOrDefault(), [.. pairs], None);

    private static Parser<InsideSyntax> Position() =>
        from position in ControlAndPosition
        from joints in Words.Joint("joined lugs, such as A0+A1").Many()
        select new PositionSyntax(position.Control, position.Position, [.. joints], None);

    private static Parser<InsideSyntax> Rest() =>
        from position in ControlAndPosition
        select new RestInsideSyntax(position.Control, position.Position, None);

    private static Parser<(WordSyntax? Control, WordSyntax Position)> ControlAndPosition =>
        Words
            .Pair("a position, such as 1 or pull=in")
            .Select(pair => ((WordSyntax?)pair.Key, pair.Value))
            .Or(Words.Plain("a position, such as 1").Select(word => ((WordSyntax?)null, word)));

    private static Parser<InsideSyntax> Amp() =>
        from input in Lug
        from output in Lug
        from common in Lug
        from pairs in Pairs
        select new AmpInsideSyntax(input, output, common, [.. pairs], None);

    private static Parser<InsideSyntax> TwoLead(WordSyntax keyword) =>
        from first in Lug
        from second in Lug
        from value in Words.Plain("a value").Optional()
        select new TwoLeadInsideSyntax(keyword, first, second, value.GetOrDefault(), None);
}
