using System.Collections.Immutable;
using WireText.Parts;
using WireText.Text;

namespace WireText.Circuits;

/// <summary>Something the technician buys, mounts or makes in the circuit: a pickup, a pot, a splice, bare metal.</summary>
/// <param name="Index">Its place in <see cref="Circuit.Parts"/>: the order of declaration.</param>
/// <param name="Name">As written.</param>
/// <param name="Lugs">Indices into <see cref="Circuit.Lugs"/>, in the order of the definition's terminals.</param>
/// <param name="Controls">Indices into <see cref="Circuit.Controls"/>.</param>
/// <param name="Dials">Indices into <see cref="Circuit.Dials"/>.</param>
/// <param name="Elements">Indices into <see cref="Circuit.Elements"/>.</param>
/// <param name="ValueLabel">The value as the drawing shows it, such as <c>250k</c> or <c>47n</c>; null when it has none.</param>
/// <param name="TaperLabel">The taper's name or null.</param>
/// <param name="Traits">Words such as <c>film</c>, <c>paper-in-oil</c>, <c>heat-sensitive</c>, <c>turns-back</c>.</param>
/// <param name="HangsOn">The two lugs that a two-lead part written <c>from … to …</c> is soldered to by its own leads.</param>
/// <param name="NameAt">Where its name was declared.</param>
public sealed record Part(
    int Index,
    string Name,
    PartDefinition Definition,
    ImmutableArray<int> Lugs,
    ImmutableArray<int> Controls,
    ImmutableArray<int> Dials,
    ImmutableArray<int> Elements,
    string? ValueLabel,
    string? TaperLabel,
    ImmutableArray<string> Traits,
    (int First, int Second)? HangsOn,
    string? Remark,
    SourceLocation NameAt
)
{
    /// <summary>The word for a part that heat harms.</summary>
    public const string HeatSensitive = "heat-sensitive";

    public string Kind => Definition.Kind;

    /// <summary>What is drilled for it, in its own frame; none where nothing is, or nothing is known.</summary>
    public ImmutableArray<PartHole> Holes { get; init; } = [];

    public HoleSource HolesFrom { get; init; }

    /// <summary>The word for a capacitor whose wax ends fall off when it gets hot. Common practice.</summary>
    public const string PaperInOil = "paper-in-oil";

    public const string Film = "film";

    public const string Ceramic = "ceramic";

    /// <summary>The word for a capacitor with a plus and a minus, its first lug and its second.</summary>
    public const string Electrolytic = "electrolytic";

    public bool IsHeatSensitive => HasTrait(HeatSensitive) || HasTrait(PaperInOil);

    public bool HasTrait(string trait) => Traits.Contains(trait, StringComparer.Ordinal);
}

/// <summary>Who says what is drilled for a part.</summary>
public enum HoleSource
{
    /// <summary>A part of this kind sits in no hole.</summary>
    Nobody,

    /// <summary>It sits in one, and neither its definition nor its line says how large that is.</summary>
    Unknown,

    Definition,

    /// <summary>The part's own line, by <c>hole=</c>.</summary>
    Line,
}

/// <summary>A lug, a lead, or a point inside a part: where joints are made and elements end.</summary>
/// <param name="Index">Its place in <see cref="Circuit.Lugs"/>.</param>
/// <param name="Part">The index of its part.</param>
/// <param name="Name">The full name, <c>sel.A1</c>; the part's own name when the part has one lug.</param>
public sealed record Lug(int Index, int Part, string Name, Terminal Terminal)
{
    public bool IsLead => Terminal.Kind == TerminalKind.Lead;

    public bool IsInner => Terminal.Kind == TerminalKind.Inner;

    public bool IsMetal => Terminal.IsMetal;
}

/// <summary>Something with positions: a switch, a pull, a button, the plug in a jack.</summary>
/// <param name="Name"><c>sel</c>, <c>vol.pull</c>, <c>out</c>.</param>
/// <param name="Rest">The index of the position that it rests in.</param>
public sealed record Control(
    int Index,
    string Name,
    int Part,
    ImmutableArray<Position> Positions,
    int Rest,
    SwitchOver Between,
    bool IsEndless
)
{
    /// <summary>True for the plug in a jack: everything is computed with it in, unless a definition says otherwise.</summary>
    public bool IsPlug { get; init; }

    /// <summary>True when a <c>rest</c> line says by name where it rests.</summary>
    public bool IsRestNamed { get; init; }

    /// <summary>Where its positions were named, when they were.</summary>
    public SourceLocation? NamedAt { get; init; }
}

/// <summary>One position: the user's word for it (or the part's own), and the lugs that it joins.</summary>
/// <param name="Closed">Groups of indices into <see cref="Circuit.Lugs"/>.</param>
public sealed record Position(string Name, ImmutableArray<ImmutableArray<int>> Closed);

/// <summary>Something that turns from 0 to 10.</summary>
public sealed record Dial(int Index, string Name, int Part, double Rest)
{
    /// <summary>Where dials rest when nothing else is said.</summary>
    public const double FullyUp = 10;
}
