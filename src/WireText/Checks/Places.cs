using WireText.Text;

namespace WireText.Checks;

/// <summary>Finds the smallest text that shows a lug.</summary>
public static class Places
{
    /// <summary>The lug where a wire's line names it; the part's name when no wire does.</summary>
    public static SourceLocation Of(CheckContext context, int lug)
    {
        foreach (var wire in context.WiresAt(lug))
        {
            if (wire.PlaceOf(lug) is { } place)
            {
                return place;
            }
        }

        return context.Circuit.PartOf(context.Circuit.Lugs[lug]).NameAt;
    }
}
