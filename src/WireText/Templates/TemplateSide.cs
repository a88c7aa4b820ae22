namespace WireText.Templates;

/// <summary>From where a template is looked at.</summary>
public enum TemplateSide
{
    /// <summary>Where the knobs are: a drawing from behind, mirrored left for right.</summary>
    Front,

    /// <summary>Where the lugs are, as places are written.</summary>
    Behind,
}

public static class TemplateSideWords
{
    public static string Word(this TemplateSide side) => side == TemplateSide.Front ? "front" : "behind";

    /// <summary>As it stands on a page.</summary>
    internal static string InWords(this TemplateSide side) =>
        side == TemplateSide.Front
            ? "Seen from the front: mirrored against the drawing, which is seen from behind"
            : "Seen from behind, as the drawing";
}
