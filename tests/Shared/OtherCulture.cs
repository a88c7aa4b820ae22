using System.Globalization;

namespace WireText.Testing;

/// <summary>A machine on which numbers are written in another way: no output may depend on it.</summary>
internal static class OtherCulture
{
    /// <summary>A decimal comma, points between thousands, and a minus that no reader of ASCII knows.</summary>
    private static readonly CultureInfo Culture = Make();

    /// <summary>What is made in that culture, by this thread and those that it starts.</summary>
    public static T Run<T>(Func<T> make)
    {
        var before = Thread.CurrentThread.CurrentCulture;
        try
        {
            Thread.CurrentThread.CurrentCulture = Culture;
            Assert.Equal("−1,5", (-1.5).ToString("0.0", provider: null));
            return make();
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    private static CultureInfo Make()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "−";
        return culture;
    }
}
