namespace WireText.Text;

/// <summary>What mends a finding, as far as the check that found it can tell.</summary>
public enum Remedy
{
    /// <summary>Its help says all that there is to say.</summary>
    Told,

    /// <summary>Something is not joined: a wire is missing or elsewhere, and none is to be taken out.</summary>
    Join,

    /// <summary>Something is joined that should not be, or in the wrong place: no wire is missing.</summary>
    Part,

    /// <summary>The wires of two lugs of one part are exchanged.</summary>
    Exchange,

    /// <summary>One edit or another.</summary>
    Any,

    /// <summary>A part of another value; its help says which. No wire is wrong.</summary>
    Value,
}
