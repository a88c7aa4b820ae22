namespace WireText.Cli.Hosting;

internal static class StandardStream
{
    /// <summary>Stands for standard input as a source, and for standard output as a target.</summary>
    public const string Name = "-";
}
