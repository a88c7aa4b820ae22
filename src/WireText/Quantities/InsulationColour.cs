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
public sealed record InsulationColour(PlainColour Base, PlainColour? Stripe = null)
{
    public static readonly InsulationColour Bare = new(ColourPalette.Standard.Of(ColourCode.Bare));

    public bool IsBare => Base is StandardColour { Colour: ColourCode.Bare };

    /// <summary>What stands on a wire's tag: <c>WH</c>, or <c>WH/BK</c> with a stripe; empty for bare wire.</summary>
    public string Tag => Stripe is { } stripe ? $"{Base.Code}/{stripe.Code}" : Base.Code;

    /// <summary>The English name: <c>white</c>, <c>white/black</c> or <c>bare</c>.</summary>
    public string Name => Stripe is { } stripe ? $"{Base.Name}/{stripe.Name}" : Base.Name;
}
