using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Quantities;

namespace WireText.Drawing.Pictures;

/// <summary>How one wire is painted.</summary>
internal sealed record WireStyle(Colour Core, Colour Casing, Colour? Stripe, double Width)
{
    public double OuterWidth => Width + (2 * Tokens.Casing);

    /// <summary>True for a covered wire, whose ends are stripped; false for bare wire and a part's own lead.</summary>
    public bool IsInsulated => Width >= Tokens.WireCore;

    public Paint CorePaint => Paint.Stroked(Core, Width);

    public Paint CasingPaint => Paint.Stroked(Casing, OuterWidth);

    public static WireStyle Of(Theme theme, Wire wire) =>
        wire.Kind switch
        {
            WireKind.PartLead => Neutral(theme),
            WireKind.Braid => Of(theme, InsulationColour.Bare),
            _ => Of(theme, wire.Colour),
        };

    public static WireStyle Of(Theme theme, InsulationColour? colour) =>
        colour switch
        {
            null => new WireStyle(theme.UnstatedCore, theme.UnstatedCasing, null, Tokens.WireCore),
            { IsBare: true } => new WireStyle(
                Theme.Insulation(colour.Base),
                theme.CasingOf(colour.Base),
                null,
                Tokens.BareCore
            ),
            _ => new WireStyle(
                Theme.Insulation(colour.Base),
                theme.CasingOf(colour.Base),
                colour.Stripe is { } stripe ? Theme.Insulation(stripe) : null,
                Tokens.WireCore
            ),
        };

    /// <summary>A bare tinned lead.</summary>
    public static WireStyle Neutral(Theme theme) => new(theme.Tin, theme.MetalLine, null, Tokens.PartLeadCore);
}
