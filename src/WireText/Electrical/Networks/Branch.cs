namespace WireText.Electrical.Networks;

/// <summary>What an edge of the network is: an element, a section of a track, or one side of an amplifier.</summary>
public enum BranchKind
{
    Coil,

    /// <summary>The section of a track between its low end and its wiper.</summary>
    TrackLow,

    /// <summary>The section of a track between its wiper and its high end.</summary>
    TrackHigh,

    Resistor,
    Capacitor,
    Inductor,
    Battery,

    /// <summary>The input impedance of an amplifier, from input to common.</summary>
    AmplifierInput,

    /// <summary>The driven output of an amplifier, from output to common.</summary>
    AmplifierOutput,
}

/// <summary>An element between two nets; a track makes two of these, and so does an amplifier.</summary>
/// <param name="Index">Its place in <see cref="Network.Branches"/>.</param>
/// <param name="Element">Its place in <see cref="Circuits.Circuit.Elements"/>.</param>
/// <param name="From">A net: a coil's start, a track section's lower end, a battery's plus.</param>
/// <param name="To">A net: a coil's finish, a track section's upper end, a battery's minus.</param>
public readonly record struct Branch(int Index, int Element, BranchKind Kind, int From, int To);
