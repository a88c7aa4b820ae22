namespace WireText.Electrical.Sound;

/// <summary>
/// Counts the different live parts that a search looks at, so that no input can keep it busy. What was solved before counts as
/// well: the same search ends at the same place whatever else was asked.
/// </summary>
internal sealed class SolveBudget
{
    /// <summary>Live parts before nothing more is told. Chosen: a second or two.</summary>
    public const int Limit = 8_192;

    private readonly HashSet<JackSound> met = new(ReferenceEqualityComparer.Instance);

    public bool IsSpent => met.Count > Limit;

    /// <summary>The sound itself, counted.</summary>
    public JackSound Count(JackSound sound)
    {
        met.Add(sound);
        return sound;
    }
}
