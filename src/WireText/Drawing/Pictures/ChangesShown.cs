using WireText.Comparing;

namespace WireText.Drawing.Pictures;

/// <summary>What a picture shows of how a circuit differs from an earlier one.</summary>
/// <param name="Overlay">Of the drawn circuit.</param>
/// <param name="Against">What the earlier circuit is called: its file.</param>
public sealed record ChangesShown(Overlay Overlay, string Against);
