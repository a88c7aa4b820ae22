using System.CommandLine;
using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Storage;
using WireText.Drawing.Charts;
using WireText.Drawing.Lettering;
using WireText.Electrical.Responses;
using WireText.Electrical.States;
using WireText.Output;
using WireText.Raster;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext response</c></summary>
internal static class ResponseCommand
{
    private static readonly string[] Formats = ["csv", "json", "svg", "png"];

    public static Command Create(CliContext context)
    {
        var file = CommonOptions.OneFile();
        var at = new Option<string[]>("--at")
        {
            Description = "Where controls and dials stand, such as sel=neck,vol=7; given again: another curve",
            HelpName = CommonOptions.StateForm,
        };
        var sweep = new Option<string[]>("--sweep")
        {
            Description = "A dial at N travels, or each position of a switch: tone=0..10:5, or sel",
            HelpName = "CONTROL[=A..B:N]",
        };
        var whatIf = new Option<string[]>("--what-if")
        {
            Description =
                "Other values beside those that are wired, such as dark=22n or cable=700p; may be given again",
            HelpName = "NAME=VALUE,...",
        };
        var format = new Option<string>("--format")
        {
            Description = "Without it: by the ending of OUT, else csv",
            HelpName = string.Join('|', Formats),
        }.AcceptOnlyFromAmong(Formats);
        var output = CommonOptions.Output("the response");
        var theme = CommonOptions.Choice("--theme", "The colours of the chart", "light", "dark", "print");
        var width = new Option<int?>("--width") { Description = "Width of a PNG in pixels", HelpName = "PX" };
        var parts = CommonOptions.PartsFolders();
        var command = new Command(
            "response",
            """
            Computes the level at the jack from 20 Hz to 20 kHz, as numbers or as a chart.

            Example: wiretext response guitar.wiring -o guitar.svg
            """
        )
        {
            file,
            at,
            sweep,
            whatIf,
            format,
            output,
            theme,
            width,
            parts,
        };
        command.SetAction(parsed =>
        {
            var target = parsed.GetValue(output);
            var request = new Request(
                parsed.GetValue(at) is { Length: > 0 } states ? states : [StateReader.RestWord],
                parsed.GetValue(sweep) ?? [],
                parsed.GetValue(whatIf) ?? [],
                FormatOf(parsed.GetValue(format), target),
                Theme.Find(parsed.GetValue(theme)!)!,
                CommonOptions.InRange(parsed.GetValue(width), PngRenderer.LongestSide, "--width")
            );
            if (request.Width is not null && request.Format != "png")
            {
                throw new CannotException("--width is for a PNG; add --format png or name a .png with -o");
            }

            var sources = new FolderSources(parsed.GetValue(parts) ?? [], context.Host);
            var read = ReadCircuit.From(parsed.GetValue(file)!, sources, context);
            var study = Study(read, request);
            read.Write(target ?? Files.Standard, Content(study, request, read.FileName));
            TellSilent(study, context.Error);
            return read.Code;
        });
        return command;
    }

    private static ResponseStudy Study(ReadCircuit read, Request request)
    {
        var states = request.At.Select(read.StateAt).ToList();
        var sweeps = request.Sweeps.Select(text => Good("--sweep", text, Sweep.Read(read.Circuit, text)));
        var changes = request.WhatIf.Select(text => Good("--what-if", text, CircuitChange.Read(read.Circuit, text)));
        return ResponseStudy.Of(read.Network, states, [.. sweeps], [.. changes])
            ?? throw new CannotException(
                $"that is more than {ResponseStudy.MostCurves} curves; ask for fewer states at once"
            );
    }

    private static byte[] Content(ResponseStudy study, Request request, string? fileName) =>
        request.Format switch
        {
            "csv" => Encoding.UTF8.GetBytes(ResponseTable.Write(study)),
            "json" => Encoding.UTF8.GetBytes(ResponseJson.Write(study)),
            "svg" => Encoding.UTF8.GetBytes(Chart(study, request, fileName)),
            _ => Raster(Chart(study, request, fileName), request.Width),
        };

    private static string Chart(ResponseStudy study, Request request, string? fileName) =>
        SvgWriter.Write(ResponseChart.Build(study, request.Theme, fileName));

    private static byte[] Raster(string svg, int? width)
    {
        try
        {
            return PngRenderer.Render(svg, new PngOptions { WidthPixels = width });
        }
        catch (PictureSizeException e)
        {
            throw new CannotException(e.Message);
        }
    }

    /// <summary>An empty column says nothing; what is behind it is told beside it.</summary>
    private static void TellSilent(ResponseStudy study, TextWriter error)
    {
        foreach (var curve in study.Curves.Where(curve => curve.Decibels is null))
        {
            error.WriteLine($"wiretext: {curve.Label}: {curve.Heard}");
        }
    }

    private static string FormatOf(string? format, string? target)
    {
        if (format is not null || target is null or Files.Standard)
        {
            return format ?? Formats[0];
        }

        var ending = Path.GetExtension(target).TrimStart('.');
        return Formats.FirstOrDefault(known => string.Equals(known, ending, StringComparison.OrdinalIgnoreCase))
            ?? throw new CannotException(
                $"'{target}' ends in none of .csv, .json, .svg and .png; say which with --format"
            );
    }

    private static T Good<T>(string option, string text, Read<T> read)
        where T : class => read.Value ?? throw new CannotException($"{option} {text}: {read.Problem}");

    private sealed record Request(
        IReadOnlyList<string> At,
        IReadOnlyList<string> Sweeps,
        IReadOnlyList<string> WhatIf,
        string Format,
        Theme Theme,
        int? Width
    );
}
