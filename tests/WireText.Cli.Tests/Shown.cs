using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>Wiring files of the repository that tests run every writer on.</summary>
internal static class Shown
{
    /// <summary>The right circuits and the mistakes, in order.</summary>
    public static string[] Examples { get; } = [.. Repository.RightAndWrongExamples];

    /// <summary>The path of one of them, by its name in the folder of examples.</summary>
    public static string Example(string name) => Repository.PathOf(["examples", .. name.Split('/')]);
}
