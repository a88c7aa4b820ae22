using System.Reflection;

namespace WireText.Cli.Hosting;

internal static class ProgramVersion
{
    /// <summary>The version of the program, as in <c>0.1.0</c>.</summary>
    public static string Text { get; } =
        typeof(ProgramVersion)
            .Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()
            ?.InformationalVersion
        ?? "0";
}
