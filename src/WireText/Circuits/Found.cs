using System.Collections.Immutable;
using WireText.Text;

namespace WireText.Circuits;

/// <summary>What was measured or heard at the bench: a <c>found</c> line.</summary>
/// <param name="What">In the order written; empty where the line tells the instrument's past.</param>
public sealed record Found(FoundPlace At, ImmutableArray<FoundFact> What, SourceLocation DeclaredAt)
{
    /// <summary>What stands before the colon, as written.</summary>
    public required string Where { get; init; }
}

/// <summary>Where something was found.</summary>
public abstract record FoundPlace;

/// <summary>What is known of the instrument's past.</summary>
/// <param name="Worked">True where it used to work; false where it was just wired.</param>
public sealed record FoundPast(bool Worked) : FoundPlace;

/// <summary>At the plug of a lead.</summary>
/// <param name="Jack">The part of the jack; null in a circuit without one.</param>
/// <param name="Turning">The dial that was turned from end to end; null where none was.</param>
public sealed record FoundAtPlug(int? Jack, State State, int? Turning) : FoundPlace;

/// <summary>From the plug's sleeve to bare metal outside.</summary>
/// <param name="Metal">Index into <see cref="Circuit.Lugs"/>.</param>
public sealed record FoundAtMetal(State State, int Metal) : FoundPlace;

/// <summary>Between two lugs of the open instrument, dials at 5 where the line says nothing else.</summary>
public sealed record FoundBetween(State State, int From, int To) : FoundPlace;

/// <summary>Across the joint of a run of wire on a lug.</summary>
/// <param name="Wire">A stretch of the run that ends on the lug, as an index into <see cref="Circuit.Wires"/>.</param>
public sealed record FoundAtJoint(int Lug, int Wire) : FoundPlace;

/// <summary>One element by itself, an end of it lifted.</summary>
public sealed record FoundAlone(int Element) : FoundPlace;

/// <summary>The lead alone, out of the jack.</summary>
public sealed record FoundAtLead : FoundPlace;

public sealed record FoundAtCell(int Element) : FoundPlace;

/// <summary>What was found there.</summary>
public abstract record FoundFact
{
    /// <summary>As written.</summary>
    public required string Text { get; init; }
}

/// <param name="Ohms">What the meter showed; infinite where it showed nothing.</param>
/// <param name="Step">One of its last digit, in ohms.</param>
public sealed record FoundReading(double Ohms, double Step) : FoundFact;

/// <param name="Coils">Those that sounded when they were tapped, as indices into <see cref="Circuit.Elements"/>.</param>
public sealed record FoundCoils(ImmutableArray<int> Coils) : FoundFact;

public sealed record FoundVolts(double Volts) : FoundFact;

public sealed record FoundWord(FoundSign Sign) : FoundFact;

/// <summary>What an ear tells, and what a part alone is.</summary>
public enum FoundSign
{
    /// <summary>Nothing is heard, and nothing hums.</summary>
    Silence,

    /// <summary>Nothing is heard, and it hums.</summary>
    Dead,

    Thin,
    Full,
    Hums,
    Quiet,
    Dark,
    Bright,
    Weak,

    /// <summary>Until the strings are touched.</summary>
    Buzzes,

    Good,
    Open,
    Shorted,
    Leaky,
}
