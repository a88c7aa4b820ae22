namespace WireText.Circuits;

/// <summary>The strings of an instrument.</summary>
public enum StringSet
{
    /// <summary>Six, E2 to E4.</summary>
    Guitar,

    /// <summary>Four, E1 to G2.</summary>
    Bass,
}

/// <summary>The words of the language for sets of strings.</summary>
public static class StringSetWords
{
    public static string Of(StringSet set) => set == StringSet.Bass ? "bass" : "guitar";
}
