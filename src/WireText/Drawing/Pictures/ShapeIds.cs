using System.Globalization;
using System.Text;

namespace WireText.Drawing.Pictures;

/// <summary>Names as XML ids: letters, digits, <c>.</c>, <c>-</c> and <c>_</c> stay; anything else is its code between middle dots, so that different names never meet.</summary>
internal static class ShapeIds
{
    public static string Of(string prefix, string name)
    {
        var id = new StringBuilder(prefix).Append('-');
        foreach (var rune in name.EnumerateRunes())
        {
            if (rune.IsAscii && (char.IsAsciiLetterOrDigit((char)rune.Value) || rune.Value is '.' or '-' or '_'))
            {
                id.Append((char)rune.Value);
            }
            else
            {
                id.Append(CultureInfo.InvariantCulture, $"·{rune.Value:x}·");
            }
        }

        return id.ToString();
    }
}
