namespace WireText.Electrical.Tolerances;

/// <summary>How a run is drawn.</summary>
/// <param name="Count">Instruments, from 1 to <see cref="MostInstruments"/>.</param>
/// <param name="Seed">All of the run follows from it.</param>
/// <param name="IsOneBatch">True where parts of one kind and value are off alike.</param>
public sealed record RunOptions(
    int Count = RunOptions.UsualCount,
    ulong Seed = RunOptions.UsualSeed,
    bool IsOneBatch = false
)
{
    /// <summary>Drawn when nothing is said. Chosen: the 5 % at an end are then 50 instruments.</summary>
    public const int UsualCount = 1_000;

    /// <summary>Taken when nothing is said. Chosen; no meaning.</summary>
    public const ulong UsualSeed = 1;

    /// <summary>Instruments of one run. Chosen.</summary>
    public const int MostInstruments = 100_000;
}
