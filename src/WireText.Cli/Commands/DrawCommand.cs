using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Traces;
using WireText.Measuring;
using WireText.Output;
using WireText.Raster;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext draw</c></summary>
internal static class DrawCommand
{
    public static Command Create(CliContext context)
    {
        var file = new Argument<string>("FILE") { Description = "A wiring file; - is standard input" };
        var output = new Option<string>("--output", "-o")
        {
            Description = "Where the picture goes; - is standard output. Without it: beside FILE",
            HelpName = "OUT",
        };
        var format = new Option<string>("--format")
        {
            Description = "Without it: by the ending of OUT, else svg",
            HelpName = "svg|png|pdf",
        }.AcceptOnlyFromAmong("svg", "png", "pdf");
        var scale = new Option<string?>("--scale")
        {
            Description = "Paper to real thing (1:1): SVG and PDF print true to size",
            HelpName = "N:M",
        };
        var width = new Option<int?>("--width") { Description = "Width of a PNG in pixels", HelpName = "PX" };
        var dpi = new Option<int?>("--dpi") { Description = "Pixels to the inch of a PNG (200)", HelpName = "N" };
        var transparent = new Option<bool>("--transparent") { Description = "No background in a PNG" };
        var measure = new Option<bool>("--measure")
        {
            Description = "Write as JSON what a measuring tool reads from the finished picture",
        };
        var effort = CommonOptions.Choice(
            "--effort",
            "How long the layout looks for a plainer picture",
            "full",
            "quick"
        );
        var theme = CommonOptions.Choice("--theme", "The colours of the picture", "light", "dark", "print");
        var trace = new Option<string?>("--trace")
        {
            Description = "Follow the net of a lug, or the signal in a state (sel=neck); the rest is faded",
            HelpName = "LUG|STATE",
        };
        var views = new Option<string?>("--views")
        {
            Description = "One sheet with a small picture for each position",
            HelpName = "positions",
        }.AcceptOnlyFromAmong("positions");
        var parts = CommonOptions.PartsFolders();
        var command = new Command(
            "draw",
            """
            Draws the wiring as it looks from behind. A mistake is drawn and marked. Pages are in
            millimetres: on an SVG or PDF printed at 100 %, parts are as large as the real ones.

            Example: wiretext draw guitar.wiring -o guitar.png --width 1920
            """
        )
        {
            file,
            output,
            format,
            scale,
            width,
            dpi,
            transparent,
            measure,
            effort,
            theme,
            trace,
            views,
            parts,
        };
        command.SetAction(parsed =>
        {
            var source = parsed.GetValue(file)!;
            var target = parsed.GetValue(output);
            var written = FormatOf(parsed.GetValue(format), target);
            if (written != PictureFormat.Png && FirstGiven(parsed, width, dpi, transparent) is { } option)
            {
                throw new CannotException($"{option} is for a PNG; add --format png or name a .png with -o");
            }

            var request = new Request(
                source,
                target ?? DefaultTarget(source, written, parsed.GetValue(measure)),
                written,
                parsed.GetValue(scale) is { } ratio ? ScaleRatio.Read(ratio) : 1,
                new PngOptions
                {
                    WidthPixels = CommonOptions.InRange(parsed.GetValue(width), PngRenderer.LongestSide, "--width"),
                    Dpi = CommonOptions.InRange(parsed.GetValue(dpi), MostDpi, "--dpi") ?? new PngOptions().Dpi,
                    IsTransparent = parsed.GetValue(transparent),
                },
                parsed.GetValue(measure),
                parsed.GetValue(effort) == "quick" ? LayoutEffort.Quick : LayoutEffort.Full,
                ThemeNamed(parsed.GetValue(theme)!),
                parsed.GetValue(trace),
                parsed.GetValue(views) is not null
            );
            return Run(context, request, new FolderSources(parsed.GetValue(parts) ?? [], context.Host));
        });
        return command;
    }

    private const int MostDpi = 2400;

    private const int MostViews = 36;

