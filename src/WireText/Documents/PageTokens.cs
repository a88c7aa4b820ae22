namespace WireText.Documents;

/// <summary>Every size on a page of a document, in millimetres.</summary>
internal static class PageTokens
{
    public const double Margin = 15;

    /// <summary>Below the last line of a page, for its foot.</summary>
    public const double FootHeight = 8;
    public const double FootSize = 2.4;

    /// <summary>About 9 points: read at arm's length on a bench.</summary>
    public const double TextSize = 3.2;
    public const double CellSize = 2.8;
    public const double HeadingOne = 6.5;
    public const double HeadingTwo = 4.8;
    public const double HeadingThree = 3.6;

    public const double BlockGap = 3.5;

    /// <summary>A heading is never the last of its page: so much must fit below it.</summary>
    public const double KeptWithHeading = 22;

    /// <summary>A table that is no higher is not torn apart. Chosen: ten rows.</summary>
    public const double KeptWhole = 60;

    public const double Indent = 6;
    public const double ItemGap = 1.2;
    public const double BoxSide = 3;
    public const double BoxLine = 0.25;
    public const double BulletDiameter = 0.9;

    public const double CellGap = 3;
    public const double RowPadding = 1.3;
    public const double RowLine = 0.1;
    public const double HeadLine = 0.3;

    // Pages of a drawing.
    public const double FigureMargin = 10;
    public const double FigureFoot = 14;

    /// <summary>What neighbouring pages of one drawing both show.</summary>
    public const double Overlap = 10;
    public const double CutMark = 5;
    public const double CutLine = 0.15;

    /// <summary>The bar that proves the scale of a print, measured with a ruler.</summary>
    public const double ProofBar = 50;
    public const double ProofBarHeight = 1.6;
    public const double KeyCell = 4;
    public const double KeyHeight = 6.5;
}
