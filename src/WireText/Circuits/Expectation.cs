using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Circuits;

/// <summary>What the author says must be true in a state: an <c>expect</c> line.</summary>
/// <param name="State">What is meant, with the controls and dials that the line names, as written; any where each position is meant.</param>
public sealed record Expectation(State State, ImmutableArray<Claim> Claims, SourceLocation DeclaredAt)
{
    /// <summary>The part of the jack that it is true of; null in a circuit without an output jack.</summary>
    public int? Jack { get; init; }
}

/// <summary>One thing that must be true.</summary>
/// <param name="DeclaredAt">The claim's own text.</param>
public abstract record Claim(SourceLocation DeclaredAt)
{
    /// <summary>As written.</summary>
    public string Text => DeclaredAt.Text;

    /// <summary>
    /// Of how many instruments of a run it must be true, as a share of them above 0 and up to 1; null where it is meant of the one with every
    /// value as written. Only a claim of a value has one.
    /// </summary>
    public double? Share { get; init; }
}

/// <summary>Nothing is heard and nothing hums.</summary>
public sealed record SilenceClaim(SourceLocation DeclaredAt) : Claim(DeclaredAt);

/// <summary>Nothing hangs on the jack.</summary>
public sealed record OpenClaim(SourceLocation DeclaredAt) : Claim(DeclaredAt);

/// <summary>Nothing is heard, and nothing holds the jack.</summary>
public sealed record DeadClaim(SourceLocation DeclaredAt) : Claim(DeclaredAt);

public sealed record HumCancellingClaim(SourceLocation DeclaredAt) : Claim(DeclaredAt);

/// <summary>Every battery is drawn from, or none is.</summary>
public sealed record BatteryClaim(bool IsOn, SourceLocation DeclaredAt) : Claim(DeclaredAt);

/// <param name="Tolerance">As a fraction: 0.03 is ±3 %.</param>
public sealed record ReadsClaim(double Ohms, double Tolerance, SourceLocation DeclaredAt) : Claim(DeclaredAt)
{
    public bool Allows(double ohms) => Math.Abs(ohms - Ohms) <= Tolerance * Ohms;
}

/// <param name="Tolerance">As a fraction: 0.03 is ±3 %.</param>
public sealed record ResonatesClaim(double Hertz, double Tolerance, SourceLocation DeclaredAt) : Claim(DeclaredAt)
{
    public bool Allows(double hertz) => Math.Abs(hertz - Hertz) <= Tolerance * Hertz;
}

/// <summary>A level against the same positions with all dials at rest.</summary>
/// <param name="Tolerance">In dB.</param>
public sealed record LevelClaim(double Decibels, double Tolerance, SourceLocation DeclaredAt) : Claim(DeclaredAt)
{
    public bool Allows(double decibels) => Math.Abs(decibels - Decibels) <= Tolerance;
}

/// <summary>The level of all coils at one frequency, against the EMF of one coil: a point of the response.</summary>
/// <param name="Tolerance">In dB.</param>
public sealed record LevelAtClaim(double Decibels, double Hertz, double Tolerance, SourceLocation DeclaredAt)
    : Claim(DeclaredAt)
{
    public bool Allows(double decibels) => Math.Abs(decibels - Decibels) <= Tolerance;
}

/// <summary>Exactly these coils are heard, joined like this.</summary>
public sealed record CoilsClaim(ClaimedCoils Coils, SourceLocation DeclaredAt) : Claim(DeclaredAt);

/// <param name="Through">The parts that all of it is heard through, as indices into <see cref="Circuit.Parts"/>.</param>
/// <param name="IsReversed">True when the string signal of all of it is turned round.</param>
public abstract record ClaimedCoils(ImmutableArray<int> Through, bool IsReversed)
{
    /// <summary>Every coil that is named, as indices into <see cref="Circuit.Elements"/>.</summary>
    public abstract IEnumerable<int> All();
}

/// <param name="Coils">Indices into <see cref="Circuit.Elements"/>: one coil, or all of a pickup, which means them in series.</param>
public sealed record ClaimedPickup(ImmutableArray<int> Coils, ImmutableArray<int> Through, bool IsReversed)
    : ClaimedCoils(Through, IsReversed)
{
    public override IEnumerable<int> All() => Coils;
}

public sealed record ClaimedJoin(
    bool IsSeries,
    ImmutableArray<ClaimedCoils> Parts,
    ImmutableArray<int> Through,
    bool IsReversed
) : ClaimedCoils(Through, IsReversed)
{
    public override IEnumerable<int> All() => Parts.SelectMany(part => part.All());
}
