using System.CommandLine;
using WireText.Cli.Storage;

namespace WireText.Cli.Arguments;

/// <summary><c>--parts</c>: the folders from which files may include parts, besides their own.</summary>
internal sealed class PartsOption : Option<string[]>
{
    public PartsOption()
        : base("--parts")
    {
        Description = "A folder from which files may include parts; may be given again";
        HelpName = "DIR";
    }

    public FolderSources In(ParseResult parsed, SourceReader reader) => new(parsed.GetValue(this) ?? [], reader);
}
