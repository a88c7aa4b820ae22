namespace WireText.Tests.Checks.Slips;

/// <summary>One slip of a bench in a right circuit.</summary>
/// <param name="Circuit">The right one: a file in <c>docs/slips</c>.</param>
/// <param name="Edit">Lines that go, behind <c>-</c>, and lines that come, behind <c>+</c>; a wire that goes is named without its colour.</param>
/// <param name="Mend">What a technician would do; null where the slip harms nothing.</param>
internal sealed record Slip(string Circuit, string Name, string Edit, string? Mend)
{
    public bool IsHarmful => Mend is not null;

    /// <summary>The text with the slip in it. A line that goes must stand there once; one that comes takes the place of the last that went.</summary>
    public string ApplyTo(string right)
    {
        var lines = WiringLines.Of(right);
        var place = lines.Count;
        foreach (var change in Edit.Split('\n', StringSplitOptions.TrimEntries))
        {
            var line = change[1..].Trim();
            if (change[0] == '+')
            {
                lines.Insert(place, line);
                place = lines.Count;
            }
            else
            {
                place = WiringLines.IndexOf(lines, line) ?? throw new InvalidOperationException($"{Name}: {line}");
                lines.RemoveAt(place);
            }
        }

        return WiringLines.Text(lines);
    }
}
