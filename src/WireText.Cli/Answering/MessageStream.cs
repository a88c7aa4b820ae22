using System.Globalization;
using System.Text;
using WireText.Editing;

namespace WireText.Cli.Answering;

/// <summary>
/// Messages on a pair of streams, each behind a head that says its length (the base protocol of LSP 3.17). What is no head is passed
/// over, up to the next one: whoever sends a line of something else is still understood after it.
/// </summary>
/// <remarks>Read by one thread; written by any.</remarks>
/// <param name="input">Read a byte at a time where it is no message: buffered.</param>
internal sealed class MessageStream(Stream input, Stream output)
{
    /// <summary>Of a line that has no end so much is remembered, in bytes: a head may start in the middle of something else.</summary>
    private const int LongestLine = 256;

    private const string LengthField = "Content-Length:";

    private readonly Lock writing = new();

    /// <summary>The next message; null when there is no more. Empty for one that is longer than any that is read.</summary>
    public byte[]? Read()
    {
        if (ReadHead() is not { } length)
        {
            return null;
        }

        if (length > EditorLimits.MostMessageBytes)
        {
            return Skip(length) ? [] : null;
        }

        var body = new byte[length];
        return input.ReadAtLeast(body, body.Length, throwOnEndOfStream: false) == body.Length ? body : null;
    }

    /// <exception cref="IOException">Whoever read is gone.</exception>
    public void Write(ReadOnlySpan<byte> body)
    {
        var head = Encoding.ASCII.GetBytes(
            string.Create(CultureInfo.InvariantCulture, $"{LengthField} {body.Length}\r\n\r\n")
        );
        lock (writing)
        {
            output.Write(head);
            output.Write(body);
            output.Flush();
        }
    }

    /// <summary>The length that the next head says; null where the stream ends.</summary>
    private long? ReadHead()
    {
        long? length = null;
        while (ReadLine() is { } line)
        {
            if (line.Length == 0 && length is not null)
            {
                return length;
            }

            length = LengthIn(line) ?? length;
        }

        return null;
    }

    /// <summary>What a line says of the length; null where it says nothing of it.</summary>
    private static long? LengthIn(string line)
    {
        var at = line.LastIndexOf(LengthField, StringComparison.OrdinalIgnoreCase);
        return
            at >= 0
            && long.TryParse(
                line.AsSpan(at + LengthField.Length).Trim(' '),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out var length
            )
            ? length
            : null;
    }

    /// <summary>A line without its ending, of one that is too long its end; null where the stream ends before the line does.</summary>
    private string? ReadLine()
    {
        var line = new StringBuilder();
        while (input.ReadByte() is >= 0 and var read)
        {
            if (read == '\n')
            {
                return line.ToString().TrimEnd('\r');
            }

            line.Append((char)read);
            if (line.Length > 2 * LongestLine)
            {
                line.Remove(0, LongestLine);
            }
        }

        return null;
    }

    private bool Skip(long length)
    {
        var buffer = new byte[64 * 1024];
        while (length > 0)
        {
            var read = input.Read(buffer, 0, (int)Math.Min(length, buffer.Length));
            if (read == 0)
            {
                return false;
            }

            length -= read;
        }

        return true;
    }
}
