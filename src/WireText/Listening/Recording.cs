namespace WireText.Listening;

/// <summary>Sound as numbers: one channel.</summary>
/// <param name="Rate">Samples a second.</param>
/// <param name="Samples">1 is the most that a file can hold.</param>
public sealed record Recording(int Rate, ReadOnlyMemory<double> Samples);
