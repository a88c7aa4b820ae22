using System.Text;

namespace WireText.Cli.Serving;

/// <summary>What a browser asks for: the lines before the body of a request (RFC 9112).</summary>
/// <param name="Target">As it was written; nothing in it is decoded.</param>
/// <param name="Host">Whom it takes this server for.</param>
/// <param name="Origin">Whose page asks; null where it is not said.</param>
internal sealed record RequestHead(string Method, string Target, string Host, string? Origin)
{
    private static readonly string[] Versions = ["HTTP/1.1", "HTTP/1.0"];

    /// <summary>What ends a head.</summary>
    public static ReadOnlySpan<byte> End => "\r\n\r\n"u8;

    /// <summary>Reads a head, strictly: what another server might read otherwise is none.</summary>
    /// <param name="bytes">Without <see cref="End"/>.</param>
    /// <returns>Null where it is none, and where a body is to follow.</returns>
    public static RequestHead? Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.ContainsAnyInRange((byte)0x80, (byte)0xFF) || bytes.Contains((byte)0))
        {
            return null;
        }

        var lines = Encoding.ASCII.GetString(bytes).Split("\r\n");
        if (lines.Any(line => line.AsSpan().ContainsAny('\r', '\n')))
        {
            return null;
        }

        var fields = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var line in lines.Skip(1))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon <= 0 || line.AsSpan(0, colon).ContainsAny(' ', '\t'))
            {
                return null;
            }

            // A field that stands twice counts for the three that are looked at: which one is meant, nobody knows.
            var name = line[..colon];
            if (!fields.TryAdd(name, line[(colon + 1)..].Trim(' ', '\t')) && IsLookedAt(name))
            {
                return null;
            }
        }

        return
            lines[0].Split(' ') is [{ Length: > 0 } method, ['/', ..] target, var version]
            && Versions.Contains(version, StringComparer.Ordinal)
            && fields.TryGetValue("Host", out var host)
            && !HasBody(fields)
            ? new RequestHead(method, target, host, fields.GetValueOrDefault("Origin"))
            : null;
    }

    private static bool IsLookedAt(string name) =>
        name.Equals("Host", StringComparison.OrdinalIgnoreCase)
        || name.Equals("Origin", StringComparison.OrdinalIgnoreCase)
        || name.Equals("Content-Length", StringComparison.OrdinalIgnoreCase);

    private static bool HasBody(Dictionary<string, string> fields) =>
        fields.ContainsKey("Transfer-Encoding") || fields.GetValueOrDefault("Content-Length", "0") != "0";
}
