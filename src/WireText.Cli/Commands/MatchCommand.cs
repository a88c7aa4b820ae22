using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Matching;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext match</c></summary>
internal sealed class MatchCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Argument<string> bin = new("BIN")
    {
        Description = "A table with commas of measured parts: name,kind,value and for pickups l,c",
    };
    private readonly WholeNumberOption batch = new(
        "--batch",
        Matcher.MostInstruments,
        "N",
        "Instruments to be built; without it: 1"
    );
    private readonly Option<string[]> alike = new("--alike")
    {
        Description = "Two parts whose values are to be alike, such as vol-neck,vol-bridge; may be given again",
        HelpName = "PART,PART",
    };
    private readonly FormatOption format = new(OutputFormat.Text, OutputFormat.Csv, OutputFormat.Json);
    private readonly Option<string?> output = CommonOptions.Output("the table");
    private readonly PartsOption parts = new();

    public MatchCommand(CliContext context)
        : base(
            "match",
            """
            Says which measured part of a bin goes where in a batch of one circuit, what is left over and what to buy.

            Example: wiretext match guitar.wiring bin.csv --batch 10
            """
        )
    {
        Add(file);
        Add(bin);
        Add(batch);
        Add(alike);
        Add(format);
        Add(output);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var target = parsed.GetValue(output);
        var written = format.In(parsed, target);
        var count = batch.In(parsed) ?? 1;
        var read = ReadCircuit.From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context);
        var slots = MatchSlot.Of(read.Circuit);
        if (slots.IsEmpty)
        {
            throw new CannotException("the circuit has no part with a value that could be matched");
        }

        var path = parsed.GetRequiredValue(bin);
        var source = context.Sources.Read(path, SourceRole.Bin);
        var stock = BinReader.Read(read.Circuit, source.Text.Content);
        if (stock.Value is not { } found)
        {
            throw new CannotException($"{path}: {stock.Problem}");
        }

        var plan = Matcher.Match(read.Study, found.Parts, count, [.. Pairs(parsed, slots)]);
        context.Results.Write(
            target ?? StandardStream.Name,
            Encoding.UTF8.GetBytes(
                written switch
                {
                    OutputFormat.Csv => MatchData.WriteCsv(plan),
                    OutputFormat.Json => MatchData.WriteJson(plan),
                    _ => MatchText.Write(read.Circuit, plan),
                }
            )
        );
        if (target is not null and not StandardStream.Name)
        {
            context.Error.WriteLine($"{target} is written");
        }

        return read.Code;
    }

    private IEnumerable<(int, int)> Pairs(ParseResult parsed, ImmutableArray<MatchSlot> slots)
    {
        foreach (var text in parsed.GetValue(alike) ?? [])
        {
            var names = text.Split(',', StringSplitOptions.TrimEntries);
            if (
                names.Length != 2
                || SlotOf(names[0]) is not { } first
                || SlotOf(names[1]) is not { } second
                || first == second
            )
            {
                throw new CannotException(
                    $"--alike {text}: name two parts, such as {string.Join(',', slots.Take(2).Select(slot => slot.Part.Name))}; there are {string.Join(", ", slots.Select(slot => slot.Part.Name))}"
                );
            }

            yield return (first, second);
        }

        int? SlotOf(string name) =>
            slots.Select((slot, i) => (slot, i)).FirstOrDefault(one => Naming.Alike(one.slot.Part.Name, name))
                is { slot: not null } found
                ? found.i
                : null;
    }
}
