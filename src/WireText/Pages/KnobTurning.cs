namespace WireText.Pages;

/// <summary>How the knobs of a page turn: what was worked out for it.</summary>
public enum KnobTurning
{
    /// <summary>Each to each mark from 0 to 10, wherever the others stand.</summary>
    ByOne,

    /// <summary>Each to each second mark, wherever the others stand.</summary>
    ByTwo,

    /// <summary>Each to each mark, the others at rest.</summary>
    Alone,

    /// <summary>None: all at rest.</summary>
    None,
}
