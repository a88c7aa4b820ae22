using System.Collections.Immutable;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Frames;

/// <summary>One picture of a video, and what is said with it.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Group">What it belongs to: a part of the work, or where the controls stand.</param>
/// <param name="Caption">What is done, or what is heard; whole, where the picture may cut it.</param>
/// <param name="View">What of the drawing is shown, in millimetres of the drawing.</param>
/// <param name="Names">What is named on it.</param>
public sealed record Frame(
    int Number,
    string Group,
    string Caption,
    Picture Picture,
    Box View,
    ImmutableArray<FrameName> Names
)
{
    /// <summary>The name of its file.</summary>
    public required string FileName { get; init; }

    /// <summary>The ids of the wires that are new on it.</summary>
    public ImmutableArray<string> Wires { get; init; } = [];

    /// <summary>The number of the joint that is made; null for none.</summary>
    public int? Joint { get; init; }

    /// <summary>How long it may stand, in seconds.</summary>
    public double Seconds => FrameTime.Of(Caption);
}

/// <summary>A lug, part or control that a frame names.</summary>
/// <param name="Text">As it stands on the frame, clean and short enough.</param>
/// <param name="Places">Where it lies, in millimetres of the drawing; none where it is not drawn.</param>
public sealed record FrameName(string Text, ImmutableArray<Point> Places);