    private static int Run(CliContext context, Request request, FolderSources sources)
    {
        RefuseConfusion(request);
        var source = Files.Read(request.Source, context.Host);
        var fileName = request.Source == Files.Standard ? null : Path.GetFileName(source.Path);
        var settings = new SettingsFiles(context.Host).For(request.Source);
        var laid = WiringCompiler.Lay(source, sources, request.Effort, settings);
        var options = new DrawOptions(request.Effort, request.Theme, fileName)
        {
            Trace = TraceIn(laid, request.Trace),
            Views = request.HasViews ? ViewsOf(laid) : [],
            Scale = request.Scale,
        };
        var drawn = WiringCompiler.Paint(laid, options);
        FindingText.Write(drawn.Compiled.Findings, context.Error, inColour: false);
        if (drawn.Svg is not { } svg)
        {
            context.Error.WriteLine("wiretext: there is no circuit to draw");
            return ExitCode.CouldNot;
        }

        if (drawn.Laid.Layout is { } layout && ArrangeLines.Write(layout).Length > 0)
        {
            context.Error.WriteLine(
                $"{source.Path}: info: places were searched for; 'wiretext arrange {source.Path} --write' keeps them, so that later changes move no part"
            );
        }

        if (request.Target is { } target)
        {
            Files.Write(target, Content(svg, request), context.Host);
        }

        if (request.IsMeasured)
        {
            context.Output.Write(PictureMeasurer.Measure(svg, WiresOf(drawn.Compiled.Circuit!)).ToJson());
        }

        return ExitCode.For(drawn.Compiled.Findings, isStrict: false);
    }

    private static Trace? TraceIn(LaidResult laid, string? text)
    {
        if (text is null || laid.Compiled.Circuit is not { } circuit)
        {
            return null;
        }

        var read = TraceReader.Read(circuit, text);
        return read.Value ?? throw new CannotException($"--trace {text}: {read.Problem}");
    }

    private static ImmutableArray<SheetView> ViewsOf(LaidResult laid)
    {
        if (laid.Compiled.Circuit is not { } circuit)
        {
            return [];
        }

        var network = Network.Of(circuit) ?? throw new CannotException("the circuit has no output jack to listen at");
        var views = PositionViews.Of(network, PositionTable.Of(new Analyst(network)));
        return views.Length is > 0 and <= MostViews
            ? views
            : throw new CannotException(
                $"a sheet has {MostViews} views at most, and this circuit {views.Length} positions; draw those that matter with --trace"
            );
    }

    private static byte[] Content(string svg, Request request)
    {
        try
        {
            return request.Format switch
            {
                PictureFormat.Png => PngRenderer.Render(svg, request.Png),
                PictureFormat.Pdf => PdfRenderer.Render(svg),
                _ => Encoding.UTF8.GetBytes(svg),
            };
        }
        catch (PictureSizeException e)
        {
            throw new CannotException(e.Message);
        }
    }

    private static string? FirstGiven(ParseResult parsed, params Option[] options) =>
        options.FirstOrDefault(option => parsed.GetResult(option) is { Implicit: false })?.Name;

    /// <summary>One place cannot take two things.</summary>
    private static void RefuseConfusion(Request request)
    {
        if (request is { HasViews: true, Trace: not null } or { HasViews: true, IsMeasured: true })
        {
            throw new CannotException("--views draws its own traces and cannot be measured; leave the other out");
        }

        if (request is { IsMeasured: true, Target: Files.Standard })
        {
            throw new CannotException(
                "the picture and its measure cannot both go to standard output; name a file with -o"
            );
        }

        if (request.Target is { } target && Files.IsSame(request.Source, target))
        {
            throw new CannotException($"'{target}' is the wiring itself; name another file with -o");
        }
    }

    private static ExpectedWire[] WiresOf(Circuit circuit) =>
        [
            .. circuit.Wires.Select(wire => new ExpectedWire(
                wire.Id,
                wire.From < 0 ? null : circuit.NameOf(wire.From),
                wire.To < 0 ? null : circuit.NameOf(wire.To)
            )),
        ];

    /// <summary>By the option, else by the ending of the target; no other ending is taken for one of ours.</summary>
    private static PictureFormat FormatOf(string? format, string? target)
    {
        var ending = target is null or Files.Standard ? ".svg" : Path.GetExtension(target);
        return (format is null ? ending : $".{format}").ToUpperInvariant() switch
        {
            ".PNG" => PictureFormat.Png,
            ".PDF" => PictureFormat.Pdf,
            ".SVG" => PictureFormat.Svg,
            _ => throw new CannotException($"'{target}' ends in none of .svg, .png and .pdf; say which with --format"),
        };
    }

    /// <summary>Beside the source; to standard output when the source is standard input; nowhere when only measured.</summary>
    private static string? DefaultTarget(string source, PictureFormat format, bool isMeasured) =>
        isMeasured ? null
        : source == Files.Standard ? Files.Standard
        : Path.ChangeExtension(
            source,
            format switch
            {
                PictureFormat.Png => ".png",
                PictureFormat.Pdf => ".pdf",
                _ => ".svg",
            }
        );

    private static Theme ThemeNamed(string name) =>
        name switch
        {
            "dark" => Theme.Dark,
            "print" => Theme.Print,
            _ => Theme.Light,
        };

    private sealed record Request(
        string Source,
        string? Target,
        PictureFormat Format,
        double Scale,
        PngOptions Png,
        bool IsMeasured,
        LayoutEffort Effort,
        Theme Theme,
        string? Trace,
        bool HasViews
    );
}
