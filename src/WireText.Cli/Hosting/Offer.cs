using WireText.Text;

namespace WireText.Cli.Hosting;

/// <summary>What follows a word that is not known.</summary>
internal static class Offer
{
    /// <summary>Offers the word that was meant, as in <c>; did you mean 'pot'?</c>; empty when none is near.</summary>
    public static string Nearest(string word, IEnumerable<string> words) =>
        DidYouMean.Nearest(word, words) is { } near ? $"; did you mean '{near}'?" : "";
}
