using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Mods;

/// <summary>The statements of one whole circuit, from a file alone or from a mod and what it stands on.</summary>
/// <param name="Statements">Each knows the file it stands in; no <c>base</c>, <c>lift</c>, <c>drop</c> or <c>replace</c> is among them.</param>
/// <param name="Findings">What was wrong with the files it stands on, and with what the mod does to them.</param>
public sealed record ResolvedWiring(ImmutableArray<StatementSyntax> Statements, ImmutableArray<Finding> Findings)
{
    /// <summary>What the mod stands on; null where the file stands alone, and where it could not be read.</summary>
    public BaseWiring? Base { get; init; }

    /// <summary>False when what the file stands on could not be read: then there is no circuit.</summary>
    public bool IsWhole { get; init; } = true;
}

/// <summary>The file that a mod stands on.</summary>
/// <param name="Resolved">Its own statements, of the files that it stands on in turn with them.</param>
public sealed record BaseWiring(WiringTree Tree, ResolvedWiring Resolved);
