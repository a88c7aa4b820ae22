using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>What a diagnosis came to.</summary>
public enum DiagnosisEnd
{
    /// <summary>Nothing was found yet.</summary>
    NothingFound,

    /// <summary>One fault has nearly all of the share.</summary>
    OneFault,

    /// <summary>Several faults have it that no measurement tells apart.</summary>
    OneGroup,

    /// <summary>Nothing is wrong within tolerance, as far as was measured.</summary>
    NothingWrong,

    /// <summary>No single fault explains what was found; two at once do.</summary>
    Pairs,

    /// <summary>Nothing of the list explains what was found.</summary>
    Outside,

    /// <summary>Several remain, and something tells them apart.</summary>
    GoOn,

    /// <summary>Several remain, and nothing cheap tells them apart.</summary>
    Several,
}

/// <summary>What is wrong with an instrument, as far as what was found tells.</summary>
/// <param name="Findings">Facts that were taken in.</param>
/// <param name="FaultsTried">Single faults, each at all of its sizes.</param>
/// <param name="Explanations">By their share, the largest first; those that together have less than 0.5 % are left out.</param>
/// <param name="Next">What to measure next; null where nothing more is to be told apart.</param>
/// <param name="Pairs">Two faults at once, where no single one explains what was found.</param>
/// <param name="Assumed">Coils whose resistance nobody gave.</param>
/// <param name="Work">Networks that were solved.</param>
public sealed record Diagnosis(
    Circuit Circuit,
    int Findings,
    int FaultsTried,
    DiagnosisEnd End,
    ImmutableArray<Explanation> Explanations,
    NextMeasurement? Next,
    ImmutableArray<Explanation> Pairs,
    ImmutableArray<string> Assumed,
    int Work
);

public enum ExplanationKind
{
    Fault,
    NothingWrong,
    Outside,
}

/// <summary>Faults that nothing which can be measured tells apart, and what of the findings speaks against them.</summary>
/// <param name="Share">From 0 to 1.</param>
/// <param name="Words">What is wrong, one line a fault; two where both are wrong at once.</param>
/// <param name="Faults">The same, as indices into the list of faults.</param>
public sealed record Explanation(
    ExplanationKind Kind,
    double Share,
    ImmutableArray<string> Words,
    ImmutableArray<Fault> Faults,
    ImmutableArray<Misfit> Misfits
);

/// <summary>A finding that a slip of the probe explains better.</summary>
/// <param name="Where">As written.</param>
/// <param name="Would">What it would show.</param>
/// <param name="Found">What was found.</param>
public sealed record Misfit(string Where, string Would, string Found);

/// <summary>What to measure next.</summary>
/// <param name="Place">Where.</param>
/// <param name="IsByEar">True where somebody listens.</param>
/// <param name="Where">As a <c>found</c> line has it.</param>
/// <param name="IsInside">True where the cavity must be open.</param>
/// <param name="Outcomes">What may be found, with the explanations that it leaves, numbered from 1.</param>
public sealed record NextMeasurement(
    FoundPlace Place,
    bool IsByEar,
    string Where,
    bool IsInside,
    ImmutableArray<NextOutcome> Outcomes
);

/// <param name="Text">As a <c>found</c> line has it.</param>
/// <param name="Leaves">Places in the explanations, from 1.</param>
public sealed record NextOutcome(string Text, ImmutableArray<int> Leaves);
