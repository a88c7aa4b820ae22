using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary>What checking one file came to.</summary>
internal abstract record FileOutcome;

/// <param name="Mended">How many findings were mended in it.</param>
/// <param name="IsUnpinned">True for a circuit that works and that nothing in its file holds to what it does.</param>
internal sealed record FileChecked(CheckedFile File, int Mended, bool IsUnpinned) : FileOutcome;

/// <summary>It could not be done.</summary>
internal sealed record FileRefused(string Problem) : FileOutcome;
