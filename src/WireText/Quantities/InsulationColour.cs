using System.Collections.Immutable;

namespace WireText.Quantities;

/// <summary>The colours of insulation by their IEC 60757 codes, in the order of its table, and bare wire.</summary>
public enum ColourCode
{
    BK,
    BN,
    RD,
    OG,
    YE,
    GN,
    BU,
    VT,
    GY,
    WH,
    PK,
    GD,
    TQ,
    SR,
    Bare,
}

/// <summary>The colour of a wire: its insulation, with a stripe where it has one, or bare.</summary>
public sealed record InsulationColour(ColourCode Base, ColourCode? Stripe = null)
{
    public static readonly InsulationColour Bare = new(ColourCode.Bare);

    private static readonly ImmutableArray<(ColourCode Code, string Name)> English =
    [
        (ColourCode.BK, "black"),
        (ColourCode.BN, "brown"),
        (ColourCode.RD, "red"),
        (ColourCode.OG, "orange"),
        (ColourCode.YE, "yellow"),
        (ColourCode.GN, "green"),
        (ColourCode.BU, "blue"),
        (ColourCode.VT, "violet"),
        (ColourCode.GY, "grey"),
        (ColourCode.WH, "white"),
        (ColourCode.PK, "pink"),
        (ColourCode.GD, "gold"),
        (ColourCode.TQ, "turquoise"),
        (ColourCode.SR, "silver"),
        (ColourCode.Bare, "bare"),
    ];

    /// <summary>The English names, in the order of the codes.</summary>
    public static IEnumerable<string> Names => English.Select(e => e.Name);

    /// <summary>Every word that names one colour, for "did you mean": English names, then codes.</summary>
    public static ImmutableArray<string> Words { get; } =
    [.. Names, .. English.Where(e => e.Code != ColourCode.Bare).Select(e => e.Code.ToString()), "GNYE"];

    public bool IsBare => Base == ColourCode.Bare;

    /// <summary>What stands on a wire's tag: <c>WH</c>, or <c>WH/BK</c> with a stripe; empty for bare wire.</summary>
    public string Tag =>
        IsBare ? ""
        : Stripe is { } stripe ? $"{Base}/{stripe}"
        : Base.ToString();

    /// <summary>The English name: <c>white</c>, <c>white/black</c> or <c>bare</c>.</summary>
    public string Name => Stripe is { } stripe ? $"{NameOf(Base)}/{NameOf(stripe)}" : NameOf(Base);

    /// <summary>Reads a code or an English name, one or two joined by a slash; null when it is neither.</summary>
    /// <remarks><c>GNYE</c> and <c>green/yellow</c> are the same: IEC 60757 keeps them for protective earth.</remarks>
    public static InsulationColour? Read(string word)
    {
        if (string.Equals(word, "GNYE", StringComparison.OrdinalIgnoreCase))
        {
            return new InsulationColour(ColourCode.GN, ColourCode.YE);
        }

        var parts = word.Split('/');
        if (parts.Length > 2 || ReadOne(parts[0]) is not { } first)
        {
            return null;
        }

        if (parts.Length == 1)
        {
            return new InsulationColour(first);
        }

        return ReadOne(parts[1]) is { } stripe && first != ColourCode.Bare && stripe != ColourCode.Bare
            ? new InsulationColour(first, stripe)
            : null;
    }

    private static string NameOf(ColourCode code) => English.First(e => e.Code == code).Name;

    private static ColourCode? ReadOne(string word)
    {
        foreach (var (code, name) in English)
        {
            if (
                string.Equals(word, name, StringComparison.OrdinalIgnoreCase)
                || (code != ColourCode.Bare && string.Equals(word, code.ToString(), StringComparison.OrdinalIgnoreCase))
            )
            {
                return code;
            }
        }

        return word.ToUpperInvariant() switch
        {
            "GRAY" => ColourCode.GY,
            "PURPLE" => ColourCode.VT,
            _ => null,
        };
    }
}
