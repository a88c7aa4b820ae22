using System.Collections.Immutable;

namespace WireText.Electrical.Faults;

/// <summary>How often one instance of a fault is met, against others: no unit.</summary>
/// <param name="Key">The name that settings know it by.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Fresh">On an instrument that was just wired.</param>
/// <param name="Worked">On one that used to work.</param>
/// <param name="Instances">What has one each.</param>
/// <param name="Why">Where the figure comes from: common practice at the bench, or memory.</param>
public sealed record FaultWeight(
    FaultKind Kind,
    string Key,
    string Title,
    double Fresh,
    double Worked,
    string Instances,
    string Why
)
{
    /// <summary>The weight where nothing is known of the past: the geometric mean.</summary>
    public double Unknown => Math.Sqrt(Fresh * Worked);

    /// <param name="worked">Null where nothing is known of the past.</param>
    public double After(bool? worked) =>
        worked switch
        {
            null => Unknown,
            true => Worked,
            false => Fresh,
        };
}

/// <summary>The weights of all kinds of fault. None comes from counted repairs: a shop's own counts should take their place.</summary>
/// <param name="All">One of each kind, in the order of the kinds.</param>
public sealed record FaultWeights(ImmutableArray<FaultWeight> All)
{
    private const string Practice = "common practice";
    private const string Memory = "from memory";

    public static FaultWeights Usual { get; } =
        new([
            new(FaultKind.Joint, "joint", "joint cold or broken", 1, 1, "each joint", Practice),
            new(
                FaultKind.JointOnCase,
                "joint-on-case",
                "joint on a case cold or broken",
                2.5,
                1.5,
                "each joint on a case",
                Practice + ": the case draws the heat away"
            ),
            new(
                FaultKind.Touch,
                "touch",
                "metal does not touch",
                2,
                2,
                "each touch",
                Practice + ": it loosens, tarnishes"
            ),
            new(FaultKind.CoilOpen, "coil-open", "coil open", 0.7, 2, "each coil", Memory + ": fine wire at the lead"),
            new(FaultKind.CoilShorted, "coil-shorted", "coil shorted", 0.2, 0.2, "each coil", Memory),
            new(FaultKind.ShortedTurns, "shorted-turns", "turns shorted, 10 to 60 %", 0.4, 0.7, "each coil", Memory),
            new(
                FaultKind.CoilTurned,
                "coil-turned",
                "start and finish exchanged",
                2,
                0.02,
                "each coil",
                Practice + ": cannot happen by itself"
            ),
            new(
                FaultKind.LeadsExchanged,
                "leads-exchanged",
                "other leads of a pickup exchanged",
                0.8,
                0.02,
                "each two leads",
                Practice
            ),
            new(FaultKind.Bridge, "bridge", "solder bridge", 0.5, 0.1, "lugs side by side", Practice),
            new(
                FaultKind.WireBeside,
                "wire-beside",
                "wire on the neighbouring lug",
                1,
                0.02,
                "each joint and neighbour",
                Practice + ": counted from the wrong end"
            ),
            new(
                FaultKind.WiresExchanged,
                "wires-exchanged",
                "two wires on each other's lug",
                0.8,
                0.02,
                "each such two",
                Practice
            ),
            new(
                FaultKind.CapacitorShorted,
                "capacitor-shorted",
                "capacitor shorted",
                0.1,
                0.3,
                "each capacitor",
                Memory + ": old paper, electrolytic"
            ),
            new(
                FaultKind.CapacitorLeaky,
                "capacitor-leaky",
                "capacitor leaky, 5k to 1M",
                0.1,
                0.3,
                "each capacitor",
                Memory + ": old paper, electrolytic"
            ),
            new(FaultKind.CapacitorOpen, "capacitor-open", "capacitor open", 0.3, 0.5, "each capacitor", Memory),
            new(FaultKind.ResistorOpen, "resistor-open", "resistor or choke open", 0.2, 0.3, "each", Memory),
            new(FaultKind.ResistorShorted, "resistor-shorted", "resistor or choke shorted", 0.1, 0.1, "each", Memory),
            new(FaultKind.ContactOpen, "contact-open", "contact does not close", 0.3, 1.5, "each contact", Practice),
            new(
                FaultKind.ContactDirty,
                "contact-dirty",
                "contact dirty, 18 to 550 Ω",
                0.2,
                1.5,
                "each contact",
                Practice
            ),
            new(FaultKind.ContactStuck, "contact-stuck", "contact never opens", 0.1, 0.1, "each contact", Practice),
            new(
                FaultKind.TrackOpen,
                "track-open",
                "track open at an end",
                0.2,
                0.3,
                "each end of a track",
                Practice + ": burnt rivet"
            ),
            new(FaultKind.WiperOpen, "wiper-open", "wiper open", 0.2, 1, "each track", Practice + ": worn track"),
            new(
                FaultKind.PotValue,
                "pot-value",
                "pot of another value, × 0.3 to 2",
                0.7,
                0.3,
                "each track",
                Practice + ": another pot than the text says"
            ),
            new(FaultKind.PotLaw, "pot-law", "pot of another taper", 0.7, 0.1, "each pot", Practice),
            new(
                FaultKind.LugOnCase,
                "lug-on-case",
                "hot lug on its case or the shielding",
                0.8,
                0.4,
                "each lug of a pot, switch, button or jack that is not on ground",
                Practice + ": tight cavity, bent lug"
            ),
            new(
                FaultKind.TipOnShield,
                "tip-on-shield",
                "tip of the jack on the shielding",
                2,
                1.5,
                "each jack",
                Practice
            ),
            new(
                FaultKind.TipSpring,
                "tip-spring",
                "tip spring does not meet the plug",
                0.7,
                2.5,
                "each jack",
                Practice
            ),
            new(
                FaultKind.SleeveSpring,
                "sleeve-spring",
                "sleeve does not meet the plug",
                0.3,
                0.7,
                "each jack",
                Practice
            ),
            new(FaultKind.RingSpring, "ring-spring", "ring does not meet the plug", 0.7, 1, "each jack", Practice),
            new(FaultKind.JackReversed, "jack-reversed", "tip and sleeve exchanged", 1.5, 0.02, "each jack", Practice),
            new(
                FaultKind.BraidOnCore,
                "braid-on-core",
                "braid on its core",
                1,
                0.3,
                "each core in a braid",
                Practice + ": a whisker of braid"
            ),
            new(FaultKind.BatteryFlat, "battery-flat", "battery flat", 1, 5, "each battery", Practice),
            new(
                FaultKind.LeadOpen,
                "lead-open",
                "lead open",
                1.5,
                1.5,
                "the lead",
                Practice + ": tried before anything is opened"
            ),
            new(FaultKind.LeadShorted, "lead-shorted", "lead shorted", 0.7, 0.7, "the lead", Practice),
        ]);

    /// <summary>The same with other weights for one kind.</summary>
    /// <param name="key">One of the keys.</param>
    public FaultWeights With(string key, double fresh, double worked) =>
        new([.. All.Select(one => one.Key == key ? one with { Fresh = fresh, Worked = worked } : one)]);

    public FaultWeight this[FaultKind kind] => All[(int)kind];
}
