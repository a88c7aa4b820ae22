using System.Globalization;

namespace WireText.Drawing.Lettering;

/// <summary>A colour in sRGB.</summary>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary><c>#1D2126</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"#{Red:X2}{Green:X2}{Blue:X2}");

    /// <summary>As it looks where it covers so much of another, in percent.</summary>
    internal Colour Over(Colour ground, int percent)
    {
        return new Colour(Mixed(Red, ground.Red), Mixed(Green, ground.Green), Mixed(Blue, ground.Blue));

        byte Mixed(byte own, byte other) => (byte)(((own * percent) + (other * (100 - percent)) + 50) / 100);
    }

    internal static Colour Hex(int value) => new((byte)(value >> 16), (byte)(value >> 8), (byte)value);
}
