using System.Collections.Immutable;
using WireText.Geometry;
using WireText.Text;

namespace WireText.Circuits;

/// <summary>The connection model: parts, lugs, wires, controls and nets, in the order they were written. No text, no geometry but what the author placed.</summary>
public sealed record Circuit
{
    private readonly NameIndex<Part> parts = new([], part => part.Name);
    private readonly NameIndex<Lug> lugs = new([], lug => lug.Name);

    public string? Title { get; init; }

    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>What the title block says beside the title: whose it is, when, by whom; in the order written.</summary>
    public ImmutableArray<AboutLine> About { get; init; } = [];

    /// <summary>What the instrument's finish is, such as <c>nitrocellulose</c>, or null.</summary>
    public string? Finish { get; init; }

    public ImmutableArray<Part> Parts
    {
        get => parts.Items;
        init => parts = new(value, part => part.Name);
    }

    public ImmutableArray<Lug> Lugs
    {
        get => lugs.Items;
        init => lugs = new(value, lug => lug.Name);
    }

    public ImmutableArray<Wire> Wires { get; init; } = [];

    public ImmutableArray<Cable> Cables { get; init; } = [];

    /// <summary>Everything that makes lugs one net.</summary>
    public ImmutableArray<Join> Joins { get; init; } = [];

    public ImmutableArray<Control> Controls { get; init; } = [];

    public ImmutableArray<Dial> Dials { get; init; } = [];

    public ImmutableArray<Element> Elements { get; init; } = [];

    /// <summary>
    /// Jacks with a tip and a sleeve: first the one that the circuit is seen from, the others in order of declaration. See
    /// <see cref="JackView"/>.
    /// </summary>
    public ImmutableArray<OutputJack> Outputs { get; init; } = [];

    public required NetMap Nets { get; init; }

    /// <summary>What the instrument is used with: cable, input, mains, temperature.</summary>
    public Surroundings Surroundings { get; init; } = Surroundings.Usual;

    /// <summary>The rows of the <c>arrange</c> block, each a list of part names with null for an empty cell.</summary>
    public ImmutableArray<ImmutableArray<int?>> Arrangement { get; init; } = [];

    public ImmutableArray<GivenPlace> Places { get; init; } = [];

    public ImmutableArray<Allowance> Allowances { get; init; } = [];

    /// <summary>What the author says must be true, in the order written.</summary>
    public ImmutableArray<Expectation> Expectations { get; init; } = [];

    /// <summary>The lugs that are to be found: what <c>find</c> lines name, in the order written.</summary>
    public ImmutableArray<OpenControl> Open { get; init; } = [];

    /// <summary>What was measured and heard at the bench: what <c>found</c> lines say, in the order written.</summary>
    public ImmutableArray<Found> Found { get; init; } = [];

    public Part PartOf(Lug lug) => Parts[lug.Part];

    /// <summary>The full name of a lug by its index.</summary>
    public string NameOf(int lug) => Lugs[lug].Name;

    /// <summary>The lug of that full name, upper and lower case alike, or null.</summary>
    public Lug? FindLug(string name) => lugs.Find(name);

    /// <summary>The part of that name, upper and lower case alike, or null.</summary>
    public Part? FindPart(string name) => parts.Find(name);

    public Control? FindControl(string name) =>
        Controls.FirstOrDefault(control => string.Equals(control.Name, name, StringComparison.OrdinalIgnoreCase));

    public Dial? FindDial(string name) =>
        Dials.FirstOrDefault(dial => string.Equals(dial.Name, name, StringComparison.OrdinalIgnoreCase));
}

/// <param name="Key">What the words are, such as <c>customer</c>.</param>
public sealed record AboutLine(string Key, string Words);

/// <summary>A jack's contacts, as indices into <see cref="Circuit.Lugs"/>.</summary>
public sealed record OutputJack(int Part, int Tip, int Sleeve, int? Ring);

/// <summary>A place the author gave to a part: its hole in millimetres, its turn clockwise in degrees.</summary>
/// <param name="At">Null when only the turn is given.</param>
public sealed record GivenPlace(int Part, Point? At, double Turn, SourceLocation DeclaredAt);

/// <summary>A control whose lugs are open: the wires on them are to be found.</summary>
/// <param name="Control">The index of the control.</param>
/// <param name="At">Lugs where wires may land too, as indices.</param>
/// <param name="DeclaredAt">The whole line, which may name several controls.</param>
public sealed record OpenControl(int Control, ImmutableArray<int> At, SourceLocation DeclaredAt);

/// <summary>A finding that the author says is meant.</summary>
/// <param name="Check">The id of the check.</param>
/// <param name="Lug">The lug or part it is allowed at; null for everywhere.</param>
public sealed record Allowance(string Check, string? Lug, string Reason, SourceLocation DeclaredAt);
