namespace WireText.Electrical.Positions;

/// <summary>What the levels of a table are told against: where they are 0 dB.</summary>
public enum LevelReference
{
    /// <summary>The loudest row of the table: what a switch changes is seen at once.</summary>
    LoudestRow,

    /// <summary>What the strings induce in one coil, as in the response: the same in every table, so that two can be compared.</summary>
    OneCoil,
}
