using WireText.Parts;

namespace WireText.Matching;

/// <summary>A measured part in a bin. SI units.</summary>
/// <param name="Name">What is written on it, unlike every other of the bin.</param>
/// <param name="Kind">What it is, such as <see cref="PartKinds.Pot"/>; or the name of the part of the circuit that it is kept for.</param>
/// <param name="Value">Ohms of a pot, a resistor or a pickup with its coils in series; farads of a capacitor; henries of a choke.</param>
/// <param name="Henries">Of a pickup with its coils in series; null where it was not measured.</param>
/// <param name="Farads">Of a pickup, likewise.</param>
/// <param name="Line">Where it stands in the file, from 1.</param>
public sealed record BinPart(string Name, string Kind, double Value, double? Henries, double? Farads, int Line);
