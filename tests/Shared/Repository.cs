using System.Runtime.CompilerServices;

namespace WireText.Testing;

/// <summary>Files of this repository, found from where the tests' source lies.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>Every example circuit, the right ones first by name, as paths relative to the root.</summary>
    public static IEnumerable<string> Examples =>
        Directory.EnumerateFiles(PathOf("examples"), "*.wiring").Order(StringComparer.Ordinal);

    private static string FindRoot([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
