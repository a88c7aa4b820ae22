using WireText.Listening;

namespace WireText.Cli.Commands;

/// <summary>What <c>listen</c> was asked for.</summary>
/// <param name="At">The states; empty for those of the views or the one at rest.</param>
/// <param name="HasViews">True for every position.</param>
/// <param name="Recording">What is sent through the circuit; null for strings.</param>
/// <param name="Rate">Samples a second.</param>
/// <param name="Bits">Of a sample.</param>
/// <param name="PeakDecibels">The highest sample, below the most that a file can hold.</param>
/// <param name="PluckMetres">From the bridge; null where nobody said.</param>
internal sealed record ListenRequest(
    string Target,
    IReadOnlyList<string> At,
    IReadOnlyList<string> Sweeps,
    IReadOnlyList<string> WhatIf,
    bool HasViews,
    Recording? Recording,
    int Rate,
    int Bits,
    double PeakDecibels,
    double? PluckMetres
);
