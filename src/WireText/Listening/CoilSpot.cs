using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Listening;

/// <summary>Where a coil listens along the strings, said or assumed.</summary>
/// <param name="Metres">From the bridge to its middle.</param>
/// <param name="ApertureMetres">The length of string that it hears.</param>
/// <param name="IsPlaceAssumed">True when neither its line nor its model says where it lies.</param>
/// <param name="IsApertureAssumed">True when they do not say what it hears.</param>
public sealed record CoilSpot(
    Coil Coil,
    double Metres,
    double ApertureMetres,
    bool IsPlaceAssumed,
    bool IsApertureAssumed
)
{
    /// <summary>Of a coil with a row of pole pieces. Assumed; not measured.</summary>
    public const double UsualAperture = 0.015;

    /// <summary>From the middle of one coil to that of the other, in a pickup of two beside each other. Common practice, from memory.</summary>
    private const double CoilSpacing = 0.018;

    /// <summary>Every coil of a circuit, in order of declaration.</summary>
    public static ImmutableArray<CoilSpot> Of(Circuit circuit)
    {
        var scale = Instrument.Of(circuit).ScaleMetres;
        return
        [
            .. circuit
                .Elements.OfType<Coil>()
                .GroupBy(coil => coil.Part)
                .SelectMany(pickup => OfPickup(circuit.Parts[pickup.Key].Name, [.. pickup], scale)),
        ];
    }

    /// <summary>The first coil of a pickup is taken to be the one nearer the neck.</summary>
    private static IEnumerable<CoilSpot> OfPickup(string name, ImmutableArray<Coil> coils, double scale) =>
        coils.Select(
            (coil, i) =>
            {
                var said = coil.Spot;
                var middle = said.PickupMetres ?? ShareOf(PickupSeats.Of(name) ?? PickupSeat.Middle) * scale;
                var beside = (((coils.Length - 1) / 2.0) - i) * CoilSpacing;
                return new CoilSpot(
                    coil,
                    said.CoilMetres ?? middle + beside,
                    said.ApertureMetres ?? UsualAperture,
                    (said.CoilMetres ?? said.PickupMetres) is null,
                    said.ApertureMetres is null
                );
            }
        );

    /// <summary>
    /// Where a pickup sits, as a share of the scale; one that does not say it is taken for the middle's. The neck's is where the
    /// string's second octave is, a quarter from the bridge. Common practice, from memory.
    /// </summary>
    private static double ShareOf(PickupSeat seat) =>
        seat switch
        {
            PickupSeat.Neck => 0.25,
            PickupSeat.Bridge => 0.0625,
            _ => 0.155,
        };
}
