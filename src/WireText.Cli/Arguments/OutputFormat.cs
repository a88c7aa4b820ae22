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
    Text,
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
            OutputFormat.Text => "text",
            _ => "json",
        };

    /// <summary>The ending of a file in a format.</summary>
    public static string Ending(this OutputFormat format) => format == OutputFormat.Text ? "txt" : format.Word();
}
