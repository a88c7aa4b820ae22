using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Forms;

public enum FormKind
{
    /// <summary>No string is heard.</summary>
    Nothing,

    SeriesParallel,

    /// <summary>Neither series nor parallel: told by the strength of each coil.</summary>
    Bridge,
}

/// <summary>How the phase of a coil stands to that of the strongest.</summary>
public enum PhaseRelation
{
    InPhase,

    OutOfPhase,

    /// <summary>It is neither over all strings.</summary>
    TurnsWithFrequency,
}

/// <summary>A heard coil of a form.</summary>
/// <param name="Sign">−1 when reversed against the others, else +1.</param>
/// <param name="Decibels">Its strength over the strongest's.</param>
/// <param name="Phase">Against the strongest; in phase for the strongest itself.</param>
public sealed record FormCoil(Coil Coil, int Sign, double Decibels, PhaseRelation Phase);

/// <summary>Which coils are heard and how they are joined.</summary>
public sealed record HeardForm(FormKind Kind)
{
    public static readonly HeardForm Nothing = new(FormKind.Nothing);

    /// <summary>The tree of the heard coils; null for a bridge network and where nothing is heard.</summary>
    public FormNode? Root { get; init; }

    /// <summary>As <see cref="Root"/>, with the coils that have no magnet.</summary>
    public FormNode? RootWithDummies { get; init; }

    /// <summary>The heard coils, in order of declaration.</summary>
    public ImmutableArray<FormCoil> Coils { get; init; } = [];

    /// <summary>Faint coils, in order of declaration; no part of the form.</summary>
    public ImmutableArray<FormCoil> Traces { get; init; } = [];

    /// <summary>What lies across everything and takes of the treble.</summary>
    public ImmutableArray<PlainPart> DarkenedBy { get; init; } = [];
}
