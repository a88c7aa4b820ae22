namespace WireText.Circuits;

/// <summary>Where each value of a coil comes from.</summary>
/// <param name="Winding">How it is wound.</param>
/// <param name="Magnet">Which pole faces the strings.</param>
public sealed record CoilOrigins(
    ValueOrigin Ohms,
    ValueOrigin Henries,
    ValueOrigin Farads,
    ValueOrigin Winding,
    ValueOrigin Magnet
)
{
    /// <summary>Nothing is said.</summary>
    public static readonly CoilOrigins AllAssumed = new(
        ValueOrigin.Assumed,
        ValueOrigin.Assumed,
        ValueOrigin.Assumed,
        ValueOrigin.Assumed,
        ValueOrigin.Assumed
    );
}
