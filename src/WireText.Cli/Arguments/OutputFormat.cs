namespace WireText.Cli.Arguments;

/// <summary>What a result is written as.</summary>
internal enum OutputFormat
{
    Svg,
    Png,
    Pdf,
    Csv,
    Json,
    Md,
    Html,
}

internal static class OutputFormatWords
{
    /// <summary>The word for a format, on the command line and as the ending of a file.</summary>
    public static string Word(this OutputFormat format) =>
        format switch
        {
            OutputFormat.Svg => "svg",
            OutputFormat.Png => "png",
            OutputFormat.Pdf => "pdf",
            OutputFormat.Csv => "csv",
            OutputFormat.Md => "md",
            OutputFormat.Html => "html",
            _ => "json",
        };
}
