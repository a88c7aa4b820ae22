namespace WireText.Measuring;

/// <summary>What is right on a drawing and can still be read wrongly, or not at all.</summary>
public enum DoubtKind
{
    /// <summary>A lug on which a wire ends and beside which no name stands. The two leads of a capacitor, resistor or inductor that has neither named need none.</summary>
    UnnamedLug,

    /// <summary>The name of a lug, and another lug or a joint on a case to which it is as near as to its own, within 0.4 mm.</summary>
    NameNearAnother,

    /// <summary>The name of a lug and a wire of another lug that runs between the two.</summary>
    NameBehindAWire,

    /// <summary>A lug whose name stands on another side of it than most names in its row do.</summary>
    NameOutOfRow,

    /// <summary>The name of a part beside its body, and a wire of other parts that runs between the two.</summary>
    PartNameApart,

    /// <summary>The name of a lug and a joint on a case less than 3 mm from it.</summary>
    JointNearName,

    /// <summary>A wire that is crossed less than 3 mm along from its end; once for each such end.</summary>
    ShortEnd,

    /// <summary>The own lead of a small part, longer than 35 mm.</summary>
    LongLead,

    /// <summary>A text that does not end: it has an ellipsis in place of the rest.</summary>
    CutText,
}
