namespace WireText.Text;

/// <summary>What was read, or why it could not be.</summary>
/// <param name="Value">Null when it could not be read.</param>
/// <param name="Problem">What is wrong, ready to be shown; null when it was read.</param>
public readonly record struct Read<T>(T? Value, string? Problem)
    where T : class
{
    public static Read<T> Good(T value) => new(value, null);

    public static Read<T> Bad(string problem) => new(null, problem);
}
