namespace WireText.Text;

/// <summary>What was read, or why it could not be.</summary>
/// <param name="Value">Null when it could not be read.</param>
/// <param name="Problem">What is wrong, ready to be shown; null when it was read.</param>
public readonly record struct Read<T>(T? Value, string? Problem)
    where T : class;

/// <summary>Makes what was read.</summary>
public static class Read
{
    public static Read<T> Good<T>(T value)
        where T : class => new(value, null);

    public static Read<T> Bad<T>(string problem)
        where T : class => new(null, problem);
}
