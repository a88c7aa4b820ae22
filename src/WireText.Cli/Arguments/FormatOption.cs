using System.CommandLine;
using WireText.Cli.Hosting;

namespace WireText.Cli.Arguments;

/// <summary><c>--format</c> of a result that goes to a file: by the word, else by the ending of the file's name.</summary>
internal sealed class FormatOption : Option<string?>
{
    private readonly OutputFormat[] formats;

    /// <param name="formats">What may be asked for; the first is the one for standard output.</param>
    public FormatOption(params OutputFormat[] formats)
        : base("--format")
    {
        this.formats = formats;
        string[] words = [.. formats.Select(format => format.Word())];
        Description = $"Without it: by the ending of OUT, else {words[0]}";
        HelpName = string.Join('|', words);
        this.AcceptOnlyFromAmong(words);
    }

    /// <summary>What was asked for; no ending is taken for another one of ours.</summary>
    /// <param name="target">Where the result goes; null where it was not said.</param>
    /// <exception cref="CannotException">The target's ending is none of them, and no word says which.</exception>
    public OutputFormat In(ParseResult parsed, string? target)
    {
        if (parsed.GetValue(this) is { } word)
        {
            return formats.First(format => format.Word() == word);
        }

        if (target is null or StandardStream.Name)
        {
            return formats[0];
        }

        var ending = Path.GetExtension(target).TrimStart('.');
        foreach (var format in formats)
        {
            if (string.Equals(format.Ending(), ending, StringComparison.OrdinalIgnoreCase))
            {
                return format;
            }
        }

        var endings = string.Join(", ", formats.SkipLast(1).Select(format => $".{format.Ending()}"));
        throw new CannotException(
            $"'{target}' ends in none of {endings} and .{formats[^1].Ending()}; say which with --format"
        );
    }
}
