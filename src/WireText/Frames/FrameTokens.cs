using System.Collections.Immutable;

namespace WireText.Frames;

/// <summary>Every size on a frame, in pixels of one of 1920 × 1080, and how much of its colour each thing keeps. Chosen by eye.</summary>
internal static class FrameTokens
{
    /// <summary>A picture is in millimetres: so many stand for a pixel.</summary>
    public const double Pixel = 0.1;

    /// <summary>The shorter side that the sizes are for; on a larger frame they grow with it.</summary>
    public const double ShorterSide = 1080;

    /// <summary>What a screen may cut off on each side, of the width and of the height. Common practice: title safe.</summary>
    public const double Safe = 0.05;

    // The drawing.
    /// <summary>The closest that the view comes, in pixels a millimetre: the lugs of a toggle switch fill a third of it.</summary>
    public const double Closest = 10;

    /// <summary>From what a step is about to the edge of the view, where its names have room.</summary>
    public const double ViewMargin = 170;

    /// <summary>A view that would show a step at less than this share of its best scale does not hold it.</summary>
    public const double LeastShare = 0.5;

    /// <summary>What is done already, and stays in sight.</summary>
    public const int Quiet = 38;

    /// <summary>A part that is in its place.</summary>
    public const int Placed = 75;

    /// <summary>A part that is not there yet.</summary>
    public const int Ghost = 20;

    /// <summary>What lies round a new wire, and how wide that is in millimetres of the drawing.</summary>
    public const int Halo = 35;
    public const double HaloWidth = 2.8;

    /// <summary>A wire that comes off has no way on the drawing any more: a line from lug to lug, in millimetres of the drawing.</summary>
    public const double LiftedDash = 2;

    public const double Ring = 21;
    public const double RingLine = 5;

    // Names.
    /// <summary>Its capitals are 29 pixels high: 40 times 2048 of 2816.</summary>
    public const double NameSize = 40;
    public const double NamePadding = 12;
    public const double NameHeight = 54;
    public const double NameLine = 4;
    public const double WidestName = 420;

    /// <summary>From a place to the middle of its name; nearer is liked better.</summary>
    public static readonly ImmutableArray<double> NameDistances = [70, 90, 115, 145, 180, 220, 270, 330];
    public const int NameDirections = 24;

    /// <summary>Where the whole drawing is shown everything is near something: a name that covers a little is better than one far away.</summary>
    public static readonly ImmutableArray<double> NearDistances = [60, 75, 90, 105, 120];

    // The column with the whole drawing and the number of the step.
    public const double ColumnWidth = 380;
    public const double OverviewHeight = 290;
    public const double OverviewPadding = 10;
    public const double OverviewLine = 3;
    public const double Gap = 24;
    public const double WordsGap = 40;
    public const double CountSize = 72;
    public const double GroupSize = 36;
    public const double TitleSize = 28;

    // The caption.
    public const double CaptionHeight = 170;

    /// <summary>On a frame that is higher than wide lines are short, and there are more of them.</summary>
    public const double TallCaptionHeight = 340;

    /// <summary>The largest whose lines fit is taken; at the last one the words are cut, and stand whole in the list of frames.</summary>
    public static readonly ImmutableArray<double> CaptionSizes = [46, 42, 38, 34, 30];
    public const double CaptionLine = 1.24;
    public const double ProgressHeight = 8;
}
