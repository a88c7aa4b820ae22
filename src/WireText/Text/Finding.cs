using System.Collections.Immutable;

namespace WireText.Text;

/// <summary>How much a finding weighs; the order is from least to most.</summary>
public enum Severity
{
    /// <summary>Something that is as it should be, and worth saying: it never changes an exit code.</summary>
    Right,

    /// <summary>Worth a thought.</summary>
    Note,

    /// <summary>It will probably not work as meant.</summary>
    Warning,

    /// <summary>The line cannot be built, or the guitar cannot do its job.</summary>
    Error,
}

/// <summary>A second place that explains a finding, in a few words.</summary>
public sealed record RelatedPlace(SourceLocation Location, string Message);

/// <summary>What a finding is about, so that a drawing can mark it: a lug, a part or a control's position.</summary>
/// <param name="Kind">Which of the three it is.</param>
/// <param name="Name">The full name: <c>sel.A1</c>, <c>sel</c>, or <c>sel=both</c>.</param>
public readonly record struct Subject(SubjectKind Kind, string Name)
{
    public static Subject Lug(string name) => new(SubjectKind.Lug, name);

    public static Subject Part(string name) => new(SubjectKind.Part, name);

    public static Subject Position(string control, string position) =>
        new(SubjectKind.Position, $"{control}={position}");
}

public enum SubjectKind
{
    Lug,
    Part,
    Position,
}

/// <summary>One thing that is wrong, where it is, and how to mend it. The parser, the binder and the checks give these.</summary>
/// <param name="Description">What kind of finding it is.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Location">The smallest text that shows the problem.</param>
/// <param name="Message">One short statement, without a full stop, that makes sense alone.</param>
/// <param name="Help">Starts with a verb and gives text to paste; null where there is no honest advice.</param>
public sealed record Finding(
    FindingDescription Description,
    Severity Severity,
    SourceLocation Location,
    string Message,
    string? Help = null
)
{
    /// <summary>The name of its kind, such as <c>unconnected-lug</c>.</summary>
    public string Id => Description.Id;

    /// <summary>Other places that matter, such as an earlier declaration.</summary>
    public ImmutableArray<RelatedPlace> Related { get; init; } = [];

    /// <summary>The end of the help: another way out, for who meant what is there; null where there is none.</summary>
    public string? Otherwise { get; init; }

    /// <summary>The changes that mend it, where the mend is certain: all of them together. Empty where it is the author's choice.</summary>
    public ImmutableArray<TextEdit> Edits { get; init; } = [];

    /// <summary>What is left to the reader, or to a search for the one edit that mends it.</summary>
    public Remedy Remedy { get; init; }

    /// <summary>Edits after each of which nothing is found, the likeliest first; the help says them. Empty where none was looked for.</summary>
    public ImmutableArray<Suggestion> Suggestions { get; init; } = [];

    /// <summary>The lugs, parts and positions that a drawing marks; the first is the one blamed.</summary>
    public ImmutableArray<Subject> Subjects { get; init; } = [];

    /// <summary>The same with another place that matters.</summary>
    public Finding Beside(SourceLocation place, string message) =>
        this with
        {
            Related = [.. Related, new RelatedPlace(place, message)],
        };

    /// <summary>The same, its help in words alone: where one edit, or one of a few, mends it, that is told instead.</summary>
    public Finding Seeking(Remedy remedy, string? otherwise = null) =>
        this with
        {
            Remedy = remedy,
            Otherwise = otherwise,
        };

    /// <summary>The same with the change that mends it; as it is where there is none.</summary>
    public Finding MendedBy(TextEdit? edit) => edit is null ? this : this with { Edits = [edit] };
}
