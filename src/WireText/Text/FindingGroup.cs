namespace WireText.Text;

/// <summary>What a finding is about; the table of checks is ordered by it.</summary>
public enum FindingGroup
{
    /// <summary>The line itself: words, names, values. These come from reading, not from checks.</summary>
    Text,

    Connections,
    Grounding,
    Switching,
    Sound,

    /// <summary>Batteries and what they feed.</summary>
    Supply,

    Values,
    Building,
    Beliefs,
}
