namespace WireText.Cli.Arguments;

/// <summary>What a drawing is written as.</summary>
internal enum PictureFormat
{
    Svg,
    Png,
    Pdf,
}
