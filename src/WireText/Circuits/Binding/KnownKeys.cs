using WireText.Parts;

namespace WireText.Circuits.Binding;

/// <summary>The keys that the line of a part may have.</summary>
internal static class KnownKeys
{
    /// <summary>What a meter read of this very part.</summary>
    public const string Measured = "measured";

    private static readonly string[] CoilKeys =
    [
        "dcr",
        "l",
        "c",
        "eddy",
        "turns",
        "awg",
        "turn-length",
        "wind",
        "magnet",
        "at",
        "aperture",
        "tol",
    ];

    private static readonly string[] TrackKeys = ["value", "taper", "tol", Measured];

    /// <summary>The keys of each section, then those of the whole part.</summary>
    public static IEnumerable<string> Of(PartDefinition definition)
    {
        var coils = definition.Insides.OfType<Inside.CoilInside>().ToList();
        foreach (var coil in coils.Where(c => c.Name is not null))
        {
            foreach (var key in CoilKeys)
            {
                yield return $"{coil.Name}.{key}";
            }
        }

        var tracks = definition.Insides.OfType<Inside.TrackInside>().ToList();
        foreach (var track in tracks.Where(t => t.Name is not null))
        {
            foreach (var key in TrackKeys)
            {
                yield return $"{track.Name}.{key}";
            }
        }

        string[] plain =
        [
            .. coils.Count > 0 ? CoilKeys : [],
            .. tracks.Count > 0 ? TrackKeys : [],
            .. definition.Insides.Any(IsOpenTwoLead) ? ["value", "tol"] : Array.Empty<string>(),
            .. definition.Insides.Any(i =>
                i is Inside.CapacitorInside { Farads: null } or Inside.ResistorInside { Ohms: null }
            )
                ? ["code"]
                : Array.Empty<string>(),
            .. definition.Insides.Any(i => IsOpenTwoLead(i) && i is not Inside.BatteryInside)
                ? [Measured]
                : Array.Empty<string>(),
            .. definition.Insides.Any(i => i is Inside.InductorInside) ? ["dcr"] : Array.Empty<string>(),
            .. PartKinds.MayHaveAHole(definition.Kind) ? [HoleBinder.Key] : Array.Empty<string>(),
        ];
        foreach (var key in plain.Distinct(StringComparer.Ordinal))
        {
            yield return key;
        }
    }

    private static bool IsOpenTwoLead(Inside inside) =>
        inside
            is Inside.ResistorInside { Ohms: null }
                or Inside.CapacitorInside { Farads: null }
                or Inside.InductorInside { Henries: null }
                or Inside.BatteryInside { Volts: null };
}
