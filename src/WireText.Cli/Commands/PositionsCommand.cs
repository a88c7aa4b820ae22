using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Documents;
using WireText.Electrical.Positions;
using WireText.Output;
using WireText.Raster;
using WireText.Sheets;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext positions</c></summary>
internal sealed class PositionsCommand : Command
{
    private const string Html = "html";
    private const string Pdf = "pdf";

    /// <summary>What a file's ending says where no option does.</summary>
    private static readonly ImmutableArray<(string Ending, string Word)> Endings =
    [
        (".json", "json"),
        (".csv", "csv"),
        (".md", "markdown"),
        (".html", Html),
        (".pdf", Pdf),
    ];

    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly ChoiceOption<Form?> format = new(
        "--format",
        "How the table is written",
        ("text", new Form(PositionText.Write, IsData: false)),
        ("json", new Form(PositionData.WriteJson, IsData: true)),
        ("csv", new Form(PositionData.WriteCsv, IsData: true)),
        ("markdown", new Form(PositionText.WriteMarkdown, IsData: false)),
        // What is set as a document is no text.
        (Html, null),
        (Pdf, null)
    );
    private readonly Option<string?> output = CommonOptions.Output("the table");
    private readonly PaperOption paper = new();
    private readonly ChoiceOption<LevelReference> level = new(
        "--level",
        "What 0 dB is: the loudest line, or what the strings induce in one coil, so that two files can be compared",
        ("loudest", LevelReference.LoudestRow),
        ("coil", LevelReference.OneCoil)
    );
    private readonly Option<bool> expect = new("--expect")
    {
        Description = "Write expect lines instead, which pin what the circuit does now, ready to paste",
    };
    private readonly PartsOption parts = new();

    public PositionsCommand(CliContext context)
        : base(
            "positions",
            """
            Says what every position really does: what is heard and how it is joined, how loud, whether hum cancels, what
            an ohmmeter on the plug reads, and where the peak lies. Findings go to standard error.

            Example: wiretext positions guitar.wiring
            """
        )
    {
        Add(file);
        Add(output);
        Add(format);
        Add(paper);
        Add(level);
        Add(expect);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var target = parsed.GetValue(output) ?? StandardStream.Name;
        var word = WordIn(parsed, target);
        var printedOn = paper.ForPdf(parsed, word == Pdf);
        var read = ReadCircuit.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        var found = read.Study.PositionsAtJacks;
        var table = level.In(parsed) == LevelReference.OneCoil ? found.AgainstOneCoil() : found;
        var form = parsed.GetValue(expect)
            ? new Form(_ => ExpectLines.Write(read.Study), IsData: true)
            : format.Of(word);
        if (form is null)
        {
            var document = PositionBlocks.Of(table, CircuitMark.Foot(read.FileName, read.Circuit));
            context.Results.Write(
                target,
                word == Pdf
                    ? PdfRenderer.Render(DocumentSetter.Set(document, read.PaperFor(printedOn)))
                    : Encoding.UTF8.GetBytes(DocumentHtml.Write(document))
            );
            return read.Code;
        }

        if (target != StandardStream.Name)
        {
            context.Results.Write(target, Encoding.UTF8.GetBytes(form.Write(table)));
        }
        else
        {
            (form.IsData ? context.Data : context.Output).Write(form.Write(table));
        }

        return read.Code;
    }

    /// <summary>What was asked for, else what the file's ending says, else text.</summary>
    private string WordIn(ParseResult parsed, string target) =>
        parsed.GetResult(format) is { Implicit: false }
            ? parsed.GetValue(format)!
            : Endings.FirstOrDefault(one => target.EndsWith(one.Ending, StringComparison.OrdinalIgnoreCase)).Word
                ?? parsed.GetValue(format)!;

    /// <param name="IsData">True for what other programs read, the lines of wiring among them.</param>
    private sealed record Form(Func<PositionTable, string> Write, bool IsData);
}
