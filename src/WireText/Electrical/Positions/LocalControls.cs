using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Forms;

namespace WireText.Electrical.Positions;

/// <summary>A control that changes one pickup alone, wherever the others stand.</summary>
/// <param name="Pickup">The index of the pickup's part.</param>
/// <param name="Rows">One for each of its other positions, the other controls as in the first row where it matters.</param>
public sealed record LocalControl(Control Control, int Pickup, ImmutableArray<PositionRow> Rows);

/// <summary>
/// Finds local controls: with all that is one pickup replaced by a symbol, their positions give equal forms, and unequal ones
/// as they are.
/// </summary>
internal static class LocalControls
{
    public static ImmutableArray<LocalControl> Find(Circuit circuit, IReadOnlyList<PositionRow> rows)
    {
        var found = ImmutableArray.CreateBuilder<LocalControl>();
        foreach (var control in circuit.Controls.Where(control => !control.IsPlug))
        {
            var groups = rows.Where(row => row.State[control.Index] is not null)
                .GroupBy(row => row.State.At(control.Index, null))
                .Select(group => group.ToList())
                .ToList();
            // What changes no form lies behind all pickups, as a rotary of capacitors does.
            var changesForms = groups.Exists(group => !AreEqualBut(group, pickup: null));
            var pickup = changesForms
                ? circuit
                    .Parts.Where(part => FormText.CoilsOf(circuit, part) > 0)
                    .FirstOrDefault(part => groups.TrueForAll(group => AreEqualBut(group, part.Index)))
                : null;
            var matters = groups.Exists(group =>
                group.Select(row => row.WhatIsHeard(circuit)).Distinct().Skip(1).Any()
            );
            if (matters && pickup is not null)
            {
                found.Add(new LocalControl(control, pickup.Index, [.. groups[0].Skip(1)]));
            }
        }

        return found.ToImmutable();
    }

    /// <summary>The rows in which every local control stands at its first position or does not matter.</summary>
    public static List<PositionRow> WithoutLocal(
        Circuit circuit,
        IEnumerable<PositionRow> rows,
        ImmutableArray<LocalControl> local
    ) => [.. rows.Where(row => local.All(control => row.State[control.Control.Index] is 0 or null))];

    /// <param name="pickup">The part whose coils are one symbol; null for none.</param>
    private static bool AreEqualBut(List<PositionRow> group, int? pickup) =>
        group
            .Select(row => (row.Analysis.Outcome, FormNodes.Symbolised(row.Analysis.Form.Root, pickup)))
            .Distinct()
            .Count() == 1;
}
