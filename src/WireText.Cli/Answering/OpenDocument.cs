namespace WireText.Cli.Answering;

/// <summary>A text that the editor has open. What the editor shows counts, and not what is on the disk.</summary>
/// <param name="Address">As the editor writes it.</param>
/// <param name="Version">By the editor's count.</param>
internal sealed record OpenDocument(string Address, int Version, Compilation Compiled);
