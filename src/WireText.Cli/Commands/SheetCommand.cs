using System.CommandLine;
using System.Text;
using WireText.Building;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Documents;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Electrical.BenchPlans;
using WireText.Output;
using WireText.Raster;
using WireText.Sheets;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext sheet</c></summary>
internal sealed class SheetCommand : Command
{
    private const int MostBuilt = 10_000;

    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string?> output = CommonOptions.Output("the sheet");
    private readonly FormatOption format = new(OutputFormat.Md, OutputFormat.Html, OutputFormat.Pdf);
    private readonly PaperOption paper = new();
    private readonly WholeNumberOption count = new("--count", MostBuilt, "N", "How many are built (1)");
    private readonly Option<string?> wires = new("--wires")
    {
        Description = "Write the wire list to a file of its own, as a table with commas",
        HelpName = "OUT",
    };
    private readonly PartsOption parts = new();

    public SheetCommand(CliContext context)
        : base(
            "sheet",
            """
            Writes the build sheet: what to take care of, the drawing with its joints numbered, parts and wires to have,
            and the order of work with a box to tick for each step. Findings go to standard error.

            Example: wiretext sheet guitar.wiring -o sheet.html
            """
        )
    {
        Add(file);
        Add(output);
        Add(format);
        Add(paper);
        Add(count);
        Add(wires);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var target = parsed.GetValue(output) ?? StandardStream.Name;
        var written = format.In(parsed, target);
        var read = ReadWiring.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        var compiled = read.Compiled;
        read.Tell(compiled.Findings.AddRange(compiled.DrawingFindings));
        if (compiled.Circuit is not { Parts.IsEmpty: false } circuit)
        {
            throw new CannotException("there is nothing to build: the circuit has no parts");
        }

        var order = compiled.BaseCircuit is { } stock ? WorkOrder.Between(stock, circuit) : WorkOrder.Of(circuit);
        var contents = new SheetContents(
            circuit,
            order,
            compiled.PictureFor(
                new DrawOptions(LayoutEffort.Full, Theme.Print, read.Source.Name) { Joints = order.Joints }
            ),
            compiled.PlanFor(LayoutEffort.Full)?.Layout,
            read.Source.Name,
            count.In(parsed) ?? 1
        )
        {
            BenchTest = compiled.Study is { } study ? BenchBlocks.Of(BenchPlan.Of(study)) : [],
            IsMod = compiled.BaseCircuit is not null,
        };
        Write(context, BuildSheet.Compose(contents), written, target, read.PaperFor(paper.In(parsed)));
        if (parsed.GetValue(wires) is { } list)
        {
            context.Results.Write(list, Encoding.UTF8.GetBytes(WireListCsv.Write(contents.Wires)));
        }

        return read.Code;
    }

    /// <summary>Markdown cannot hold a drawing: it goes into a file beside, and on standard output it is left out.</summary>
    private static void Write(CliContext context, Document document, OutputFormat format, string target, Paper paper)
    {
        var bytes = format switch
        {
            OutputFormat.Pdf => PdfRenderer.Render(DocumentSetter.Set(document, paper)),
            OutputFormat.Html => Encoding.UTF8.GetBytes(DocumentHtml.Write(document)),
            _ => Encoding.UTF8.GetBytes(DocumentMarkdown.Write(document, WriteFigure(context, document, target))),
        };
        context.Results.Write(target, bytes);
    }

    private static string? WriteFigure(CliContext context, Document document, string target)
    {
        if (target == StandardStream.Name || document.Blocks.OfType<Block.Figure>().FirstOrDefault() is not { } figure)
        {
            return null;
        }

        var beside = Path.ChangeExtension(target, OutputFormat.Svg.Word());
        context.Results.Write(beside, Encoding.UTF8.GetBytes(SvgWriter.Write(figure.Picture)));
        return Path.GetFileName(beside);
    }
}
