using WireText.Cli;

return CliProgram.Run(args, new ConsoleHost());
