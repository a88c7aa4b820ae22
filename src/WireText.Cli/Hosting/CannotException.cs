namespace WireText.Cli.Hosting;

/// <summary>Why something could not be done, ready to be shown.</summary>
internal sealed class CannotException(string message) : Exception(message);
