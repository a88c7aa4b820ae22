using WireText.Circuits;
using WireText.Drawing.Shapes;
using WireText.Sheets;

namespace WireText.Pages;

/// <summary>What a page for a customer is made from.</summary>
/// <param name="Light">The drawing with the bars of the table.</param>
/// <param name="Dark">The same in the colours of a dark page.</param>
/// <param name="FileName">Null for standard input.</param>
public sealed record PageContents(PageTable Table, Picture Light, Picture Dark, string? FileName)
{
    /// <summary>The title of the circuit that it stands on; null for one that stands alone or on one without a title.</summary>
    public string? StockTitle { get; init; }

    public string Title => TitleOf(Table.Circuit);

    /// <summary>What stands at the foot of the page.</summary>
    public string Foot =>
        FileName is { } file
            ? $"{file}, circuit {CircuitMark.Of(Table.Circuit)}"
            : $"circuit {CircuitMark.Of(Table.Circuit)}";

    internal static string TitleOf(Circuit circuit) => circuit.Title ?? "Untitled wiring";
}
