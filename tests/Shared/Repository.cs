using System.Runtime.CompilerServices;

namespace WireText.Testing;

/// <summary>Files of this repository, found from where the tests' source lies. No list of them is ever empty.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>Every right example circuit by name, as whole paths.</summary>
    public static IReadOnlyList<string> Examples => FilesIn("examples", "*.wiring");

    /// <summary>The file names of <see cref="Examples"/>.</summary>
    public static IReadOnlyList<string> ExampleNames => [.. Examples.Select(path => Path.GetFileName(path))];

    /// <summary>Every example with a mistake by name, as whole paths.</summary>
    public static IReadOnlyList<string> Mistakes => FilesIn("examples/mistakes", "*.wiring");

    /// <summary>Right examples and mistakes, as whole paths.</summary>
    public static IReadOnlyList<string> RightAndWrongExamples => FilesBelow("examples", "*.wiring");

    /// <summary>Every wiring file that is formatted: all examples, and the standard parts.</summary>
    public static IReadOnlyList<string> WiringFiles =>
        [
            .. RightAndWrongExamples,
            .. FilesIn("docs/slips", "*.wiring"),
            PathOf("src", "WireText", "Parts", "standard-parts.wiring"),
        ];

    /// <summary>The files of a folder by name, as whole paths. A folder without any is an error.</summary>
    /// <param name="folder">From the root.</param>
    public static IReadOnlyList<string> FilesIn(string folder, string pattern) =>
        Find(folder, pattern, SearchOption.TopDirectoryOnly);

    /// <summary>As <see cref="FilesIn"/>, with those of the folders in it.</summary>
    public static IReadOnlyList<string> FilesBelow(string folder, string pattern) =>
        Find(folder, pattern, SearchOption.AllDirectories);

    private static IReadOnlyList<string> Find(string folder, string pattern, SearchOption depth)
    {
#pragma warning disable RS0030 // The one place where an empty folder is told.
        string[] files = [.. Directory.EnumerateFiles(PathOf(folder), pattern, depth).Order(StringComparer.Ordinal)];
#pragma warning restore RS0030
        return files.Length > 0 ? files : throw new InvalidOperationException($"there is no {folder}/{pattern}");
    }

    private static string FindRoot([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(here, "..", "..", ".."));
}
