namespace WireText.Text;

/// <summary>
/// Everything there is to say about a kind of finding, declared by the stage that reports it. Its page, its row in the table,
/// the text of <c>explain</c> and its tests come from here.
/// </summary>
/// <param name="Id">The bad thing in a word or two, that reads well after <c>allow</c>; never reused for another meaning.</param>
/// <param name="Title">What is wrong, as a short statement.</param>
/// <param name="Severity">The gravest it can be.</param>
/// <param name="Why">Why it matters, in whole sentences.</param>
/// <param name="Bad">Wiring text with the places it reports between <c>[|</c> and <c>|]</c>; empty where no short text shows it.</param>
/// <param name="Good">Wiring text without that finding; for a check, without any.</param>
/// <param name="Mend">What to do, in whole sentences.</param>
public record FindingDescription(
    string Id,
    string Title,
    Severity Severity,
    FindingGroup Group,
    string Why,
    string Bad,
    string Good,
    string Mend
)
{
    /// <summary>True for what is worth knowing and does no harm: it is told when notes are asked for, and never weighs.</summary>
    public bool OnlyWhenAsked { get; init; }

    /// <summary>False where only a very large text, several files or an unseen character would show it.</summary>
    public bool HasExamples => Bad.Length > 0;

    /// <summary>A finding of this kind. The first subject is the one blamed.</summary>
    /// <param name="help">Starts with a verb and gives text to paste; null where there is no honest advice.</param>
    public Finding At(SourceLocation location, string message, string? help = null, params Subject[] subjects) =>
        At(Severity, location, message, help, subjects);

    /// <summary>As above, weighing less than the gravest.</summary>
    public Finding At(
        Severity severity,
        SourceLocation location,
        string message,
        string? help,
        params Subject[] subjects
    ) => new(this, severity, location, message, help) { Subjects = [.. subjects] };
}
