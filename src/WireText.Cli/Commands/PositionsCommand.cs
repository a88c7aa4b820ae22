using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Storage;
using WireText.Electrical.Positions;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext positions</c></summary>
internal static class PositionsCommand
{
    public static Command Create(CliContext context)
    {
        var file = CommonOptions.OneFile();
        var format = CommonOptions.Choice("--format", "How the table is written", "text", "json", "csv", "markdown");
        var expect = new Option<bool>("--expect")
        {
            Description = "Write expect lines instead, which pin what the circuit does now, ready to paste",
        };
        var parts = CommonOptions.PartsFolders();
        var command = new Command(
            "positions",
            """
            Says what every position really does: what is heard and how it is joined, how loud, whether hum cancels, what
            an ohmmeter on the plug reads, and where the peak lies. Findings go to standard error.

            Example: wiretext positions guitar.wiring
            """
        )
        {
            file,
            format,
            expect,
            parts,
        };
        command.SetAction(parsed =>
        {
            var sources = new FolderSources(parsed.GetValue(parts) ?? [], context.Host);
            var read = ReadCircuit.From(parsed.GetValue(file)!, sources, context);
            var analyst = new Analyst(read.Network);
            var table = PositionTable.Of(analyst);
            context.Output.Write(
                parsed.GetValue(expect)
                    ? ExpectLines.Write(analyst, table)
                    : parsed.GetValue(format) switch
                    {
                        "json" => PositionData.WriteJson(table),
                        "csv" => PositionData.WriteCsv(table),
                        "markdown" => PositionText.WriteMarkdown(table),
                        _ => PositionText.Write(table),
                    }
            );
            return read.Code;
        });
        return command;
    }
}
