using System.Collections.Concurrent;
using WireText.Checks;
using WireText.Cli.Hosting;
using WireText.Cli.Storage;

namespace WireText.Cli.Settings;

/// <summary>Finds the settings that hold for a wiring file: the nearest <c>wiretext.toml</c> in its folder or one above.</summary>
internal sealed class SettingsFiles(ICliHost host, SourceReader reader)
{
    public const string Name = "wiretext.toml";

    private readonly ConcurrentDictionary<string, Lazy<CheckSettings>> byFolder = new(StringComparer.Ordinal);

    /// <summary>The settings for a file; for standard input those of the folder in which the program was started.</summary>
    public CheckSettings For(string file)
    {
        var folder = file == StandardStream.Name ? host.WorkingFolder : Path.GetDirectoryName(reader.FullPath(file));
        return OfFolder(folder);
    }

    private CheckSettings OfFolder(string? folder) =>
        folder is null
            ? CheckSettings.Standard
            : byFolder.GetOrAdd(folder, here => new Lazy<CheckSettings>(() => Read(here))).Value;

    private CheckSettings Read(string folder)
    {
        var path = Path.Combine(folder, Name);
        return FileStatus.Of(path).Kind is not (FileKind.Missing or FileKind.Folder)
            ? SettingsReader.Read(
                reader.Read(path, SourceRole.Settings).Text,
                Path.GetRelativePath(host.WorkingFolder, path)
            )
            : OfFolder(Path.GetDirectoryName(folder));
    }
}
