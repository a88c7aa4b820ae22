namespace WireText.Electrical.Roles;

/// <summary>What turning a dial does to what is heard, the other controls left as they stand.</summary>
public enum DialRole
{
    /// <summary>Nothing that could be measured at the jack.</summary>
    Inert,

    /// <summary>Something, but less than any of the others.</summary>
    Slight,

    /// <summary>Silent at 0, heard at 10.</summary>
    Volume,

    /// <summary>Heard at 0, silent at 10.</summary>
    VolumeBackwards,

    /// <summary>Everything comes through its track, but 0 does not silence it.</summary>
    VolumeThatLeaks,

    /// <summary>Some coil comes up towards 10 while something stays to be heard at 0.</summary>
    Blend,

    /// <summary>Some coil goes down towards 10, none comes up, and something stays to be heard.</summary>
    BlendBackwards,

    /// <summary>Less treble at 0.</summary>
    Tone,

    /// <summary>Less treble at 10.</summary>
    ToneBackwards,

    /// <summary>The level changes and the treble does not; no direction is the usual one.</summary>
    BassCut,
}
