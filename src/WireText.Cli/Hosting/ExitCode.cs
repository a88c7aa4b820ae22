using WireText.Text;

namespace WireText.Cli.Hosting;

/// <summary>What the program says when it ends; the same for all commands.</summary>
internal static class ExitCode
{
    public const int Right = 0;

    /// <summary>Findings that are errors; warnings too when strict.</summary>
    public const int Findings = 1;

    /// <summary>It could not be done: usage, a file that is missing or cannot be read or written.</summary>
    public const int CouldNot = 2;

    /// <summary>The exit code for findings.</summary>
    public static int For(IEnumerable<Finding> findings, bool isStrict) =>
        findings.Any(f => f.Severity >= (isStrict ? Severity.Warning : Severity.Error)) ? Findings : Right;
}
