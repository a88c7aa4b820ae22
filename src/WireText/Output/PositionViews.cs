using System.Collections.Immutable;
using WireText.Circuits.States;
using WireText.Drawing.Pictures;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Situations;
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
        var state = row
            .State.Stated.Select(at => (Control: circuit.Controls[at.Control], at.Position))
            .Where(at => !at.Control.IsPlug)
            .Aggregate(State.Rest(circuit), (made, at) => made.With(at.Control, at.Position));
        return new SheetView(StateText.AsSaid(state), row.WhatIsHeard(circuit), Trace.OfState(network, state));
    }
}
