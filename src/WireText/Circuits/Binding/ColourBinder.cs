using System.Globalization;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Gathers the colours that a file names for itself, and reads the colours of wires with them.</summary>
internal sealed class ColourBinder(FindingSink sink)
{
    /// <summary>Shown where a file has to choose one: undyed cloth.</summary>
    private const string ExamplePaint = "#efe3c2";

    private readonly Dictionary<string, SourceLocation> namedAt = new(Naming.Comparer);

    /// <summary>Names whose line could not be taken: a wire of such a colour is not reported again.</summary>
    private readonly HashSet<string> brokenNames = new(Naming.Comparer);

    private int count;

    public ColourPalette Palette { get; private set; } = ColourPalette.Standard;

    public void Bind(ColourSyntax syntax)
    {
        if (
            syntax is not { IsBroken: false, Code: { } code, Paint: { } paint }
            || IsOneTooMany(syntax)
            || IsTaken(syntax.Name, "give it a name of its own")
            || IsTaken(code, $"give it a code of its own, such as {Palette.FreeCode(syntax.Name.Text)}")
        )
        {
            brokenNames.Add(syntax.Name.Text);
            return;
        }

        namedAt[syntax.Name.Text] = syntax.Name.Location;
        namedAt[code.Text] = code.Location;
        Palette = Palette.With(
            new OwnColour(
                syntax.Name.Text,
                code.Text.ToUpperInvariant(),
                int.Parse(paint.Text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)
            )
        );
    }

    /// <summary>The colour that a word names; null where it is missing or means none, which is reported.</summary>
    public InsulationColour? Read(WordSyntax word)
    {
        if (word.Text.Length == 0)
        {
            return null;
        }

        if (Palette.Read(word.Text) is { } colour)
        {
            return colour;
        }

        if (!word.Text.Split('/').Any(brokenNames.Contains))
        {
            var near = DidYouMean.Nearest(word.Text, Palette.Words) ?? StripeIn(word.Text);
            sink.Add(
                WireFindings
                    .UnknownColour.At(
                        word.Location,
                        $"'{word.Text}' is no colour",
                        near is null ? HowToNameOne(word.Text) : $"did you mean '{near}'?"
                    )
                    .MendedBy(TextEdit.Meant(word.Location, near, Palette.Words))
            );
        }

        return null;
    }

    /// <summary>Counts a colour, and reports the first that is past the bound.</summary>
    private bool IsOneTooMany(ColourSyntax syntax)
    {
        count++;
        if (count == CircuitLimits.MaxColours + 1)
        {
            sink.Add(
                LineFindings.TooLarge.At(
                    syntax.Location,
                    $"one circuit names {CircuitLimits.MaxColours} colours of its own at most",
                    "take those out that no wire has"
                )
            );
        }

        return count > CircuitLimits.MaxColours;
    }

    /// <summary>Reports a name or a code that means a colour already.</summary>
    private bool IsTaken(WordSyntax word, string help)
    {
        if (Palette.Read(word.Text) is not { } earlier)
        {
            return false;
        }

        var what = Naming.Alike(word.Text, earlier.Name) ? "is a colour already" : $"means {earlier.Name} already";
        var finding = InclusionFindings.ColourTaken.At(word.Location, $"'{word.Text}' {what}", help);
        sink.Add(namedAt.TryGetValue(word.Text, out var place) ? finding.Beside(place, "named here first") : finding);
        return true;
    }

    private string HowToNameOne(string word)
    {
        var known = $"the colours are {string.Join(", ", Palette.Names)}; a stripe follows a slash: white/black";
        return Names.WhyNoIdentifier(word) is null
            ? $"{known}\nor name your own in a line: colour {word} {Palette.FreeCode(word)} {ExamplePaint}"
            : known;
    }

    /// <summary>Two colours joined by another sign, as they are joined by a slash; null when they are none.</summary>
    private string? StripeIn(string word)
    {
        var striped = word.Replace('-', '/').Replace('+', '/').Replace('_', '/');
        return Palette.Has(striped) ? striped : null;
    }
}
