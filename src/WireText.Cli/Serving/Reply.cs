using System.Globalization;
using System.Text;
using WireText.Pages;

namespace WireText.Cli.Serving;

/// <summary>What is answered: a status (RFC 9110), and what comes with it.</summary>
/// <param name="Type">The media type.</param>
internal sealed record Reply(int Status, string Type, byte[] Content)
{
    private const string Plain = "text/plain; charset=utf-8";

    /// <summary>The start of what is told as it happens: it has no end.</summary>
    public static Reply Events { get; } = new(200, "text/event-stream", []);

    public static Reply Of(PageFile file) => new(200, file.Type, Encoding.UTF8.GetBytes(file.Content));

    /// <param name="words">Why nothing is given.</param>
    public static Reply Refusal(int status, string words) => new(status, Plain, Encoding.UTF8.GetBytes(words + "\n"));

    /// <summary>The bytes that go out.</summary>
    public byte[] Encoded()
    {
        var head = new StringBuilder();
        head.Append(CultureInfo.InvariantCulture, $"HTTP/1.1 {Status} {WordFor(Status)}\r\n");
        Add("Content-Type", Type);
        if (this != Events)
        {
            Add("Content-Length", Content.Length.ToString(CultureInfo.InvariantCulture));
        }

        if (Status == 405)
        {
            Add("Allow", "GET");
        }

        Add("Cache-Control", "no-store");
        Add("Connection", "close");
        Add("Content-Security-Policy", LivePage.Policy);
        Add("Cross-Origin-Opener-Policy", "same-origin");
        Add("Cross-Origin-Resource-Policy", "same-origin");
        Add("Referrer-Policy", "no-referrer");
        Add("X-Content-Type-Options", "nosniff");
        head.Append("\r\n");
        return [.. Encoding.ASCII.GetBytes(head.ToString()), .. Content];

        void Add(string name, string value) => head.Append(name).Append(": ").Append(value).Append("\r\n");
    }

    private static string WordFor(int status) =>
        status switch
        {
            200 => "OK",
            400 => "Bad Request",
            403 => "Forbidden",
            404 => "Not Found",
            405 => "Method Not Allowed",
            431 => "Request Header Fields Too Large",
            _ => "Service Unavailable",
        };
}
