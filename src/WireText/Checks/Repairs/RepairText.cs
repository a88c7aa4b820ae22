using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>Tells a technician of repairs: in words, and as lines to write.</summary>
public static class RepairText
{
    /// <summary>One repair, or a numbered list.</summary>
    public static string Of(Circuit circuit, ImmutableArray<CircuitEdit> repairs) =>
        repairs is [var only]
            ? $"one edit makes every claim true: {Words(circuit, only)}\n{Lines(circuit, only, "  ")}"
            : "one of these edits makes every claim true:\n"
                + string.Join(
                    '\n',
                    repairs.Select(
                        (repair, i) =>
                            string.Create(
                                CultureInfo.InvariantCulture,
                                $"{i + 1}. {Words(circuit, repair)}\n{Lines(circuit, repair, "     ")}"
                            )
                    )
                );

    /// <summary>What to do at the bench, or in the text where the wires are right.</summary>
    public static string Words(Circuit circuit, CircuitEdit edit) =>
        edit switch
        {
            RenamePositions rename => Renamed(circuit.Controls[rename.Control], rename.Order),
            MoveEnd { What.Ends: [var end] } move => Moved(circuit, end, circuit.NameOf(move.Lug)),
            MoveEnd move =>
                $"take the run of wire over '{circuit.NameOf(move.Lug)}', not over '{circuit.NameOf(move.What.LugIn(circuit))}'",
            ExchangeEnds exchange when IsLead(circuit, exchange.First) && IsLead(circuit, exchange.Second) =>
                $"exchange the leads {Name(circuit, exchange.First)} and {Name(circuit, exchange.Second)}",
            ExchangeEnds exchange =>
                $"exchange the wires on {Name(circuit, exchange.First)} and {Name(circuit, exchange.Second)}",
            ExchangeLugs exchange =>
                $"exchange all wires on '{circuit.NameOf(exchange.First)}' and '{circuit.NameOf(exchange.Second)}'",
            RemoveWire remove => $"take out the wire from {WireLines.Ends(circuit, circuit.Wires[remove.Wire])}",
            AddWire add => $"add a wire from '{circuit.NameOf(add.From)}' to '{circuit.NameOf(add.To)}'",
            _ => throw new ArgumentOutOfRangeException(nameof(edit), edit, "no words are known for it"),
        };

    /// <summary>All the changes of one repair, or none.</summary>
    public static ImmutableArray<TextEdit> InText(Circuit circuit, CircuitEdit repair)
    {
        var edits = LineEdit.Of(circuit, repair).Select(line => line.InText(circuit)).ToList();
        return edits.Exists(line => line.IsEmpty) ? [] : [.. edits.SelectMany(line => line)];
    }

    private static string Moved(Circuit circuit, WireEnd end, string now)
    {
        var (wire, was) = (circuit.Wires[end.Wire], circuit.NameOf(end.LugIn(circuit)));
        var other = OtherEnd(circuit, end);
        return wire.Kind switch
        {
            WireKind.PartLead => $"hang '{circuit.PartOf(circuit.Lugs[wire.From]).Name}' on '{now}', not on '{was}'",
            WireKind.SpliceLead => $"splice '{now}' into '{circuit.NameOf(wire.To)}', not '{was}'",
            WireKind.Braid => $"solder the braid {other} to '{now}', not to '{was}'",
            WireKind.Core => $"solder the core {other} to '{now}', not to '{was}'",
            _ => $"solder the wire {other} to '{now}', not to '{was}'",
        };
    }

    private static string Renamed(Control control, ImmutableArray<int> order)
    {
        var moved = Enumerable.Range(0, order.Length).Where(i => order[i] != i).ToList();
        return moved.Count == 2
            ? $"exchange the names '{control.Positions[moved[0]].Name}' and '{control.Positions[moved[1]].Name}' of '{control.Name}'"
            : $"list the positions of '{control.Name}' in the opposite order";
    }

    /// <summary>A lug, and where it has several wires the one that is meant.</summary>
    private static string Name(Circuit circuit, LugOnLine place)
    {
        var lug = place.LugIn(circuit);
        var isOnlyOne = circuit.Wires.Count(wire => wire.Touches(lug)) == place.Ends.Length;
        return isOnlyOne || place.Ends.Length > 1
            ? $"'{circuit.NameOf(lug)}'"
            : $"'{circuit.NameOf(lug)}' (the one {OtherEnd(circuit, place.Ends[0])})";
    }

    private static bool IsLead(Circuit circuit, LugOnLine place) => circuit.Lugs[place.LugIn(circuit)].IsLead;

    private static string OtherEnd(Circuit circuit, WireEnd end) =>
        (end with { IsFrom = !end.IsFrom }).LugIn(circuit) is >= 0 and var lug
            ? $"from '{circuit.NameOf(lug)}'"
            : "that is cut back";

    private static string Lines(Circuit circuit, CircuitEdit edit, string indent) =>
        string.Join(
            '\n',
            LineEdit
                .Of(circuit, edit)
                .SelectMany(line =>
                    line switch
                    {
                        { Old: null } => line.New.Select(added => $"add      {added}{PlaceToAdd(circuit)}"),
                        { New: [] } => [$"remove   {line.Old}{PlaceOf(line)}"],
                        _ =>
                        [
                            $"replace  {line.Old}{PlaceOf(line)}",
                            $"with     {line.New[0]}",
                            .. line.New.Skip(1).Select(more => $"and      {more}"),
                        ],
                    }
                )
                .Select(line => indent + line)
        );

    private static string PlaceOf(LineEdit line) =>
        line.At is { } place ? string.Create(CultureInfo.InvariantCulture, $"  (line {place.Position.Line})") : "";

    /// <summary>Lines may stand in any order; a wire is best found among the others.</summary>
    private static string PlaceToAdd(Circuit circuit) =>
        WireLines.LastOf(circuit) is { } last
            ? string.Create(CultureInfo.InvariantCulture, $"  (below line {last.DeclaredAt.Position.Line})")
            : "";
}
