namespace WireText.Steps;

/// <summary>A value that is worked out when it is first asked for, once, and kept. Safe to ask from several threads.</summary>
/// <remarks>Work that is cancelled or fails leaves nothing: who asks next starts it anew.</remarks>
public sealed class Step<T>(Func<CancellationToken, T> work)
{
    private readonly Lock gate = new();
    private volatile Done? done;

    /// <summary>True when the value is there: asking costs nothing.</summary>
    public bool IsDone => done is not null;

    public T Get(CancellationToken cancellation)
    {
        if (done is { } already)
        {
            return already.Value;
        }

        lock (gate)
        {
            cancellation.ThrowIfCancellationRequested();
            return (done ??= new Done(work(cancellation))).Value;
        }
    }

    private sealed record Done(T Value);
}
