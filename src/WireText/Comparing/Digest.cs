using System.Security.Cryptography;
using System.Text;

namespace WireText.Comparing;

/// <summary>A text of fixed length in place of a longer one: the same for the same text on every machine.</summary>
internal static class Digest
{
    public static string Of(string text) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
