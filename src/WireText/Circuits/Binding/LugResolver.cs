using System.Collections.Immutable;
using System.Globalization;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Finds the lug that a line names, and says what was probably meant when there is none.</summary>
internal sealed class LugResolver(CircuitDraft draft)
{
    /// <summary>Guessing costs time that grows with the file; past this many wrong names a message offers none.</summary>
    internal const int MostGuesses = 200;

    /// <summary>What a bench calls the wiper of a pot, whatever number its lug has.</summary>
    private static readonly ImmutableArray<string> WiperWords = ["w", "wiper"];

    private int guesses;

    /// <summary>The lug, or null after a finding; no finding when its part could not be built, or when two have its name.</summary>
    public Lug? Resolve(LugSyntax syntax)
    {
        if ((draft.FindLug(syntax.FullName) ?? FindWiper(syntax)) is { IsInner: false } lug)
        {
            return lug;
        }

        if (draft.IsBroken(syntax.Name.Text))
        {
            return null;
        }

        if (draft.FindPart(syntax.Name.Text) is { } part)
        {
            // The lug may be one of the other part of that name, which is reported.
            if (!draft.IsNameTwice(part.Name))
            {
                ReportLug(syntax, part);
            }
        }
        else
        {
            ReportPart(syntax.Name);
        }

        return null;
    }

    /// <summary>The part, or null after a finding; no finding when it could not be built.</summary>
    public Part? ResolvePart(WordSyntax name)
    {
        if (draft.FindPart(name.Text) is { } part)
        {
            return part;
        }

        if (!draft.IsBroken(name.Text))
        {
            ReportPart(name);
        }

        return null;
    }

    /// <summary>The lug of the wiper where it is called so: <c>vol.wiper</c> is <c>vol.2</c>, <c>duo.top.w</c> is <c>duo.top.2</c>.</summary>
    /// <returns>Null where the part has no track, or several and the gang is not said.</returns>
    private Lug? FindWiper(LugSyntax syntax)
    {
        if (
            syntax.Words.Length == 1
            || !WiperWords.Contains(syntax.Words[^1].Text, Naming.Comparer)
            || draft.FindPart(syntax.Name.Text) is not { } part
        )
        {
            return null;
        }

        var gang = string.Concat(syntax.Words[1..^1].Select(word => word.Text + "."));
        var wipers = part
            .Definition.Insides.OfType<Inside.TrackInside>()
            .Select(track => track.Wiper)
            .Where(wiper => gang.Length == 0 || wiper.StartsWith(gang, StringComparison.OrdinalIgnoreCase))
            .Distinct(Naming.Comparer)
            .ToList();
        return wipers is [var only] ? draft.FindLug($"{part.Name}.{only}") : null;
    }

    private void ReportPart(WordSyntax name)
    {
        var names = draft.Parts.Select(p => p.Name).ToList();
        var near = Guess(name.Text, names);
        var offered = near ?? CutShort(name.Text, names);
        draft.Sink.Add(
            LugFindings
                .UnknownPart.At(
                    name.Location,
                    $"no part is named '{name.Text}'",
                    offered is null ? "declare it on a line of its own" : $"did you mean '{offered}'?"
                )
                .MendedBy(TextEdit.Meant(name.Location, near, names))
        );
    }

    private void ReportLug(LugSyntax syntax, Part part)
    {
        var names = LugNames(part).ToList();
        if (syntax.Words.Length == 1)
        {
            draft.Sink.Add(
                LugFindings.WhichLug.At(
                    syntax.Location,
                    $"'{part.Name}' has several lugs",
                    $"say which: {LugRanges.Write(names.Select(n => $"{part.Name}.{n}"))}"
                )
            );
            return;
        }

        var wrong = syntax.FullName[(syntax.Name.Text.Length + 1)..];
        var at = syntax.Words[1].Location.To(syntax.Location);
        var model = $"a {part.Definition.Model} {part.Kind}";
        if (names.Count == 0)
        {
            draft.Sink.Add(
                LugFindings.UnknownLug.At(
                    at,
                    $"'{part.Name}' is its own lug; it has no '{wrong}'",
                    $"write '{part.Name}' alone"
                )
            );
            return;
        }

        var near = Guess(wrong, InOrderOfNearness(wrong, names));
        draft.Sink.Add(
            LugFindings
                .UnknownLug.At(
                    at,
                    $"no lug '{wrong}' on '{part.Name}', {model}: it has {LugRanges.Write(names)}",
                    near is not null ? $"did you mean '{near}'?" : OnWhichGang(syntax, wrong, names)
                )
                .MendedBy(TextEdit.Meant(at, near, names))
        );
    }

