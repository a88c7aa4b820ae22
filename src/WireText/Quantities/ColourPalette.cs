using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Quantities;

/// <summary>The colours that the words of one file can mean: the standard ones, bare, and those that the file names for itself.</summary>
public sealed class ColourPalette
{
    /// <summary>IEC 60757 keeps this code, and the pair that it stands for, for protective earth.</summary>
    private const string EarthCode = "GNYE";

    private const string Alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private readonly ImmutableArray<PlainColour> colours;

    private ColourPalette(ImmutableArray<PlainColour> colours)
    {
        this.colours = colours;
        Words = [.. Names, .. colours.Select(colour => colour.Code).Where(code => code.Length > 0), EarthCode];
    }

    public static ColourPalette Standard { get; } =
        new([
            new StandardColour(ColourCode.BK, "black"),
            new StandardColour(ColourCode.BN, "brown"),
            new StandardColour(ColourCode.RD, "red"),
            new StandardColour(ColourCode.OG, "orange"),
            new StandardColour(ColourCode.YE, "yellow"),
            new StandardColour(ColourCode.GN, "green"),
            new StandardColour(ColourCode.BU, "blue"),
            new StandardColour(ColourCode.VT, "violet"),
            new StandardColour(ColourCode.GY, "grey"),
            new StandardColour(ColourCode.WH, "white"),
            new StandardColour(ColourCode.PK, "pink"),
            new StandardColour(ColourCode.GD, "gold"),
            new StandardColour(ColourCode.TQ, "turquoise"),
            new StandardColour(ColourCode.SR, "silver"),
            new StandardColour(ColourCode.Bare, "bare"),
        ]);

    /// <summary>The English names, the standard ones in the order of the codes, then the file's own as they are written.</summary>
    public IEnumerable<string> Names => colours.Select(colour => colour.Name);

    /// <summary>Every word that names one colour, for "did you mean": English names, then codes.</summary>
    public ImmutableArray<string> Words { get; }

    public PlainColour Of(ColourCode code) => colours.OfType<StandardColour>().First(colour => colour.Colour == code);

    public ColourPalette With(OwnColour colour) => new(colours.Add(colour));

    /// <summary>The colour that has a word for its name, its code or another spelling of it; null when none has.</summary>
    public PlainColour? Find(string word) =>
        word.Length == 0 ? null
        : colours.FirstOrDefault(colour => Naming.Alike(colour.Name, word) || Naming.Alike(colour.Code, word))
            is { } named
            ? named
        : Naming.Alike(word, "gray") ? Of(ColourCode.GY)
        : Naming.Alike(word, "purple") ? Of(ColourCode.VT)
        : null;

    /// <summary>True when a word means a colour already, or a pair of them.</summary>
    public bool Has(string word) => Read(word) is not null;

    /// <summary>Reads a code or an English name, one or two joined by a slash; null when it is neither.</summary>
    /// <remarks><c>GNYE</c> and <c>green/yellow</c> are the same.</remarks>
    public InsulationColour? Read(string word)
    {
        if (Naming.Alike(word, EarthCode))
        {
            return new InsulationColour(Of(ColourCode.GN), Of(ColourCode.YE));
        }

        var parts = word.Split('/');
        if (parts.Length > 2 || Find(parts[0]) is not { } first)
        {
            return null;
        }

        if (parts.Length == 1)
        {
            return new InsulationColour(first);
        }

        return Find(parts[1]) is { Code.Length: > 0 } stripe && first.Code.Length > 0
            ? new InsulationColour(first, stripe)
            : null;
    }

    /// <summary>A code for a colour of a name that no colour has: two letters of the name where they are free, else three letters.</summary>
    public string FreeCode(string name)
    {
        var letters = name.Where(char.IsAsciiLetter).Select(char.ToUpperInvariant).DefaultIfEmpty('X').ToList();
        var pairs = letters.Skip(1).Select(second => $"{letters[0]}{second}");
        var others = from second in Alphabet from third in Alphabet select $"{letters[0]}{second}{third}";
        return pairs.Concat(others).First(code => !Has(code));
    }
}
