using System.CommandLine;
using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Documents;
using WireText.Output;
using WireText.Raster;
using WireText.Templates;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext template</c></summary>
internal sealed class TemplateCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string?> output = CommonOptions.Output("the template");
    private readonly FormatOption format = new(OutputFormat.Pdf, OutputFormat.Csv);
    private readonly PaperOption paper = new();
    private readonly ChoiceOption<TemplateSide> side = new(
        "--from",
        "The side that it is seen from: the front is the drawing from behind, mirrored",
        ("front", TemplateSide.Front),
        ("behind", TemplateSide.Behind)
    );
    private readonly Option<string?> holes = new("--holes")
    {
        Description = "Write the list of holes to a file of its own, as a table with commas",
        HelpName = "OUT",
    };
    private readonly PartsOption parts = new();

    public TemplateCommand(CliContext context)
        : base(
            "template",
            """
            Writes a template to drill by: the holes of all parts that have a place, at true size, with a bar
            that proves the print, and the list of them. Larger than the paper it goes over several pages.

            Example: wiretext template guitar.wiring -o template.pdf
            """
        )
    {
        Add(file);
        Add(output);
        Add(format);
        Add(paper);
        Add(side);
        Add(holes);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var target = parsed.GetValue(output) ?? StandardStream.Name;
        var written = format.In(parsed, target);
        var printedOn = paper.ForPdf(parsed, written == OutputFormat.Pdf);
        var read = ReadWiring.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        read.Tell(read.Compiled.Findings);
        if (read.Compiled.Circuit is not { } circuit)
        {
            throw new CannotException("there is nothing to drill: the circuit cannot be read");
        }

        var template = TemplateHoles.Of(circuit, side.In(parsed));
        TellWhatIsMissing(context, template);
        RefuseNothing(template);
        var list = Encoding.UTF8.GetBytes(HoleListCsv.Write(template));
        context.Results.Write(
            target,
            written == OutputFormat.Csv
                ? list
                : Pages(DrillingTemplate.Compose(circuit, template, read.Source.Name), read.PaperFor(printedOn))
        );
        if (parsed.GetValue(holes) is { } beside)
        {
            context.Results.Write(beside, list);
        }

        return read.Code;
    }

    private static byte[] Pages(Document document, Paper paper) =>
        PdfRenderer.Render(DocumentSetter.Set(document, paper));

    private static void TellWhatIsMissing(CliContext context, TemplateHoles template)
    {
        foreach (var name in template.Unknown)
        {
            context.Tell($"the hole of '{name}' is not known; write its size on its line, such as hole=9.5mm");
        }

        foreach (var name in template.NotPlaced)
        {
            context.Tell($"'{name}' has no place and is not on the template; write: place {name} at X,Y");
        }
    }

    /// <exception cref="CannotException">No hole has a place.</exception>
    private static void RefuseNothing(TemplateHoles template)
    {
        if (template.Placed.IsEmpty)
        {
            throw new CannotException(
                template.NotPlaced.IsEmpty
                    ? "there is nothing to drill: no part of the circuit sits in a hole"
                    : $"no part that sits in a hole has a place: write a line for each, such as place {template.NotPlaced[0]} at 40,60"
            );
        }
    }
}
