using System.Collections.Concurrent;
using WireText.Checks;
using WireText.Cli.Hosting;
using WireText.Cli.Storage;
using WireText.Documents;
using WireText.Electrical.Faults;

namespace WireText.Cli.Settings;

/// <summary>Finds the settings that hold for a wiring file: the nearest <c>wiretext.toml</c> in its folder or one above.</summary>
internal sealed class SettingsFiles(ICliHost host, SourceReader reader)
{
    public const string Name = "wiretext.toml";

    private readonly ConcurrentDictionary<string, Lazy<ShopSettings>> byFolder = new(StringComparer.Ordinal);

    /// <summary>What is made of the checks of a file.</summary>
    public CheckSettings For(string file) => Of(file).Checks;

    /// <summary>What a file is printed on where nothing else is said.</summary>
    public Paper PaperFor(string file) => Of(file).Paper;

    /// <summary>How often faults are met, for what was found in a file.</summary>
    public FaultWeights FaultsFor(string file) => Of(file).Faults;

    /// <summary>The settings for a file; for standard input those of the folder in which the program was started.</summary>
    private ShopSettings Of(string file)
    {
        var folder = file == StandardStream.Name ? host.WorkingFolder : Path.GetDirectoryName(reader.FullPath(file));
        return OfFolder(folder);
    }

    private ShopSettings OfFolder(string? folder) =>
        folder is null
            ? ShopSettings.Standard
            : byFolder.GetOrAdd(folder, here => new Lazy<ShopSettings>(() => Read(here))).Value;

    private ShopSettings Read(string folder)
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
