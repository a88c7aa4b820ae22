using System.Text.Json;

namespace WireText.Cli.Tests;

/// <summary>Reads the events that a watched file tells, as a page does.</summary>
internal sealed class EventReader : IDisposable
{
    private readonly HttpClient client = new();
    private readonly StreamReader lines;

    public EventReader(Watching watching)
    {
        client.Timeout = Watching.Longest;
        lines = new StreamReader(client.GetStreamAsync(new Uri(watching.Address + "events")).GetAwaiter().GetResult());
    }

    /// <summary>Passes over events until one of that kind is as it should be.</summary>
    public JsonElement Next(string kind, Predicate<JsonElement> isIt)
    {
        using var patience = new CancellationTokenSource(Watching.Longest);
        while (true)
        {
            var (name, told) = Next(patience.Token);
            if (name == kind && isIt(told))
            {
                return told;
            }
        }
    }

    /// <summary>The next event, whatever it is.</summary>
    public (string Kind, JsonElement Told) Next(CancellationToken patience = default)
    {
        var kind = "";
        while (true)
        {
            var line = lines.ReadLineAsync(patience).AsTask().GetAwaiter().GetResult();
            Assert.NotNull(line);
            if (line.StartsWith("event: ", StringComparison.Ordinal))
            {
                kind = line["event: ".Length..];
            }
            else if (line.StartsWith("data: ", StringComparison.Ordinal))
            {
                using var told = JsonDocument.Parse(line["data: ".Length..]);
                return (kind, told.RootElement.Clone());
            }
        }
    }

    /// <summary>The picture in whose drawing a text stands.</summary>
    public JsonElement PictureWith(string text) => Next("picture", picture => Draws(picture, text));

    public static bool Draws(JsonElement picture, string text) =>
        picture.TryGetProperty("drawing", out var drawing)
        && drawing.GetString()!.Contains(text, StringComparison.Ordinal);

    public void Dispose()
    {
        lines.Dispose();
        client.Dispose();
    }
}
