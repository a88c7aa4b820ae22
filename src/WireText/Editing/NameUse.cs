using WireText.Text;

namespace WireText.Editing;

/// <summary>What a word names.</summary>
public enum NameKind
{
    /// <summary>A part or a splice; also the control that carries its name.</summary>
    Part,

    /// <summary>A lug, a lead or a point of a part, behind the dot.</summary>
    Lug,

    /// <summary>A control, a dial or a coil of a part, behind the dot: <c>vol.pull</c>, <c>bridge.n</c>.</summary>
    Section,

    /// <summary>A position of a control.</summary>
    Position,

    Kind,
    Model,
    Colour,
    Check,
}

/// <summary>A place in a text where something is named.</summary>
/// <param name="Key">Two uses with one key name the same thing, in whatever file they stand.</param>
/// <param name="DeclaredAt">Where a file gives it its name; null for what comes with the program.</param>
public sealed record NameUse(SourceLocation At, NameKind Kind, string Key, SourceLocation? DeclaredAt)
{
    /// <summary>True where it gets its name.</summary>
    public bool IsDeclaration => At == DeclaredAt;
}
