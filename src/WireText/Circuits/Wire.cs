using System.Collections.Immutable;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Circuits;

public enum WireKind
{
    /// <summary>A piece of hook-up wire, or a pickup's own coloured lead.</summary>
    Wire,

    /// <summary>A core of a cable.</summary>
    Core,

    /// <summary>The braid round the cores of a cable.</summary>
    Braid,

    /// <summary>The bare lead of a two-lead part that hangs by its own leads.</summary>
    PartLead,

    /// <summary>A lead twisted into a splice; its colour is not stated.</summary>
    SpliceLead,
}

/// <summary>One stretch of conductor from a lug to the next. A run that passes a lug is several of these.</summary>
/// <param name="Index">Its place in <see cref="Circuit.Wires"/>.</param>
/// <param name="Id">Unique and stable under the order of the lines: <c>neck.hot--sel.A1</c>, with <c>~2</c> when repeated.</param>
/// <param name="From">Index into <see cref="Circuit.Lugs"/>; -1 for the end of a braid that is cut back.</param>
/// <param name="To">Index into <see cref="Circuit.Lugs"/>; -1 for the end of a braid that is cut back.</param>
/// <param name="Colour">Null when the source does not say (a lead in a splice).</param>
/// <param name="Run">Stretches of one <c>wire</c> line share this number.</param>
/// <param name="Cable">Index into <see cref="Circuit.Cables"/>, or null.</param>
/// <param name="LengthMetres">As stated, or null.</param>
public sealed record Wire(
    int Index,
    string Id,
    WireKind Kind,
    int From,
    int To,
    InsulationColour? Colour,
    int Run,
    int? Cable,
    bool IsSleeved,
    double? LengthMetres,
    double? Gauge,
    SourceLocation DeclaredAt
)
{
    /// <summary>Where the line names the lug at its start; null for the part's own end of a part's lead and where a braid is cut back.</summary>
    public SourceLocation? FromAt { get; init; }

    /// <summary>Where the line names the lug at its end; null for the joint's end of a lead in a splice and where a braid is cut back.</summary>
    public SourceLocation? ToAt { get; init; }

    public bool Touches(int lug) => From == lug || To == lug;

    /// <summary>Where the line names a lug that the wire ends on, its start first; null where it does not.</summary>
    public SourceLocation? PlaceOf(int lug) => (From == lug ? FromAt : null) ?? (To == lug ? ToAt : null);
}

/// <summary>Cores that run together, in a braid or twisted.</summary>
/// <param name="Cores">Indices into <see cref="Circuit.Wires"/>.</param>
/// <param name="Braid">Index into <see cref="Circuit.Wires"/>; null when the cores are only twisted.</param>
public sealed record Cable(int Index, ImmutableArray<int> Cores, int? Braid, bool IsTwisted, SourceLocation DeclaredAt);

public enum JoinKind
{
    Wire,
    Splice,

    /// <summary>Metal that is one inside the part, by its definition.</summary>
    Joined,

    /// <summary>Metal pressed on metal without solder: joined, but not trusted as an only ground.</summary>
    Touch,
}

/// <summary>Why two lugs are one net; kept for blame and for mends.</summary>
/// <param name="Wire">Index into <see cref="Circuit.Wires"/>, or -1 when no wire does it.</param>
public sealed record Join(int Index, JoinKind Kind, int From, int To, int Wire, SourceLocation DeclaredAt);
