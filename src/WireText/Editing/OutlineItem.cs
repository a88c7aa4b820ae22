using WireText.Text;

namespace WireText.Editing;

/// <summary>What a line of an outline is about.</summary>
public enum OutlineKind
{
    /// <summary>The title, and what else the title block says.</summary>
    Heading,

    /// <summary>Another file.</summary>
    File,

    Part,
    Wire,

    /// <summary>Names for the positions of a control, and where controls rest.</summary>
    Control,

    /// <summary>Where parts stand on the page.</summary>
    Place,

    /// <summary>What must be true, and what is allowed.</summary>
    Claim,

    /// <summary>A model or a colour of the file's own.</summary>
    Definition,

    /// <summary>What a mod takes out of the file that it stands on.</summary>
    Change,
}

/// <summary>A statement in the outline of a text.</summary>
/// <param name="Name">What it is about, in a word or a few.</param>
/// <param name="Detail">What it says of that; empty for no more.</param>
/// <param name="Whole">All of its lines.</param>
/// <param name="At">The words that say what it is about; inside <paramref name="Whole"/>.</param>
public sealed record OutlineItem(string Name, string Detail, OutlineKind Kind, TextSpan Whole, TextSpan At);
