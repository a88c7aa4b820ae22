namespace WireText.Circuits;

/// <summary>Where a value of a coil comes from. What is assumed must never pass for what was measured.</summary>
public enum ValueOrigin
{
    /// <summary>Nothing says it: what is usual for such a pickup was taken.</summary>
    Assumed,

    /// <summary>The part's line says it of this coil.</summary>
    Given,

    /// <summary>The part's line says it of all coils of the pickup together, in series; this coil has an equal share.</summary>
    Shared,

    /// <summary>The definition of the model says it.</summary>
    ByModel,

    /// <summary>Computed from the turns, the gauge and the length of a turn.</summary>
    ByWinding,
}
