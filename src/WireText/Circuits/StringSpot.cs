namespace WireText.Circuits;

/// <summary>Where along the strings a coil listens, and over what length; null for what is not said. In metres.</summary>
/// <param name="CoilMetres">From the bridge to the middle of this coil.</param>
/// <param name="PickupMetres">From the bridge to the middle of a pickup of several coils.</param>
/// <param name="ApertureMetres">The length of string that moves over the coil's magnet.</param>
public sealed record StringSpot(double? CoilMetres, double? PickupMetres, double? ApertureMetres)
{
    /// <summary>Nothing is said.</summary>
    public static readonly StringSpot Unsaid = new(null, null, null);
}
