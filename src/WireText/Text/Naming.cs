namespace WireText.Text;

/// <summary>Names and words of the language are alike in upper and lower case: <c>Vol.2</c> is <c>vol.2</c>.</summary>
public static class Naming
{
    /// <summary>For tables by name.</summary>
    public static StringComparer Comparer => StringComparer.OrdinalIgnoreCase;

    /// <summary>True when two names mean the same thing; no name is like another only when both are missing.</summary>
    public static bool Alike(string? name, string? other) =>
        string.Equals(name, other, StringComparison.OrdinalIgnoreCase);
}
