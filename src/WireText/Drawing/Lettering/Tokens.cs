namespace WireText.Drawing.Lettering;

/// <summary>Every size on a picture, in millimetres of paper. Colours are in <see cref="Theme"/>; nothing else holds a number or a colour.</summary>
public static class Tokens
{
    // Wires.
    public const double LanePitch = 2.0;
    public const double WireCore = 1.0;
    public const double BareCore = 0.6;
    public const double PartLeadCore = 0.6;

    /// <summary>What the casing adds on each side of a core.</summary>
    public const double Casing = 0.2;

    /// <summary>The stripped conductor between a joint and the insulation, and how far from the joint's middle insulation ends.</summary>
    public const double Conductor = 0.5;
    public const double StrippedEnd = 1.8;

    /// <summary>The most of a short wire that each end is stripped.</summary>
    public const double StrippedShare = 0.2;

    /// <summary>Paper on each side of a wire that goes over another.</summary>
    public const double Gap = 0.35;

    public const double StripeWidth = 0.4;
    public const double StripeOn = 2.4;
    public const double StripeOff = 2.4;
    public const double CornerRadius = 1.8;
    public const double HopRadius = 1.15;

    /// <summary>From a hop's middle to a parallel wire on the side that it bulges to, at least.</summary>
    public const double HopClearance = 3.0;

    public const double SheathWidth = 2.0;
    public const double SheathCasing = 0.15;
    public const double WeaveOn = 0.3;
    public const double WeaveOff = 0.5;

    /// <summary>The line down a braid that tells which core is inside.</summary>
    public const double SheathHint = 0.4;

    public const double SleeveWidth = 2.1;
    public const double SleeveLine = 0.15;

    // Lugs.
    public const double EyeletDiameter = 1.6;
    public const double EyeletHole = 0.6;
    public const double EyeletLine = 0.2;
    public const double JointDiameter = 1.9;

    /// <summary>A joint on a case is larger: the iron had to heat more metal.</summary>
    public const double SurfaceJointDiameter = 2.1;

    public const double JointLine = 0.2;

    /// <summary>The bar of a closed contact in a picture that follows a state.</summary>
    public const double ContactBar = 0.9;

    /// <summary>How far inside a row of lugs such a bar runs.</summary>
    public const double ContactReach = 3.4;

    public const double TabWidth = 1.7;

    /// <summary>How far a board is drawn beyond what keeps wires away.</summary>
    public const double WaferReach = 1.8;
    public const double LeadEnd = 0.9;
    public const double CoilEnd = 0.55;
    public const double SpringWidth = 1.1;

    // Parts.
    public const double PartLine = 0.3;
    public const double DetailLine = 0.2;
    public const double BodyCorner = 1.0;
    public const double HatchPitch = 1.4;

    /// <summary>The board under a row of a switch's lugs, and how far inside the frame it ends.</summary>
    public const double RailWidth = 4.4;
    public const double RailInset = 0.9;
    public const double ShaftDiameter = 6;

    /// <summary>Between a part's outline and the text inside it.</summary>
    public const double TextInset = 1.0;

    // Text.
    public const double NameSize = 3.0;
    public const double ValueSize = 2.4;
    public const double MarkSize = 2.4;
    public const double LugLabelSize = 2.4;
    public const double TagSize = 2.4;
    public const double TitleSize = 5.0;
    public const double NoteSize = 2.6;
    public const double FindingNumberSize = 2.4;

    /// <summary>From baseline to baseline, over the size.</summary>
    public const double LineHeight = 1.3;

    /// <summary>Around a lug's label, to whatever is near.</summary>
    public const double LabelGap = 0.35;

    /// <summary>The least paper between a lug's label and anything else.</summary>
    public const double LabelTouch = 0.15;

    /// <summary>From the ends of a lug's label to the line of a body, where there is room.</summary>
    public const double LabelToEdge = 0.8;

    public const double TagPadding = 0.7;
    public const double TagHeight = 3.1;
    public const double TagLine = 0.2;

    /// <summary>The radius of the dot on a wire whose tag stands apart from it.</summary>
    public const double LeaderDot = 0.45;

    /// <summary>The widest that a part's name or value may be beside its body.</summary>
    public const double WidestLabel = 40;

    // Findings.
    public const double FindingRing = 3.4;
    public const double FindingLine = 0.5;
    public const double FindingBadge = 3.6;

    // Joints.
    public const double JointNumberSize = 2.0;
    public const double JointNumberHeight = 2.6;
    public const double JointNumberPadding = 0.5;
    public const double JointNumberLine = 0.15;

    // Close-ups.
    /// <summary>Millimetres of paper for a millimetre of the part.</summary>
    public const double CloseUpScale = 2;

    /// <summary>How much is shown round the part, in its own millimetres.</summary>
    public const double CloseUpMargin = 5;
    public const double CaptionHeight = 5;
    public const double SpaceInCaption = 2;

    // The sheet.
    public const double PageMargin = 8;
    public const double NarrowestPage = 120;

    /// <summary>How far lug labels and finding numbers may reach beyond what layout counts.</summary>
    public const double LabelMargin = 3;
    public const double BlockGap = 5;

    /// <summary>Between the small pictures of a sheet of views.</summary>
    public const double ViewGap = 8;

    /// <summary>The widest that a sheet of views may be, and the smallest that it draws: lug names are 1 mm high then.</summary>
    public const double ViewSheetWidth = 420;
    public const double SmallestView = 0.5;
    public const double BlockLine = 0.2;
    public const double ScaleBar = 20;
    public const double ScaleBarHeight = 1.2;
    public const double LegendSample = 8;
    public const double SpliceSampleHeight = 2.4;
    public const double ColumnGap = 6;

    /// <summary>The least width of title, notes and legend beside close-ups.</summary>
    public const double TextColumn = 100;

    // Charts.
    public const double ChartWidth = 220;
    public const double PlotHeight = 104;

    /// <summary>For the numbers at the left of a chart.</summary>
    public const double PlotIndent = 11;

    /// <summary>From the plot's right edge to the samples of the curves, where leaders run.</summary>
    public const double LeaderWidth = 6;

    public const double CurveWidth = 0.65;
    public const double GridLine = 0.15;
    public const double StrongGridLine = 0.25;
    public const double PlotLine = 0.3;
    public const double LandmarkLine = 0.35;
    public const double PeakDot = 0.85;
    public const double PeakDotLine = 0.35;

    /// <summary>The widest that the labels of curves may be together with their peaks.</summary>
    public const double WidestChartLabels = 92;

    /// <summary>From row to row of curve labels, over the size of the text.</summary>
    public const double ChartRowHeight = 1.55;
}
