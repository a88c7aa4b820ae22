using System.Collections.Immutable;
using System.CommandLine;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Comparing;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Electrical.Traces;
using WireText.Measuring;
using WireText.Output;
using WireText.Sheets;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext draw</c></summary>
internal sealed class DrawCommand : Command
{
    private const int MostViews = 36;

    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string?> output = CommonOptions.OutputTo(
        "Where the picture goes; - is standard output. Without it: beside FILE"
    );
    private readonly FormatOption format = new(OutputFormat.Svg, OutputFormat.Png, OutputFormat.Pdf);
    private readonly ScaleOption scale = new();
    private readonly PaperOption paper = new();
    private readonly Option<bool> fit = new("--fit")
    {
        Description = "With --paper: smaller, so that it fits on one page",
    };
    private readonly PngArguments png = new();
    private readonly Option<bool> measure = new("--measure")
    {
        Description = "Write as JSON what a measuring tool reads from the finished picture",
    };
    private readonly ChoiceOption<LayoutEffort> effort = CommonOptions.Effort();
    private readonly ChoiceOption<Theme> theme = CommonOptions.Theme("picture");
    private readonly Option<string?> trace = new("--trace")
    {
        Description =
            "Follow the net of a lug, or the signal in a state (sel=neck; main: sel=neck for one of two jacks); the rest is faded",
        HelpName = "LUG|STATE",
    };
    private readonly Option<string?> views = new Option<string?>("--views")
    {
        Description = "One sheet with a small picture for each position",
        HelpName = "positions",
    }.AcceptOnlyFromAmong("positions");
    private readonly Option<string?> against = new("--against")
    {
        Description = "Show what changes against an earlier wiring: what comes off, what is new, what stays",
        HelpName = "OLD",
    };
    private readonly Option<bool> clean = new("--clean")
    {
        Description = "For a customer: no findings, signs for heat or lengths to cut",
    };
    private readonly FrameArguments frames = new();
    private readonly PartsOption parts = new();

    public DrawCommand(CliContext context)
        : base(
            "draw",
            """
            Draws the wiring as it looks from behind. A mistake is drawn and marked. Pages are in
            millimetres: on an SVG or PDF printed at 100 %, parts are as large as the real ones.

            Example: wiretext draw guitar.wiring -o guitar.png --width 1920
                     wiretext draw guitar.wiring --frames video --theme dark
            """
        )
    {
        Add(file);
        Add(output);
        Add(format);
        Add(scale);
        Add(paper);
        Add(fit);
        png.AddTo(this);
        Add(measure);
        Add(effort);
        Add(theme);
        Add(trace);
        Add(views);
        Add(against);
        Add(clean);
        frames.AddTo(this);
        Add(parts);
        SetAction(parsed =>
            FramesIn(parsed) is { } request
                ? new FrameRun(context, request, effort.In(parsed), theme.In(parsed)).Of(
                    parsed.GetRequiredValue(file),
                    parts.In(parsed, context.Sources),
                    png.In(parsed)
                )
                : Run(context, RequestIn(parsed), parts.In(parsed, context.Sources))
        );
    }

    private FrameRequest? FramesIn(ParseResult parsed) =>
        frames.In(parsed, [output, format, scale, paper, fit, measure, trace, views, against, clean, .. png.Sizes]);

    private DrawRequest RequestIn(ParseResult parsed)
    {
        var source = parsed.GetRequiredValue(file);
        var target = parsed.GetValue(output);
        var written = format.In(parsed, target);
        png.RefuseFor(written, parsed);
        return new DrawRequest(
            source,
            target ?? DefaultTarget(source, written, parsed.GetValue(measure)),
            written,
            scale.In(parsed),
            paper.In(parsed),
            parsed.GetValue(fit),
            png.In(parsed),
            parsed.GetValue(measure),
            effort.In(parsed),
            theme.In(parsed),
            parsed.GetValue(trace),
            parsed.GetValue(views) is not null,
            parsed.GetValue(against),
            parsed.GetValue(clean)
        );
    }

