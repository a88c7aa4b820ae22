namespace WireText.Building;

/// <summary>The parts of the work, in the order in which they are done.</summary>
public enum WorkPhase
{
    /// <summary>Of a change: what has to come off first.</summary>
    Lifting,

    /// <summary>Parts are screwed in before anything hangs on them.</summary>
    Mounting,

    /// <summary>From lug to lug of one part, while there is room for the iron.</summary>
    Jumpers,

    /// <summary>A case takes the most heat: before anything lies near that could melt.</summary>
    CaseGrounds,

    /// <summary>The selector has the most lugs in the least room.</summary>
    Selector,

    /// <summary>All other hook-up wire.</summary>
    Wires,

    /// <summary>Leads and cables of pickups and batteries, and splices: they hang in the way of all else.</summary>
    Leads,

    /// <summary>Parts that hang by their own leads.</summary>
    HangingParts,

    /// <summary>What heat harms: last, and never heated again.</summary>
    HeatSensitive,
}
