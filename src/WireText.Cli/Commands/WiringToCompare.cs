using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary>A wiring that is held against another: all of it must be read, or what it says would be missed.</summary>
internal static class WiringToCompare
{
    /// <exception cref="CannotException">A line cannot be read: what it says could not be compared.</exception>
    public static Compilation Read(CliContext context, string file, FolderSources sources)
    {
        var compiled = Compilation.Of(context.Sources.Read(file, SourceRole.Wiring).Text, sources);
        var unread = compiled
            .ReadingFindings.Where(finding =>
                finding is { Severity: Severity.Error, Description.Group: FindingGroup.Text }
            )
            .ToList();
        if (compiled.Circuit is null || unread.Count > 0)
        {
            FindingText.Write([.. unread], context.Error);
            throw new CannotException($"'{file}' cannot be compared: mend what is found first");
        }

        return compiled;
    }
}
