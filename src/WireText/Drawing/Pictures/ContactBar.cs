namespace WireText.Drawing.Pictures;

/// <summary>A contact that can close, as it is drawn: a bar from one lug to another.</summary>
/// <param name="From">Index into <see cref="Circuits.Circuit.Lugs"/>.</param>
/// <param name="To">Index into <see cref="Circuits.Circuit.Lugs"/>.</param>
public readonly record struct ContactBar(int From, int To);
