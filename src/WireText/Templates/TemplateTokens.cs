namespace WireText.Templates;

/// <summary>Every size on a template, in millimetres. Chosen; no letter is below 2 mm.</summary>
internal static class TemplateTokens
{
    public const double Margin = 4;
    public const double HoleLine = 0.25;
    public const double CrossLine = 0.12;

    /// <summary>How far the cross of a hole reaches beyond its edge.</summary>
    public const double CrossReach = 3;
    public const double BodyLine = 0.15;
    public const double BodyDash = 1.2;

    /// <summary>The cross where no hole is known, and at 0,0.</summary>
    public const double LoneCross = 3;
    public const double SideSize = 4;
    public const double NameSize = 3;
    public const double SizeSize = 2.4;
    public const double LabelGap = 1;

    /// <summary>Nearer than this to a hole, 0,0 is marked.</summary>
    public const double OriginReach = 15;
    public const double Widest = 40;
}
