namespace WireText.Playground;

/// <summary>The page calls what is exported; there is nothing to do at the start.</summary>
internal static class Program
{
    private static void Main()
    {
        // Everything begins with a text.
    }
}
