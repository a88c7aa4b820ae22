namespace WireText.Electrical.Sound;

/// <summary>What the jack gives in a state.</summary>
public enum Outcome
{
    /// <summary>An amplifier feeds its own input, or the network is too large.</summary>
    NotComputed,

    /// <summary>Tip and sleeve are one node.</summary>
    Short,

    /// <summary>Nothing joins tip and sleeve: the jack floats.</summary>
    Open,

    /// <summary>No string is heard, and the jack is held low enough not to hum.</summary>
    Quiet,

    /// <summary>No string is heard, and the jack is not held: it hums.</summary>
    Dead,

    /// <summary>A string is heard.</summary>
    Sound,
}

public static class Outcomes
{
    /// <summary>True for what <c>silence</c> claims: nothing is heard and nothing hums.</summary>
    public static bool IsSilence(this Outcome outcome) => outcome is Outcome.Short or Outcome.Quiet;
}
