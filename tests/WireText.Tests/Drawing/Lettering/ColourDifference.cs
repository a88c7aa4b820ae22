using WireText.Drawing.Lettering;

namespace WireText.Tests.Drawing.Lettering;

/// <summary>How an eye sees colours: CIELAB, CIEDE2000, the three kinds of sight that lack one sort of cone, and a print in grey.</summary>
internal static class ColourDifference
{
    public enum Sight
    {
        Normal,
        Protanopia,
        Deuteranopia,
        Tritanopia,

        /// <summary>Everyone's, of a picture printed or copied in grey.</summary>
        Grey,
    }

    /// <summary>How people see a picture in colour.</summary>
    public static readonly Sight[] Eyes = [Sight.Normal, Sight.Protanopia, Sight.Deuteranopia, Sight.Tritanopia];

    // Machado, Oliveira and Fernandes, A physiologically-based model for simulation of color vision deficiency,
    // IEEE TVCG 15(6), 2009: the matrices for severity 1.0, on linear RGB. Values from memory, checked in the tests:
    // each row adds up to 1, so that greys stay grey.
    private static readonly double[,] Protan =
    {
        { 0.152286, 1.052583, -0.204868 },
        { 0.114503, 0.786281, 0.099216 },
        { -0.003882, -0.048116, 1.051998 },
    };

    private static readonly double[,] Deutan =
    {
        { 0.367322, 0.860646, -0.227968 },
        { 0.280085, 0.672501, 0.047413 },
        { -0.011820, 0.042940, 0.968881 },
    };

    private static readonly double[,] Tritan =
    {
        { 1.255528, -0.076749, -0.178779 },
        { -0.078411, 0.930809, 0.147602 },
        { 0.004733, 0.691367, 0.303900 },
    };

    /// <summary>Each channel becomes the luminance Y of sRGB's primaries (IEC 61966-2-1).</summary>
    private static readonly double[,] Luminance =
    {
        { 0.2126729, 0.7151522, 0.0721750 },
        { 0.2126729, 0.7151522, 0.0721750 },
        { 0.2126729, 0.7151522, 0.0721750 },
    };

    public static double Between(Colour a, Colour b, Sight sight) => Ciede2000(Lab(a, sight), Lab(b, sight));

    /// <summary>CIELAB under D65 (IEC 61966-2-1 for sRGB, CIE 15 for the rest).</summary>
    public static (double L, double A, double B) Lab(Colour colour, Sight sight)
    {
        double[] rgb = [Linear(colour.Red), Linear(colour.Green), Linear(colour.Blue)];
        rgb = sight switch
        {
            Sight.Protanopia => Times(Protan, rgb),
            Sight.Deuteranopia => Times(Deutan, rgb),
            Sight.Tritanopia => Times(Tritan, rgb),
            Sight.Grey => Times(Luminance, rgb),
            _ => rgb,
        };
        for (var i = 0; i < 3; i++)
        {
            rgb[i] = Math.Clamp(rgb[i], 0, 1);
        }

        var x = ((0.4124564 * rgb[0]) + (0.3575761 * rgb[1]) + (0.1804375 * rgb[2])) / 0.95047;
        var y = (0.2126729 * rgb[0]) + (0.7151522 * rgb[1]) + (0.0721750 * rgb[2]);
        var z = ((0.0193339 * rgb[0]) + (0.1191920 * rgb[1]) + (0.9503041 * rgb[2])) / 1.08883;
        return ((116 * Root(y)) - 16, 500 * (Root(x) - Root(y)), 200 * (Root(y) - Root(z)));
    }

    /// <summary>Sharma, Wu and Dalal, The CIEDE2000 color-difference formula, Color Research and Application 30(1), 2005.</summary>
    public static double Ciede2000((double L, double A, double B) one, (double L, double A, double B) two)
    {
        var meanC = (Math.Sqrt(Sq(one.A) + Sq(one.B)) + Math.Sqrt(Sq(two.A) + Sq(two.B))) / 2;
        var g = 0.5 * (1 - Math.Sqrt(Math.Pow(meanC, 7) / (Math.Pow(meanC, 7) + Math.Pow(25, 7))));
        var (a1, a2) = ((1 + g) * one.A, (1 + g) * two.A);
        var (c1, c2) = (Math.Sqrt(Sq(a1) + Sq(one.B)), Math.Sqrt(Sq(a2) + Sq(two.B)));
        var (h1, h2) = (Hue(a1, one.B), Hue(a2, two.B));

        var dL = two.L - one.L;
        var dC = c2 - c1;
        var dh =
            c1 * c2 == 0 ? 0
            : Math.Abs(h2 - h1) <= 180 ? h2 - h1
            : h2 <= h1 ? h2 - h1 + 360
            : h2 - h1 - 360;
        var dH = 2 * Math.Sqrt(c1 * c2) * Sin(dh / 2);

        var meanL = (one.L + two.L) / 2;
        var meanCPrime = (c1 + c2) / 2;
        var meanH =
            c1 * c2 == 0 ? h1 + h2
            : Math.Abs(h1 - h2) <= 180 ? (h1 + h2) / 2
            : h1 + h2 < 360 ? (h1 + h2 + 360) / 2
            : (h1 + h2 - 360) / 2;
        var t =
            1
            - (0.17 * Cos(meanH - 30))
            + (0.24 * Cos(2 * meanH))
            + (0.32 * Cos((3 * meanH) + 6))
            - (0.20 * Cos((4 * meanH) - 63));
        var turn = 30 * Math.Exp(-Sq((meanH - 275) / 25));
        var rc = 2 * Math.Sqrt(Math.Pow(meanCPrime, 7) / (Math.Pow(meanCPrime, 7) + Math.Pow(25, 7)));
        var sl = 1 + (0.015 * Sq(meanL - 50) / Math.Sqrt(20 + Sq(meanL - 50)));
        var sc = 1 + (0.045 * meanCPrime);
        var sh = 1 + (0.015 * meanCPrime * t);
        var rt = -Sin(2 * turn) * rc;
        return Math.Sqrt(Sq(dL / sl) + Sq(dC / sc) + Sq(dH / sh) + (rt * (dC / sc) * (dH / sh)));
    }

    public static IEnumerable<double> RowSums() =>
        from matrix in new[] { Protan, Deutan, Tritan, Luminance }
        from row in Enumerable.Range(0, 3)
        select matrix[row, 0] + matrix[row, 1] + matrix[row, 2];

    private static double Linear(byte value)
    {
        var v = value / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
    }

    private static double Root(double t) => t > 216.0 / 24389 ? Math.Cbrt(t) : ((24389.0 / 27 * t) + 16) / 116;

    private static double[] Times(double[,] m, double[] v) =>
        [.. Enumerable.Range(0, 3).Select(row => (m[row, 0] * v[0]) + (m[row, 1] * v[1]) + (m[row, 2] * v[2]))];

    private static double Hue(double a, double b)
    {
        if (a == 0 && b == 0)
        {
            return 0;
        }

        var degrees = Math.Atan2(b, a) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double Sq(double value) => value * value;

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    private static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);
}
