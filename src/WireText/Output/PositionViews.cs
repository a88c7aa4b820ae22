using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Pictures;
using WireText.Electrical.Positions;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Electrical.Traces;

namespace WireText.Output;

/// <summary>What a sheet of views shows of a table of positions: a view a row, at each jack in use.</summary>
public static class PositionViews
{
    /// <param name="circuit">That of the study, or a twin of it.</param>
    public static ImmutableArray<SheetView> Of(Circuit circuit, Study study) =>
        [
            .. from jack in study.Jacks
            let seen = circuit.SeenFrom(jack.Circuit.Outputs[0])
            from row in PositionSheet.RowsOf(jack.Positions)
            select ViewOf(seen, jack, row),
        ];

    /// <summary>The states of those views at one jack, each control named that makes a difference; what is not named rests.</summary>
    public static ImmutableArray<State> StatesOf(Study study) =>
        [.. PositionSheet.RowsOf(study.Positions).Select(row => StateOf(study.Circuit, row))];

    private static State StateOf(Circuit circuit, PositionRow row) =>
        row
            .State.Stated.Select(at => (Control: circuit.Controls[at.Control], at.Position))
            .Where(at => !at.Control.IsPlug)
            .Aggregate(State.Rest(circuit), (made, at) => made.With(at.Control, at.Position));

    private static SheetView ViewOf(Circuit circuit, Study study, PositionRow row)
    {
        var stated = row
            .State.Stated.Select(at => (Control: circuit.Controls[at.Control], at.Position))
            .Where(at => !at.Control.IsPlug)
            .ToList();
        var trace = Trace.OfState(circuit, study.Network, StateOf(circuit, row));
        return new SheetView(
            trace.InWords,
            row.WhatIsHeard(circuit) + (IsPhaseAssumed(row) ? " (phase assumed)" : ""),
            trace
        )
        {
            Controls =
            [
                .. stated.Select(at => new ControlAt(
                    at.Control.Part,
                    at.Control.Name,
                    at.Control.Positions[at.Position].Name
                )),
            ],
        };
    }

    private static bool IsPhaseAssumed(PositionRow row) =>
        row.Analysis.Outcome == Outcome.Sound && row.Analysis.Sound.IsPhaseAssumed;
}
