using System.Globalization;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Reads the keys of one part's line, <c>dcr=7k</c> or <c>n.dcr=7k</c>, and tells at the end which nobody asked for.</summary>
internal sealed class PartKeys(FindingSink sink, PartArguments arguments, WordSyntax name)
{
    /// <summary>Stands between two values where nobody knows which it is.</summary>
    private const string Between = "..";

    private readonly HashSet<PairSyntax> used = [];

    // Coils of one pickup share a plain key: what is wrong with it is said once.
    private readonly HashSet<SourceLocation> reported = [];
    private bool isValueUsed;

    /// <summary>A key of one section: <c>n.dcr</c> is the key of section n.</summary>
    public PairSyntax? Of(string? section, string key) =>
        section is null ? null : Use(arguments.Pairs.Find(p => Naming.Alike(p.Key.Text, $"{section}.{key}")));

    /// <summary>A key of the whole part.</summary>
    public PairSyntax? Of(string key) => Use(arguments.Pairs.Find(p => Naming.Alike(p.Key.Text, key)));

    private PairSyntax? Use(PairSyntax? pair)
    {
        if (pair is not null)
        {
            used.Add(pair);
        }

        return pair;
    }

    /// <summary>The value that a line says without a key.</summary>
    public WordSyntax? BareValue()
    {
        isValueUsed = true;
        return arguments.Value;
    }

    /// <summary>What a meter read of the part, said without a key.</summary>
    public WordSyntax? BareMeasured() => arguments.Measured;

    /// <summary>The value that a word says, <c>?</c> for one that nobody knows, or two values with <c>..</c> between; null after a finding.</summary>
    public StatedValue? ReadStated(WordSyntax word, ValueUse use)
    {
        if (word.Text == ValueUse.Unknown && use.WhenUnknown is { } usual)
        {
            return StatedValue.Unknown(usual);
        }

        if (use.WhenUnknown is null || word.Text.Split(Between) is not [var low, var high])
        {
            return Read(word, use) is { } value ? StatedValue.Known(value, use.Unit) : null;
        }

        if (Read(low, word.Location, use) is not { } least || Read(high, word.Location, use) is not { } most)
        {
            return null;
        }

        if (least < most)
        {
            return StatedValue.Between(least, most, use.Unit);
        }

        ReportOnce(
            word.Location,
            $"'{word.Text}' does not rise",
            $"write the smaller value first: '{high}{Between}{low}'"
        );
        return null;
    }

    /// <summary>The value that a word says; null, after a finding, when it says none.</summary>
    public double? Read(WordSyntax word, ValueUse use) => Read(word.Text, word.Location, use);

    public double? Read(string text, SourceLocation at, ValueUse use)
    {
        var reading = ValueReader.Read(text, use);
        if (reading.Problem is { } problem)
        {
            ReportOnce(at, problem, reading.Suggestion is { } suggestion ? $"write '{suggestion}'" : null);
        }

        return reading.Value;
    }

    /// <summary>The plain number that a text says; null, after a finding, when it says none above 0 and up to a limit.</summary>
    public double? ReadCount(string text, SourceLocation at, string key, double most)
    {
        if (
            double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && number > 0
            && number <= most
        )
        {
            return number;
        }

        ReportOnce(at, $"'{text}' is no count for '{key}'", "write a plain number");
        return null;
    }

    /// <summary>A share of the value, by <c>tol=10%</c>; null when none is said.</summary>
    public double? ToleranceOf(string? section)
    {
        if ((Of(section, "tol") ?? Of("tol"))?.Value is not { } word)
        {
            return null;
        }

        var text = word.Text.TrimStart('±').Replace("+-", "", StringComparison.Ordinal);
        if (
            text.EndsWith('%')
            && double.TryParse(
                text[..^1],
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var percent
            )
            && percent < 100
        )
        {
            return percent / 100;
        }

        sink.Add(ValueFindings.BadValue.At(word.Location, $"'{word.Text}' is no tolerance", "write it as tol=10%"));
        return null;
    }

    public void ReportUnless(bool isRight, SyntaxNode at, string problem)
    {
        if (!isRight)
        {
            ReportOnce(at.Location, problem, help: null);
        }
    }

    /// <summary>Tells which keys, and whether the bare value, said nothing.</summary>
    public void ReportUnused()
    {
        var coils = arguments.Definition.Insides.OfType<Inside.CoilInside>().ToList();
        var known = KnownKeys.Of(arguments.Definition).ToList();
        foreach (var pair in arguments.Pairs.Where(p => !used.Contains(p)))
        {
            if (known.Contains(pair.Key.Text, Naming.Comparer))
            {
                // Known and not asked for: another key or the model itself said it already.
                sink.Add(
                    StatementFindings.SaidTwice.At(
                        pair.Location,
                        $"'{pair.Key.Text}' of '{name.Text}' is said already, by '{arguments.Definition.Model}' or by another key",
                        SectionHelp(coils, pair)
                    )
                );
                continue;
            }

            var near = DidYouMean.Nearest(pair.Key.Text, known);
            sink.Add(
                PartFindings.UnknownKey.At(
                    pair.Key.Location,
                    $"a {arguments.Definition.Kind} has no '{pair.Key.Text}='",
                    near is not null ? $"did you mean '{near}='?"
                        : known.Count > 0 ? $"it takes {string.Join(", ", known.Select(k => k + "="))}"
                        : $"a {arguments.Definition.Model} takes no keys"
                )
            );
        }

        if (arguments.Value is { } value && !isValueUsed)
        {
            sink.Add(
                PartFindings.UnknownWord.At(
                    value.Location,
                    $"'{value.Text}': a {arguments.Definition.Kind} has no one value",
                    coils.Count > 0 ? $"say what it is: dcr={value.Text}" : null
                )
            );
        }
    }

    private static string? SectionHelp(List<Inside.CoilInside> coils, PairSyntax pair) =>
        coils.Count > 1 && coils[0].Name is { } section
            ? $"to set one coil, write {section}.{pair.Key.Text}={pair.Value.Text}"
            : null;

    private void ReportOnce(SourceLocation at, string problem, string? help)
    {
        if (reported.Add(at))
        {
            sink.Add(ValueFindings.BadValue.At(at, problem, help));
        }
    }
}
