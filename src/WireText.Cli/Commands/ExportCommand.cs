using System.CommandLine;
using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext export</c></summary>
internal sealed class ExportCommand : Command
{
    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<bool> spice = new("--spice")
    {
        Description = "A netlist that ngspice runs as it is: ngspice -b OUT",
    };
    private readonly Option<string?> at = CommonOptions.At<string?>("without it: at rest");
    private readonly Option<string?> output = CommonOptions.Output("the export");
    private readonly JackOption jack = new();
    private readonly PartsOption parts = new();

    public ExportCommand(CliContext context)
        : base(
            "export",
            """
            Writes the circuit for another program. A netlist sweeps 20 Hz to 20 kHz with every string coil driven,
            and names its nodes by part and lug: vol.3 is vol_3.

            Example: wiretext export guitar.wiring --spice -o guitar.cir
            """
        )
    {
        Add(file);
        Add(spice);
        Add(at);
        Add(output);
        Add(jack);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        if (!parsed.GetValue(spice))
        {
            throw new CannotException("say what to export: --spice is a netlist for ngspice");
        }

        var read = ReadCircuit
            .From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context)
            .At(jack, parsed);
        var state = read.StateAt(parsed.GetValue(at));
        var deck = SpiceWriter.Write(read.Study, state);
        context.Results.Write(parsed.GetValue(output) ?? StandardStream.Name, Encoding.UTF8.GetBytes(deck));
        return read.Code;
    }
}
