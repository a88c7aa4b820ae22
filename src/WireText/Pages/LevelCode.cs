using System.Text;

namespace WireText.Pages;

/// <summary>Writes levels as letters: tenths of a dB, each as its difference to the one before.</summary>
/// <remarks>
/// A letter of <see cref="Letters"/> is its place there less 31. The last of them says that the next two letters are the
/// level itself: 64 times the place of the first and the place of the second, less 2048. The first level is written so.
/// </remarks>
internal static class LevelCode
{
    public const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

    private const int Zero = 31;
    private const int WholeZero = 2048;

    /// <param name="decibels">Above −200 dB.</param>
    public static string Of(IEnumerable<double> decibels)
    {
        var code = new StringBuilder();
        int? before = null;
        foreach (var tenths in decibels.Select(level => (int)Math.Round(level * 10, MidpointRounding.AwayFromZero)))
        {
            if (before is { } last && Math.Abs(tenths - last) <= Zero)
            {
                code.Append(Letters[tenths - last + Zero]);
            }
            else
            {
                var whole = tenths + WholeZero;
                code.Append(Letters[^1])
                    .Append(Letters[whole / Letters.Length])
                    .Append(Letters[whole % Letters.Length]);
            }

            before = tenths;
        }

        return code.ToString();
    }
}
