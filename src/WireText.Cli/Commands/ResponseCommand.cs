using System.CommandLine;
using System.Text;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Drawing.Charts;
using WireText.Drawing.Lettering;
using WireText.Electrical.Responses;
using WireText.Output;
using WireText.Raster;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext response</c></summary>
internal sealed class ResponseCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string[]> at = CommonOptions.At<string[]>("given again: another curve");
    private readonly Option<string[]> sweep = new("--sweep")
    {
        Description = "A dial at N travels, or each position of a switch: tone=0..10:5, or sel",
        HelpName = "CONTROL[=A..B:N]",
    };
    private readonly Option<string[]> whatIf = new("--what-if")
    {
        Description = "Other values beside those that are wired, such as dark=22n or cable=700p; may be given again",
        HelpName = "NAME=VALUE,...",
    };
    private readonly FormatOption format = new(
        OutputFormat.Csv,
        OutputFormat.Json,
        OutputFormat.Svg,
        OutputFormat.Png,
        OutputFormat.Pdf
    );
    private readonly Option<string?> output = CommonOptions.Output("the response");
    private readonly ChoiceOption<Theme> theme = CommonOptions.Theme("chart");
    private readonly PngArguments png = new();
    private readonly JackOption jack = new();
    private readonly PartsOption parts = new();

    public ResponseCommand(CliContext context)
        : base(
            "response",
            """
            Computes the level at the jack from 20 Hz to 20 kHz, as numbers or as a chart; on a terminal a small one in
            letters.

            Example: wiretext response guitar.wiring -o guitar.svg
            """
        )
    {
        Add(file);
        Add(at);
        Add(sweep);
        Add(whatIf);
        Add(format);
        Add(output);
        Add(theme);
        png.AddTo(this);
        Add(jack);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var target = parsed.GetValue(output);
        var isSketch = target is null && parsed.GetResult(format) is null && context.Host.IsTerminal;
        var request = RequestIn(parsed, format.In(parsed, target));
        var read = ReadCircuit
            .From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context)
            .At(jack, parsed);
        var study = Study(read, request);
        if (isSketch)
        {
            context.Output.Write(ResponseSketch.Draw(study));
            context.Output.WriteLine("--format csv gives the numbers, -o FILE.svg a chart");
        }
        else
        {
            context.Results.Write(target ?? StandardStream.Name, Content(study, request, read.FileName));
            if (target is not null and not StandardStream.Name)
            {
                context.Error.WriteLine($"{target} is written");
            }
        }

        TellSilent(study, context);
        return read.Code;
    }

    private Request RequestIn(ParseResult parsed, OutputFormat written)
    {
        png.RefuseFor(written, parsed);
        return new Request(
            parsed.GetValue(at) is { Length: > 0 } states ? states : [StateText.RestWord],
            parsed.GetValue(sweep) ?? [],
            parsed.GetValue(whatIf) ?? [],
            written,
            theme.In(parsed),
            png.In(parsed)
        );
    }

    private static ResponseStudy Study(ReadCircuit read, Request request)
    {
        var states = request.At.Select(read.StateAt).ToList();
        var sweeps = request.Sweeps.Select(text => Good("--sweep", text, Sweep.Read(read.Circuit, text)));
        var changes = request.WhatIf.Select(text => Good("--what-if", text, CircuitChange.Read(read.Circuit, text)));
        return ResponseStudy.Of(read.Study, states, [.. sweeps], [.. changes])
            ?? throw new CannotException(
                $"that is more than {ResponseStudy.MostCurves} curves; ask for fewer states at once"
            );
    }

    private static byte[] Content(ResponseStudy study, Request request, string? fileName) =>
        request.Format switch
        {
            OutputFormat.Csv => Encoding.UTF8.GetBytes(ResponseTable.Write(study)),
            OutputFormat.Json => Encoding.UTF8.GetBytes(ResponseJson.Write(study)),
            _ => PictureBytes.Of(
                SvgWriter.Write(ResponseChart.Build(study, request.Theme, fileName)),
                request.Format,
                request.Png
            ),
        };

    /// <summary>An empty column says nothing; what is behind it is told beside it.</summary>
    private static void TellSilent(ResponseStudy study, CliContext context)
    {
        foreach (var curve in study.Curves.Where(curve => curve.Decibels is null))
        {
            context.Tell($"{curve.Label}: {curve.Heard}");
        }
    }

    private static T Good<T>(string option, string text, Read<T> read)
        where T : class => read.Value ?? throw new CannotException($"{option} {text}: {read.Problem}");

    private sealed record Request(
        IReadOnlyList<string> At,
        IReadOnlyList<string> Sweeps,
        IReadOnlyList<string> WhatIf,
        OutputFormat Format,
        Theme Theme,
        PngOptions Png
    );
}
