using System.Collections.Immutable;
using WireText.Drawing.Pictures;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Situations;
using WireText.Electrical.States;
using WireText.Electrical.Traces;

namespace WireText.Output;

/// <summary>What a sheet of views shows of a table of positions: a view a row.</summary>
public static class PositionViews
{
    public static ImmutableArray<SheetView> Of(Network network, PositionTable table) =>
        [.. PositionSheet.RowsOf(table).Select(row => ViewOf(network, table, row))];

    private static SheetView ViewOf(Network network, PositionTable table, PositionRow row)
    {
        var circuit = network.Circuit;
        var state = circuit
            .Controls.Where(control => row.Positions[control.Index] != Situation.Any && !control.IsPlug)
            .Aggregate(CircuitState.Rest(circuit), (made, control) => made.With(control, row.Positions[control.Index]));
        return new SheetView(state.InWords, row.WhatIsHeard(circuit), Trace.OfState(network, state));
    }
}
