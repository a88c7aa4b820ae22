namespace WireText.Testing;

/// <summary>Programs of the machine that tests need.</summary>
internal static class Programs
{
    /// <summary>The whole path of the first that is installed; null for none.</summary>
    public static string? Find(params string[] names) =>
        names.SelectMany(name => Folders.Select(folder => Path.Combine(folder, name))).FirstOrDefault(File.Exists);

    private static IEnumerable<string> Folders =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(
            Path.PathSeparator,
            StringSplitOptions.RemoveEmptyEntries
        );
}
