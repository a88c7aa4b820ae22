using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Checks;

/// <summary>Which checks look, and what is made of what they find.</summary>
/// <param name="Checks">In an order in which a check comes before those that it silences.</param>
public sealed record CheckRequest(ImmutableArray<ICheck> Checks, CheckSettings Settings)
{
    /// <summary>Those that look without being asked, everything as the table of checks says.</summary>
    public static CheckRequest Usual { get; } = new(CheckList.Usual, CheckSettings.Standard);

    /// <param name="withHarmless">Also what is harmless and told only when asked.</param>
    /// <param name="settings">Null for everything as the table of checks says.</param>
    public static CheckRequest Of(bool withHarmless, CheckSettings? settings) =>
        new(withHarmless ? CheckList.All : CheckList.Usual, settings ?? CheckSettings.Standard);

    /// <summary>The same; of a circuit whose wires are in part to be found, what those wires decide waits.</summary>
    public CheckRequest For(Circuit circuit) =>
        circuit.Open.IsEmpty ? this : this with { Checks = [.. Checks.Where(CheckList.WhileOpen.Contains)] };
}
