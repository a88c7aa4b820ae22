using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Syntax;

/// <summary>The written grammar and the parser cannot drift: sentences made from the file are read, and those a word away are refused.</summary>
public class GrammarTests
{
    private static readonly Dictionary<string, Ebnf> Grammar = EbnfReader.Read(
        File.ReadAllText(Repository.PathOf("grammar", "wiretext.ebnf"))
    );

    /// <summary>What a terminal may stand for; the first is used where any will do.</summary>
    private static readonly Dictionary<string, string[]> Samples = new(StringComparer.Ordinal)
    {
        ["KIND"] = ["pickup"],
        ["ID"] = ["neck"],
        ["NAME"] = ["neck"],
        ["COIL"] = ["neck", "bridge.n"],
        ["LUG"] = ["vol.2", "saddle"],
        ["LEAD"] = ["neck.hot"],
        ["TERM"] = ["A0", "1"],
        ["WORD"] = ["white", "47n"],
        ["CODE"] = ["CR"],
        ["PAINT"] = ["#efe3c2"],
        ["TEXT"] = ["\"two words\""],
        ["PAIR"] = ["sel=neck", "n.dcr=4k"],
        ["JOINT"] = ["A0+A1"],
        ["POINT"] = ["-5,6.5"],
        ["NUMBER"] = ["90"],
        ["VALUE"] = ["6.2k"],
        ["VOLTS"] = ["8.9V"],
        ["TOL"] = ["±1%", "+-1%"],
    };

    /// <summary>Words of every form, put in the place of others to make sentences that may be wrong.</summary>
    private static readonly string[] OddWords =
    [
        "to",
        "from",
        "and",
        "at",
        "as",
        "\"text\"",
        "a=b",
        "a.b",
        "a+b",
        "1,2",
        "90",
        ":",
        ",",
        "(",
        ")",
        "=",
        "neck",
        "±1%",
        "sleeved",
        "twisted",
    ];

    private static readonly string[] WordsOfExpect =
    [
        "expect",
        "rest",
        "any",
        "others",
        "silence",
        "dead",
        "open",
        "hum-cancelling",
        "battery",
        "on",
        "off",
        "reads",
        "resonates",
        "level",
        "reversed",
        "parallel",
        "series",
        "through",
    ];

    public static TheoryData<string> Starts => ["statement", "row", "inside"];

    [Theory]
    [MemberData(nameof(Starts))]
    public void Parse_SentencesOfTheGrammar_ReachEveryAlternativeAndAreRead(string start)
    {
        foreach (var sentence in Sentences(new Ebnf.Production(start), depth: 0))
        {
            Assert.True(IsRead(start, sentence), $"{start}: {string.Join(' ', sentence)}");
        }
    }

    [Fact]
    public void Grammar_EveryProductionAndTerminal_IsUsedAndKnown()
    {
        var used = Grammar.Values.SelectMany(All).ToList();

        Assert.Equal(
            Grammar.Keys.Except(["statement", "row", "inside"]).Order(StringComparer.Ordinal),
            used.OfType<Ebnf.Production>().Select(p => p.Name).Distinct().Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            Samples.Keys.Order(StringComparer.Ordinal),
            used.OfType<Ebnf.Terminal>().Select(t => t.Name).Distinct().Order(StringComparer.Ordinal)
        );
    }

