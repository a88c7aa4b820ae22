using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Building;

/// <summary>One thing to do and to tick.</summary>
public abstract record WorkStep(WorkPhase Phase)
{
    /// <summary>A wire comes off at both of its ends.</summary>
    /// <param name="Before">The circuit as it was, which <paramref name="Wire"/> is an index into.</param>
    public sealed record Lift(Circuit Before, int Wire) : WorkStep(WorkPhase.Lifting);

    /// <summary>A part comes out.</summary>
    /// <param name="Before">The circuit as it was, which <paramref name="Part"/> is an index into.</param>
    public sealed record Remove(Circuit Before, int Part) : WorkStep(WorkPhase.Lifting);

    /// <summary>A part is fixed in its place.</summary>
    public sealed record Mount(int Part) : WorkStep(WorkPhase.Mounting);

    /// <summary>A run, a cable or a part by its leads is hooked on at all of its ends, and not soldered yet.</summary>
    /// <param name="Wires">Its stretches: indices into <see cref="Circuit.Wires"/>.</param>
    public sealed record Lay(WorkPhase Phase, ImmutableArray<int> Wires) : WorkStep(Phase);

    /// <summary>A joint is made: all that belongs into it lies there.</summary>
    public sealed record Solder(WorkPhase Phase, Joint Joint) : WorkStep(Phase);
}
