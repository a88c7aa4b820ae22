using WireText.Circuits;

namespace WireText.Comparing;

/// <summary>The earlier circuit with its parts called as in the later, so that what both say can be compared by its words.</summary>
internal static class AlikeNames
{
    public static Circuit Of(CircuitComparison circuits)
    {
        var before = circuits.Before;
        string[] names = [.. before.Parts.Select(part => circuits.Parts.AfterOf(part)?.Name ?? part.Name)];
        return before with
        {
            Parts = [.. before.Parts.Select(part => part with { Name = names[part.Index] })],
            Lugs = [.. before.Lugs.Select(lug => lug with { Name = Named(lug.Name, lug.Part) })],
            Controls = [.. before.Controls.Select(one => one with { Name = Named(one.Name, one.Part) })],
            Dials = [.. before.Dials.Select(one => one with { Name = Named(one.Name, one.Part) })],
            Elements = [.. before.Elements.Select(one => one with { Name = Named(one.Name, one.Part) })],
        };

        // The part's name comes first in the names of all that it has.
        string Named(string name, int part) => names[part] + name[before.Parts[part].Name.Length..];
    }
}
