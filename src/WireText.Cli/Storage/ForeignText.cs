using System.Buffers;
using System.Globalization;
using System.Text;

namespace WireText.Cli.Storage;

/// <summary>Says of bytes that are no UTF-8 what they are, as far as they tell it, and how to mend the file.</summary>
internal static class ForeignText
{
    private const string NoText = "it is not text in UTF-8";
    private const string Mend = "save it as UTF-8";

    /// <summary>Below it Latin-1 (ISO/IEC 8859-1) has control characters, which no text has.</summary>
    private const byte FirstOfLatin1 = 0xA0;

    /// <summary>What is wrong with the bytes, ready for a message; null when they are UTF-8.</summary>
    public static string? Reason(ReadOnlySpan<byte> bytes)
    {
        if (IsUtf16(bytes))
        {
            return $"{NoText} but in UTF-16; {Mend}";
        }

        var bad = FirstBad(bytes);
        if (bad < 0)
        {
            return null;
        }

        // A file with zero bytes is no text in any encoding of one byte a character.
        return bytes.Contains((byte)0)
            ? NoText
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{NoText}: line {LineOf(bytes[..bad])} has the byte {bytes[bad]:X2}{InLatin1(bytes[bad])}; {Mend}"
            );
    }

    /// <summary>By its byte order mark, or by two characters of which the upper halves are empty.</summary>
    private static bool IsUtf16(ReadOnlySpan<byte> bytes) =>
        bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] or [not 0, 0, not 0, 0, ..] or [0, not 0, 0, not 0, ..];

    private static int FirstBad(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (at < bytes.Length)
        {
            if (Rune.DecodeFromUtf8(bytes[at..], out _, out var used) != OperationStatus.Done)
            {
                return at;
            }

            at += used;
        }

        return -1;
    }

    /// <summary>The number of the line behind some bytes, from 1; lines end with LF, CRLF or a lone CR.</summary>
    private static int LineOf(ReadOnlySpan<byte> before)
    {
        var line = 1;
        for (var i = 0; i < before.Length; i++)
        {
            var isAlone = i + 1 == before.Length || before[i + 1] != (byte)'\n';
            line += before[i] == (byte)'\n' || (before[i] == (byte)'\r' && isAlone) ? 1 : 0;
        }

        return line;
    }

    private static string InLatin1(byte value) =>
        value >= FirstOfLatin1 ? $", which is '{(char)value}' in Latin-1" : "";
}
