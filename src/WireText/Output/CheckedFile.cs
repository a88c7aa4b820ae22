using System.Collections.Immutable;
using WireText.Checks;
using WireText.Text;

namespace WireText.Output;

/// <summary>What checking one file came to, for those that write it.</summary>
/// <param name="Path">As given, with forward slashes; "-" for standard input.</param>
/// <param name="Findings">In the order of the text; those in included files come after.</param>
public sealed record CheckedFile(string Path, ImmutableArray<Finding> Findings)
{
    /// <summary>What an <c>allow</c> line took out.</summary>
    public ImmutableArray<AllowedFinding> Allowed { get; init; } = [];

    /// <summary>The ids of checks whose findings wait until what stands is mended.</summary>
    public ImmutableArray<string> Waiting { get; init; } = [];
}
