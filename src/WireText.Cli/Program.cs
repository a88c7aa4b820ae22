using WireText.Cli;
using WireText.Cli.Hosting;

return CliProgram.Run(args, new ConsoleHost());