    private static int Run(CliContext context, DrawRequest request, FolderSources sources)
    {
        request.RefuseConfusion();
        var source = context.Sources.Read(request.Source, SourceRole.Wiring);
        var settings = new SettingsFiles(context.Host, context.Sources).For(request.Source);
        var compiled = Compilation.Of(source.Text, sources, settings: settings);
        var options = new DrawOptions(request.Effort, request.Theme, source.Name)
        {
            Trace = TraceIn(compiled, request.Trace),
            Views = request.HasViews ? ViewsOf(compiled) : [],
            Scale = request.Scale,
            ForBench = !request.IsClean,
        };
        var findings = compiled.Findings.AddRange(compiled.DrawingFindings);
        FindingText.Write(findings, context.Error);
        if (compiled.Circuit is not { Parts.IsEmpty: false } circuit)
        {
            throw new CannotException($"there is nothing to draw: {WhyEmpty(source, findings)}");
        }

        if (compiled.PlanFor(request.Effort) is not { } plan)
        {
            throw new CannotException("the circuit is too large to draw");
        }

        var picture = request.Against is { } old
            ? PaintAgainst(WiringToCompare.Read(context, old, sources), Path.GetFileName(old))
            : compiled.PictureFor(options)!;
        var svg = SvgWriter.Write(picture, request.Scale);
        if (ArrangeLines.Write(plan.Layout).Length > 0)
        {
            context.Error.WriteLine(
                $"{source.Text.Path}: places were searched for; 'wiretext arrange {source.Text.Path} --write' keeps them, so that later changes move no part"
            );
        }

        if (request.Target is { } target)
        {
            context.Results.Write(
                target,
                request.Paper is { } paper
                    ? PictureBytes.OnPaper(picture, paper, request, CircuitMark.Foot(source.Name, circuit))
                    : PictureBytes.Of(svg, request.Format, request.Png)
            );
            if (target != StandardStream.Name)
            {
                context.Error.WriteLine($"{target} is written");
            }
        }

        if (request.IsMeasured)
        {
            context.Data.Write(PictureMeasurer.Measure(svg, WiresOf(circuit)).ToJson());
        }

        return ExitCode.For(findings, isStrict: false);

        Picture PaintAgainst(Compilation old, string name)
        {
            var overlay = Overlay.Of(CircuitComparison.Of(old.Circuit!, circuit));
            var both =
                plan.Under(overlay, request.Effort, CancellationToken.None)
                ?? throw new CannotException("the two circuits together are too large to draw");
            return both.Paint(
                overlay.Circuit,
                compiled.Findings,
                options with
                {
                    Changes = new ChangesShown(overlay, name),
                }
            );
        }
    }

    private static string WhyEmpty(SourceFile source, ImmutableArray<Finding> findings) =>
        findings.Any(finding => finding.Severity == Severity.Error)
            ? $"no line of '{source.Path}' that could be read has a part in it"
            : $"'{source.Path}' has no parts; a line such as: pickup neck single-coil makes one";

    private static Trace? TraceIn(Compilation compiled, string? text)
    {
        if (text is null || compiled.Circuit is not { } circuit)
        {
            return null;
        }

        var read = TraceReader.Read(circuit, compiled.Study, text);
        return read.Value ?? throw new CannotException($"--trace {text}: {read.Problem}");
    }

    private static ImmutableArray<SheetView> ViewsOf(Compilation compiled)
    {
        if (compiled.Circuit is not { } circuit)
        {
            return [];
        }

        var study = compiled.Study ?? throw new CannotException("the circuit has no output jack to listen at");
        var sheet = PositionViews.Of(circuit, study);
        return sheet.Length is > 0 and <= MostViews
            ? sheet
            : throw new CannotException(
                $"a sheet has {MostViews} views at most, and this circuit {sheet.Length} positions; draw those that matter with --trace"
            );
    }

    private static ExpectedWire[] WiresOf(Circuit circuit) =>
        [
            .. circuit.Wires.Select(wire => new ExpectedWire(
                wire.Id,
                wire.From < 0 ? null : circuit.NameOf(wire.From),
                wire.To < 0 ? null : circuit.NameOf(wire.To)
            )),
        ];

    /// <summary>Beside the source; to standard output when the source is standard input; nowhere when only measured.</summary>
    private static string? DefaultTarget(string source, OutputFormat format, bool isMeasured) =>
        isMeasured ? null
        : source == StandardStream.Name ? StandardStream.Name
        : Path.ChangeExtension(source, format.Word());
}