    /// <summary>Names the lug on each gang, where gangs have lugs of that name.</summary>
    private static string? OnWhichGang(LugSyntax syntax, string wrong, List<string> names)
    {
        var lugs = names
            .Where(name => name.EndsWith($".{wrong}", StringComparison.OrdinalIgnoreCase))
            .Select(name => $"{syntax.Name.Text}.{name}")
            .ToList();
        return lugs.Count == 0 ? null : $"say on which gang: {string.Join(" or ", lugs)}";
    }

    private IEnumerable<string> LugNames(Part part)
    {
        var lugs = part.Lugs.Select(l => draft.Lugs[l]).Where(l => !l.IsInner).ToList();
        return lugs.Count == 1 ? [] : lugs.Select(l => l.Terminal.Name);
    }

    /// <summary>Names with the same letters first, the nearest number first among them: after A4 comes A3.</summary>
    private static IEnumerable<string> InOrderOfNearness(string wrong, IEnumerable<string> names)
    {
        var (letters, number) = LugRanges.SplitNumber(wrong);
        return names.OrderBy(name =>
        {
            var (itsLetters, itsNumber) = LugRanges.SplitNumber(name);
            var isSame = string.Equals(letters, itsLetters, StringComparison.OrdinalIgnoreCase);
            return isSame && number is { } a && itsNumber is { } b ? Math.Abs(a - b) : int.MaxValue;
        });
    }

    private string? CutShort(string word, IEnumerable<string> names) =>
        guesses < MostGuesses ? DidYouMean.CutShort(word, names) : null;

    private string? Guess(string word, IEnumerable<string> names) =>
        guesses++ < MostGuesses ? DidYouMean.Nearest(word, names, allowed: 1) : null;
}

/// <summary>Writes many lugs shortly: <c>A0–A3, B0–B3, case</c>.</summary>
internal static class LugRanges
{
    public static string Write(IEnumerable<string> names)
    {
        var groups = new List<(string Letters, SortedSet<int> Numbers, string First)>();
        foreach (var name in names)
        {
            var (letters, number) = SplitNumber(name);
            var index = number is null ? -1 : groups.FindIndex(g => g.Letters == letters && g.Numbers.Count > 0);
            if (number is { } n && index >= 0)
            {
                groups[index].Numbers.Add(n);
            }
            else
            {
                groups.Add((letters, number is { } first ? [first] : [], name));
            }
        }

        return string.Join(", ", groups.SelectMany(g => Runs(g.Letters, g.Numbers, g.First)));
    }

    public static (string Letters, int? Number) SplitNumber(string name)
    {
        var digits = name.Length;
        while (digits > 0 && char.IsAsciiDigit(name[digits - 1]))
        {
            digits--;
        }

        var isNumber = int.TryParse(
            name.AsSpan(digits),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var number
        );
        return (name[..digits], isNumber ? number : null);
    }

    private static IEnumerable<string> Runs(string letters, SortedSet<int> numbers, string name)
    {
        if (numbers.Count == 0)
        {
            yield return name;
            yield break;
        }

        var (first, last) = (numbers.Min, numbers.Min);
        foreach (var number in numbers.Skip(1))
        {
            if (number != last + 1)
            {
                yield return Run(letters, first, last);
                first = number;
            }

            last = number;
        }

        yield return Run(letters, first, last);
    }

    private static string Run(string letters, int first, int last) =>
        first == last ? $"{letters}{first}" : $"{letters}{first}–{letters}{last}";
}
