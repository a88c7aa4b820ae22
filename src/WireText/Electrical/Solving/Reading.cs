namespace WireText.Electrical.Solving;

public enum ReadingKind
{
    /// <summary>Tip and sleeve are one node: the meter shows 0 Ω.</summary>
    Joined,

    /// <summary>No direct current can flow: the meter shows nothing.</summary>
    None,

    Value,
}

/// <summary>What an ohmmeter shows at the jack, in ohms.</summary>
/// <param name="Ohms">With every value as stated; 0 when joined, infinite when nothing is read.</param>
/// <param name="Least">With every resistance at the low end of its tolerance.</param>
/// <param name="Most">With every resistance at the high end.</param>
/// <remarks>
/// The band is exact where every taper is known: the reading is the least of Σ r·f² over unit flows f (Thomson), so it never falls when a resistance
/// rises (Rayleigh); see Doyle and Snell, "Random walks and electric networks", 1984.
/// </remarks>
public readonly record struct Reading(ReadingKind Kind, double Ohms, double Least, double Most)
{
    /// <summary>True where it rests on a value that nobody knows: then only its band means something.</summary>
    public bool IsInDoubt { get; init; }

    public static readonly Reading Joined = new(ReadingKind.Joined, 0, 0, 0);

    public static readonly Reading None = new(
        ReadingKind.None,
        double.PositiveInfinity,
        double.PositiveInfinity,
        double.PositiveInfinity
    );
}
