using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks;

/// <summary>A finding that the author says is meant, with the reason given.</summary>
public sealed record AllowedFinding(Finding Finding, Allowance Allowance);

/// <summary>What the checks found.</summary>
/// <param name="Findings">By place in the text, then in the order of <see cref="CheckList"/>.</param>
/// <param name="Allowed">What an <c>allow</c> line took out, in the same order.</param>
public sealed record CheckReport(ImmutableArray<Finding> Findings, ImmutableArray<AllowedFinding> Allowed)
{
    /// <summary>
    /// The ids of checks that found something which a mistake that stands may explain: whether it is more is known when that is
    /// mended.
    /// </summary>
    public ImmutableArray<string> Waiting { get; init; } = [];
}
