namespace WireText.Drawing.Lettering;

/// <summary>The weights of the typeface that pictures use.</summary>
public enum TextWeight
{
    Regular = 400,
    Medium = 500,
    SemiBold = 600,
}
