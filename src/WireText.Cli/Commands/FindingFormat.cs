namespace WireText.Cli.Commands;

/// <summary>How findings are written.</summary>
internal enum FindingFormat
{
    Text,
    Json,
    Sarif,

    /// <summary>Workflow commands of a code host.</summary>
    Commands,
}