    /// <summary>Every statement and every line of a definition that the parser knows is in the file, and the other way round.</summary>
    [Fact]
    public void Grammar_FirstWords_AreTheParsersKeywords()
    {
        Assert.Equal(
            Keywords.Statements.Order(StringComparer.Ordinal),
            FirstWords("statement").Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            Keywords.Insides.Order(StringComparer.Ordinal),
            FirstWords("inside").Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Parse_SentencesOneWordAway_AreReadOnlyWhenTheGrammarHasThem(string start)
    {
        var (refused, wrong) = (0, new List<string>());
        foreach (var sentence in Sentences(new Ebnf.Production(start), depth: 0).Where(s => s.Count <= 12))
        {
            foreach (var mutant in Mutants(sentence))
            {
                var isInGrammar = Recognises(start, mutant);
                if (isInGrammar != IsRead(start, mutant))
                {
                    wrong.Add($"{(isInGrammar ? "refused" : "read")}: {string.Join(' ', mutant)}");
                }

                refused += isInGrammar ? 0 : 1;
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Distinct().Take(30)));
        Assert.True(refused > 20, $"only {refused} sentences were outside");
    }

    /// <summary>Sentences that together take every alternative, every option both ways, and every repetition zero times and twice.</summary>
    private static IEnumerable<List<string>> Sentences(Ebnf node, int depth)
    {
        switch (node)
        {
            case Ebnf.Literal literal:
                return
                [
                    [literal.Text],
                ];
            case Ebnf.Terminal terminal:
                return Samples[terminal.Name].Select(sample => new List<string> { sample });
            case Ebnf.Production production:
                return depth > 6 ? [] : Sentences(Grammar[production.Name], depth + 1);
            case Ebnf.Choice choice:
                return choice.Alternatives.SelectMany(a => Sentences(a, depth));
            case Ebnf.Optional optional:
                return Sentences(optional.Item, depth).Prepend([]);
            case Ebnf.Repeated repeated:
                var once = Sentences(repeated.Item, depth).ToList();
                return once.Count == 0
                    ?
                    [
                        [],
                    ]
                    : once.Prepend([]).Append([.. once[0], .. once[^1]]);
            default:
                return Sequences(((Ebnf.Sequence)node).Items, depth);
        }
    }

    /// <summary>Each item takes all its forms in turn while the others take their first.</summary>
    private static IEnumerable<List<string>> Sequences(IReadOnlyList<Ebnf> items, int depth)
    {
        var forms = items.Select(item => Sentences(item, depth).ToList()).ToList();
        if (forms.Exists(f => f.Count == 0))
        {
            yield break;
        }

        yield return [.. forms.SelectMany(f => f[0])];
        for (var i = 0; i < forms.Count; i++)
        {
            foreach (var form in forms[i].Skip(1))
            {
                yield return [.. forms.SelectMany((f, index) => index == i ? form : f[0])];
            }
        }
    }

    private static IEnumerable<List<string>> Mutants(List<string> sentence)
    {
        // The first word decides what the line is; without it the line is another one.
        for (var i = 1; i < sentence.Count; i++)
        {
            yield return [.. sentence.Where((_, index) => index != i)];
            foreach (var word in OddWords)
            {
                yield return [.. sentence.Select((w, index) => index == i ? word : w)];
                yield return [.. sentence[..i], word, .. sentence[i..]];
            }
        }

        foreach (var word in OddWords)
        {
            yield return [.. sentence, word];
        }
    }

    private static bool IsRead(string start, List<string> sentence)
    {
        var line = string.Join(' ', sentence);
        var text = start switch
        {
            "row" => $"arrange\n    {line}",
            "inside" => $"define switch mine\n    {line}",
            _ => line,
        };
        return WiringParser.Parse(new SourceText("sentence.wiring", text)).Findings.IsEmpty;
    }

    private static bool Recognises(string start, List<string> words)
    {
        // In expect the marks are words of their own, wherever they stand in a word.
        return Ends(new Ebnf.Production(start), words, 0).Contains(words.Count);
    }

    /// <summary>Where a node can end when it starts at a word.</summary>
    private static HashSet<int> Ends(Ebnf node, List<string> words, int at)
    {
        switch (node)
        {
            case Ebnf.Literal literal:
                return at < words.Count && string.Equals(words[at], literal.Text, StringComparison.OrdinalIgnoreCase)
                    ? [at + 1]
                    : [];
            case Ebnf.Terminal terminal:
                return at < words.Count && Fits(terminal.Name, words[at]) ? [at + 1] : [];
            case Ebnf.Production production:
                return Ends(Grammar[production.Name], words, at);
            case Ebnf.Choice choice:
                return [.. choice.Alternatives.SelectMany(a => Ends(a, words, at))];
            case Ebnf.Optional optional:
                return [at, .. Ends(optional.Item, words, at)];
            case Ebnf.Repeated repeated:
                var reached = new HashSet<int> { at };
                var open = new Queue<int>(reached);
                while (open.TryDequeue(out var from))
                {
                    foreach (var end in Ends(repeated.Item, words, from).Where(reached.Add))
                    {
                        open.Enqueue(end);
                    }
                }

                return reached;
            default:
                return ((Ebnf.Sequence)node).Items.Aggregate(
                    new HashSet<int> { at },
                    (starts, item) => [.. starts.SelectMany(s => Ends(item, words, s))]
                );
        }
    }

    /// <summary>The terminals as the head of the grammar file describes them, written anew and not taken from the parser.</summary>
    private static bool Fits(string terminal, string word) =>
        terminal switch
        {
            "KIND" => word == "pickup",
            "ID" => IsName(word) && !IsConnective(word),
            "NAME" => Fits("ID", word) && !WordsOfExpect.Contains(word),
            "COIL" => word.Split('.') is { Length: <= 2 } coil && Fits("NAME", coil[0]) && coil.Skip(1).All(IsLugWord),
            "LUG" => word.Split('.') is var parts
                && IsName(parts[0])
                && !IsConnective(parts[0])
                && parts.Skip(1).All(IsLugWord),
            "LEAD" => Fits("LUG", word) && word != "sleeved",
            "TERM" => !IsConnective(word) && word.Split('.').All(IsLugWord),
            "WORD" => word.IndexOfAny(['=', '"', ',', ':', '(', ')']) < 0 && !IsConnective(word) && word != ".",
            "CODE" => word.Length is >= 2 and <= 4 && word.All(char.IsAsciiLetter),
            "PAINT" => word.Length == 7 && word[0] == '#' && word.Skip(1).All(char.IsAsciiHexDigit),
            "TEXT" => word.Length > 1 && word[0] == '"' && word[^1] == '"',
            "PAIR" => word.Split('=') is [{ Length: > 0 } key, { Length: > 0 }] && Fits("LUG", key),
            "JOINT" => word.Split('+') is { Length: > 1 } lugs && lugs.All(l => Fits("TERM", l)),
            "POINT" => word.Split(',') is [var x, var y] && IsNumber(x) && IsNumber(y),
            "NUMBER" => IsNumber(word),
            "VALUE" => Fits("WORD", word) && word.Any(char.IsAsciiDigit),
            "VOLTS" => Fits("VALUE", word) && word.EndsWith('V'),
            _ => word.StartsWith('±') || word.StartsWith("+-", StringComparison.Ordinal),
        };

    private static bool IsName(string word) => word.Length > 0 && char.IsLetter(word[0]) && IsLugWord(word);

    private static bool IsLugWord(string word) =>
        word.Length > 0 && char.IsLetterOrDigit(word[0]) && word.All(c => char.IsLetterOrDigit(c) || c is '-' or '_');

    private static bool IsConnective(string word) => word is "to" or "from" or "at" or "as" or "and";

    private static bool IsNumber(string word) =>
        word.Length > 0 && word.TrimStart('-').All(c => char.IsAsciiDigit(c) || c == '.');

    private static IEnumerable<string> FirstWords(string production) =>
        Grammar[production] is Ebnf.Choice choice
            ? choice.Alternatives.SelectMany(a =>
                ((Ebnf.Sequence)a).Items[0] switch
                {
                    Ebnf.Literal literal => [literal.Text],
                    Ebnf.Choice first => first.Alternatives.Select(f =>
                        ((Ebnf.Literal)((Ebnf.Sequence)f).Items[0]).Text
                    ),
                    _ => Enumerable.Empty<string>(),
                }
            )
            : [];

    private static IEnumerable<Ebnf> All(Ebnf node) =>
        (
            node switch
            {
                Ebnf.Choice choice => choice.Alternatives.SelectMany(All),
                Ebnf.Sequence sequence => sequence.Items.SelectMany(All),
                Ebnf.Optional optional => All(optional.Item),
                Ebnf.Repeated repeated => All(repeated.Item),
                _ => [],
            }
        ).Prepend(node);
}
