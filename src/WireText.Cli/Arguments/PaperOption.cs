using System.CommandLine;
using WireText.Cli.Hosting;
using WireText.Documents;

namespace WireText.Cli.Arguments;

/// <summary><c>--paper</c>: what a PDF is printed on.</summary>
internal sealed class PaperOption : Option<string?>
{
    public PaperOption()
        : base("--paper")
    {
        Description = "Paper of a PDF, by name or in millimetres";
        HelpName = string.Join('|', Paper.Named.Select(paper => paper.Name)) + "|WxH";
    }

    /// <summary>What is told who gives it for something else.</summary>
    public const string ForPdfAlone = "--paper is for a PDF; add --format pdf or name a .pdf with -o";

    /// <summary>The paper; null when it was not given.</summary>
    /// <exception cref="CannotException">There is no such paper, or it was given and no PDF is written.</exception>
    public Paper? ForPdf(ParseResult parsed, bool isPdf) =>
        In(parsed) is { } paper ? (isPdf ? paper : throw new CannotException(ForPdfAlone)) : null;

    /// <summary>The paper; null when it was not given.</summary>
    /// <exception cref="CannotException">There is no such paper.</exception>
    public Paper? In(ParseResult parsed)
    {
        if (parsed.GetValue(this) is not { } text)
        {
            return null;
        }

        var read = Paper.Read(text);
        return read.Value ?? throw new CannotException($"--paper {text}: {read.Problem}");
    }
}
