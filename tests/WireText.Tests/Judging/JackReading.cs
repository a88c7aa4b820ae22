using System.Collections.Immutable;
using System.Numerics;

namespace WireText.Tests.Judging;

/// <summary>What the jack gives at one frequency.</summary>
/// <param name="Volts">For each coil, the voltage from tip to sleeve for 1 V in that coil, plus at its finish.</param>
/// <param name="Strays">
/// For each coil, the same for 1 A of stray field into its start: what an antenna gives. 0 where it cannot flow back to the
/// sleeve.
/// </param>
/// <param name="Ohms">The impedance between tip and sleeve, with what hangs on the jack.</param>
internal sealed record JackReading(ImmutableArray<Complex> Volts, ImmutableArray<Complex> Strays, Complex Ohms);
