using System.CommandLine;
using System.Text;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Storage;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext export</c></summary>
internal static class ExportCommand
{
    public static Command Create(CliContext context)
    {
        var file = CommonOptions.OneFile();
        var spice = new Option<bool>("--spice")
        {
            Description = "A netlist that ngspice runs as it is: ngspice -b OUT",
        };
        var at = new Option<string>("--at")
        {
            Description = "Where controls and dials stand, such as sel=neck,vol=7; without it: at rest",
            HelpName = CommonOptions.StateForm,
        };
        var output = CommonOptions.Output("the export");
        var parts = CommonOptions.PartsFolders();
        var command = new Command(
            "export",
            """
            Writes the circuit for another program. A netlist sweeps 20 Hz to 20 kHz with every string coil driven,
            and names its nodes by part and lug: vol.3 is vol_3.

            Example: wiretext export guitar.wiring --spice -o guitar.cir
            """
        )
        {
            file,
            spice,
            at,
            output,
            parts,
        };
        command.SetAction(parsed =>
        {
            if (!parsed.GetValue(spice))
            {
                throw new CannotException("say what to export: --spice is a netlist for ngspice");
            }

            var sources = new FolderSources(parsed.GetValue(parts) ?? [], context.Host);
            var read = ReadCircuit.From(parsed.GetValue(file)!, sources, context);
            var state = read.StateAt(parsed.GetValue(at));
            var deck = SpiceWriter.Write(read.Network, state.Positions.AsSpan(), state.DialsOf(read.Network));
            read.Write(parsed.GetValue(output) ?? Files.Standard, Encoding.UTF8.GetBytes(deck));
            return read.Code;
        });
        return command;
    }
}
