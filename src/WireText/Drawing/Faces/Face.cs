using System.Collections.Immutable;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>How a part looks from behind: its outline, its lugs and its words, in its own frame.</summary>
/// <param name="Part">Index into <see cref="Circuits.Circuit.Parts"/>.</param>
/// <param name="Layout">The same as layout sees it.</param>
/// <param name="Lugs">All but inner points and surfaces, in the order of the part's lugs.</param>
/// <param name="Surfaces">Metal that takes many joints.</param>
/// <param name="Inside">The lines in the body's text box; empty when there is none.</param>
/// <param name="Outside">The lines beside the body; empty when there are none.</param>
public sealed record Face(
    int Part,
    LayoutPart Layout,
    ImmutableArray<FaceLug> Lugs,
    ImmutableArray<FaceSurface> Surfaces,
    ImmutableArray<FaceLine> Inside,
    ImmutableArray<FaceLine> Outside
)
{
    /// <summary>Millimetres of the drawing for one of the part: more than 1 where it is drawn larger. What is painted on it grows with it.</summary>
    public double Scale { get; init; } = 1;
}

public enum LugLook
{
    /// <summary>A solder tag that reaches out of the body.</summary>
    Tab,

    /// <summary>A solder tag on the body itself.</summary>
    Riveted,

    /// <summary>The end of a wire that its maker fixed to the part.</summary>
    Lead,
}

/// <param name="Lug">Index into <see cref="Circuits.Circuit.Lugs"/>.</param>
/// <param name="Label">Its name inside the part, or inside the section where it has one.</param>
/// <param name="Section">The name of its section, <c>top</c> for <c>top.1</c>; empty for none.</param>
/// <param name="Exits">The first is the side it points to.</param>
public sealed record FaceLug(int Lug, string Label, string Section, Point At, LugLook Look, ImmutableArray<Side> Exits)
{
    public Side Outward => Exits[0];

    /// <summary>What its label takes up.</summary>
    public Size LabelSize =>
        new(
            DrawnText.Width(Label, TextWeight.Medium, Tokens.LugLabelSize),
            (Tokens.LugLabelSize * DrawnText.CapHeight) + DrawnText.Descent(Label, Tokens.LugLabelSize)
        );
}

/// <param name="Lug">Index into <see cref="Circuits.Circuit.Lugs"/>.</param>
public sealed record FaceSurface(int Lug, Outline Shape);

public enum FaceLineKind
{
    Name,
    Value,

    /// <summary>What is printed on the real part, such as <c>473</c>, or what it is made of.</summary>
    Mark,

    /// <summary>The author's own words.</summary>
    Remark,
}

/// <summary>One line of a part's own words, clean and short enough.</summary>
public sealed record FaceLine(FaceLineKind Kind, string Text)
{
    public double Size =>
        Kind switch
        {
            FaceLineKind.Name => Tokens.NameSize,
            FaceLineKind.Value => Tokens.ValueSize,
            _ => Tokens.MarkSize,
        };

    public TextWeight Weight => Kind == FaceLineKind.Name ? TextWeight.SemiBold : TextWeight.Regular;

    public double Width => DrawnText.Width(Text, Weight, Size);

    public double Height => Size * Tokens.LineHeight;

    /// <summary>As much of a text as stands beside a body at most.</summary>
    public static FaceLine Fitting(FaceLineKind kind, string text)
    {
        var line = new FaceLine(kind, text);
        return line with { Text = DrawnText.Fit(text, line.Weight, line.Size, Tokens.WidestLabel) };
    }

    /// <summary>What lines take up one under the other.</summary>
    public static Size SizeOf(ImmutableArray<FaceLine> lines) =>
        new(lines.Max(line => line.Width) + (4 * Tokens.LabelGap), lines.Sum(line => line.Height));
}
