namespace WireText.Drawing.Lettering;

/// <summary>The edge of a wire whose paint a file chose: nobody drew one for it.</summary>
internal static class OwnCasing
{
    /// <summary>What a wire must differ by from the paper to be seen on a grey print (WCAG 2.1, 1.4.11).</summary>
    private const double LeastContrast = 3;

    /// <summary>Around paint that dark paper would swallow, as around black insulation.</summary>
    private static readonly Colour Light = Colour.Hex(0x8C9299);

    /// <summary>Half as bright as the core; light where neither that nor the core would stand out from the paper.</summary>
    public static Colour Of(Colour core, Colour paper)
    {
        var darker = new Colour(Half(core.Red), Half(core.Green), Half(core.Blue));
        return StandsOut(core, paper) || StandsOut(darker, paper) ? darker : Light;
    }

    private static bool StandsOut(Colour colour, Colour paper)
    {
        var (a, b) = (Luminance(colour), Luminance(paper));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05) >= LeastContrast;
    }

    /// <summary>WCAG 2.1, "relative luminance": 0 for black, 1 for white.</summary>
    private static double Luminance(Colour colour) =>
        (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    private static double Linear(byte value)
    {
        var share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }

    private static byte Half(byte value) => (byte)(value / 2);
}
