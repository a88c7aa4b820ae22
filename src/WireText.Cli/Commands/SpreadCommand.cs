using System.CommandLine;
using System.Text;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Drawing.Charts;
using WireText.Drawing.Lettering;
using WireText.Electrical.Responses;
using WireText.Electrical.Tolerances;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext spread</c></summary>
internal sealed class SpreadCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string[]> at = CommonOptions.At<string[]>(
        "may be given again; without it: every position at rest"
    );
    private readonly WholeNumberOption count = new(
        "--count",
        RunOptions.MostInstruments,
        "N",
        $"Instruments of the run; without it: {RunOptions.UsualCount}"
    );
    private readonly SeedOption seed = new(RunOptions.UsualSeed);
    private readonly Option<bool> oneBatch = new("--one-batch")
    {
        Description = "Parts of one kind and one value come from one batch and are off alike",
    };
    private readonly FormatOption format = new(
        OutputFormat.Text,
        OutputFormat.Json,
        OutputFormat.Svg,
        OutputFormat.Png,
        OutputFormat.Pdf
    );
    private readonly Option<string?> output = CommonOptions.Output("the table, or a chart with bands,");
    private readonly ChoiceOption<Theme> theme = CommonOptions.Theme("chart");
    private readonly PngArguments png = new();
    private readonly JackOption jack = new();
    private readonly PartsOption parts = new();

    public SpreadCommand(CliContext context)
        : base(
            "spread",
            """
            Says what the tolerances of the parts do to a run of instruments, position by position; as a chart, in bands.

            Example: wiretext spread guitar.wiring --count 50
            """
        )
    {
        Add(file);
        Add(at);
        Add(count);
        Add(seed);
        Add(oneBatch);
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
        var written = format.In(parsed, target);
        png.RefuseFor(written, parsed);
        var options = new RunOptions(
            count.In(parsed) ?? RunOptions.UsualCount,
            parsed.GetValue(seed),
            parsed.GetValue(oneBatch)
        );
        var read = ReadCircuit
            .From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context)
            .At(jack, parsed);
        IReadOnlyList<State> states = parsed.GetValue(at) is { Length: > 0 } said
            ? [.. said.Select(read.StateAt)]
            : SpreadTable.StatesOf(read.Study.Positions);
        if ((long)states.Count * options.Count > SpreadTable.MostSolved)
        {
            throw new CannotException(
                $"{states.Count} states of {options.Count} instruments are more than {SpreadTable.MostSolved} together; say a smaller --count, or the states with --at"
            );
        }

        var content = written switch
        {
            OutputFormat.Text => Encoding.UTF8.GetBytes(SpreadText.Write(TableOf(read, states, options))),
            OutputFormat.Json => Encoding.UTF8.GetBytes(SpreadJson.Write(TableOf(read, states, options))),
            _ => PictureBytes.Of(
                SvgWriter.Write(ResponseChart.Build(BandsOf(read, states, options), theme.In(parsed), read.FileName)),
                written,
                png.In(parsed)
            ),
        };
        context.Results.Write(target ?? StandardStream.Name, content);
        if (target is not null and not StandardStream.Name)
        {
            context.Error.WriteLine($"{target} is written");
        }

        return read.Code;
    }

    private static SpreadTable TableOf(ReadCircuit read, IReadOnlyList<State> states, RunOptions options) =>
        SpreadTable.Of(read.Study.Analyst, states, options);

    private static ResponseStudy BandsOf(ReadCircuit read, IReadOnlyList<State> states, RunOptions options) =>
        ResponseStudy.Of(read.Study, states, [], []) is { } response
            ? RunBands.Around(response, read.Study, options)
            : throw new CannotException(
                $"that is more than {ResponseStudy.MostCurves} curves; ask for fewer states at once"
            );
}
