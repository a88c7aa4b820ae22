namespace WireText.Measuring;

/// <summary>What no drawing may have.</summary>
public enum FaultKind
{
    /// <summary>A wire that the circuit asks for and the picture does not show, or shows without a path.</summary>
    MissingWire,

    /// <summary>A wire that the picture shows and the circuit does not ask for, or shows more than once.</summary>
    ExtraWire,

    /// <summary>A wire whose path does not end on the lugs or surfaces that it should join.</summary>
    WrongEnd,

    /// <summary>Wires that run on one another: over 0.6 pitch of length, parallel and less than 0.15 pitch apart.</summary>
    Overlap,

    /// <summary>Wires that run over 0.6 pitch less than 0.5 pitch apart, away from their crossings, and do not overlap.</summary>
    Crowding,

    /// <summary>A wire and the part inside whose outline it runs over 0.4 pitch. The way to its own inner lug or surface is excused.</summary>
    ThroughBody,

    /// <summary>A wire and a lug that is not its end, less than 0.7 pitch from the wire's centre line.</summary>
    FalseJoint,

    /// <summary>Any two of label, body that is not its own, lug, other wire and hop that lie on one another.</summary>
    LabelOverlap,

    /// <summary>A wire's tag that does not touch its own wire.</summary>
    StrayTag,

    /// <summary>A text, part or wire that is not wholly on the page.</summary>
    OutsidePage,

    /// <summary>A wire with a hop less than 1.3 pitch from one of its own corners; once for each.</summary>
    CrampedHop,
}
