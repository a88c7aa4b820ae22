using System.Text;

namespace WireText.Cli.Serving;

/// <summary>What is told to pages as it happens. Of each kind only the latest is kept: who comes late, or wakes up, is told how it stands.</summary>
internal sealed class LiveFeed
{
    private readonly Lock gate = new();
    private readonly List<string> kinds = [];
    private readonly Dictionary<string, Told> latest = new(StringComparer.Ordinal);
    private TaskCompletionSource next = Fresh();
    private long count;

    /// <param name="kind">The name of the event. Kinds are told in the order in which they first came.</param>
    /// <param name="line">What is told, in one line.</param>
    /// <param name="ends">A kind whose latest is true no more; null for none.</param>
    public void Publish(string kind, string line, string? ends = null)
    {
        lock (gate)
        {
            if (!kinds.Contains(kind, StringComparer.Ordinal))
            {
                kinds.Add(kind);
            }

            if (ends is not null)
            {
                latest.Remove(ends);
            }

            latest[kind] = new Told(++count, Encoding.UTF8.GetBytes($"event: {kind}\ndata: {line}\n\n"));
            next.SetResult();
            next = Fresh();
        }
    }

    /// <summary>What is new to who knows everything up to a number.</summary>
    /// <returns>The number up to which is known then, the events as they are sent, and a task that ends when there are more.</returns>
    public (long Known, IReadOnlyList<byte[]> Events, Task More) After(long known)
    {
        lock (gate)
        {
            return (
                count,
                [
                    .. kinds
                        .Select(kind => latest.GetValueOrDefault(kind))
                        .OfType<Told>()
                        .Where(told => told.Number > known)
                        .Select(told => told.Event),
                ],
                next.Task
            );
        }
    }

    private static TaskCompletionSource Fresh() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private sealed record Told(long Number, byte[] Event);
}
