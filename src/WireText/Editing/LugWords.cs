using WireText.Circuits;
using WireText.Parts;
using WireText.Text;

namespace WireText.Editing;

/// <summary>Says what a lug of a part is: its place inside, and what each position joins it to.</summary>
internal static class LugWords
{
    /// <summary>Positions that are told of one lug; a switch of more has a table in its definition. Chosen.</summary>
    private const int MostPositions = 6;

    public static string Of(Circuit circuit, Lug lug)
    {
        var part = circuit.PartOf(lug);
        var words = part
            .Definition.Insides.SelectMany(inside => InsideOf(inside, lug.Terminal.Name))
            .Append(lug.IsLead ? "lead" : "")
            .Append(lug.IsMetal ? "bare metal: it must reach the sleeve" : "")
            .Append(Contacts(circuit, part, lug))
            .Append(OnIt(circuit, lug));
        return string.Join("; ", words.Where(word => word.Length > 0));
    }

    private static IEnumerable<string> InsideOf(Inside inside, string lug)
    {
        var (named, ends) = inside switch
        {
            Inside.TrackInside track => (
                track.Name,
                new[]
                {
                    (track.Low, "where the wiper is at 0"),
                    (track.Wiper, "wiper"),
                    (track.High, "where the wiper is at 10"),
                }
            ),
            Inside.CoilInside coil => (
                coil.Name,
                [(coil.Start, "start of the coil"), (coil.Finish, "finish of the coil")]
            ),
            Inside.AmplifierInside amp => (
                null,
                [(amp.In, "input"), (amp.Out, "output"), (amp.Common, "common"), (amp.Supply ?? "", "supply")]
            ),
            Inside.BatteryInside battery => (null, [(battery.Plus, "plus"), (battery.Minus, "minus")]),
            Inside.ResistorInside resistor => (
                null,
                [(resistor.A, "end of the resistor"), (resistor.B, "end of the resistor")]
            ),
            Inside.CapacitorInside cap => (null, [(cap.A, "end of the capacitor"), (cap.B, "end of the capacitor")]),
            Inside.InductorInside choke => (null, [(choke.A, "end of the inductor"), (choke.B, "end of the inductor")]),
            _ => ((string?)null, Array.Empty<(string, string)>()),
        };
        return ends.Where(end => Naming.Alike(end.Item1, lug))
            .Select(end => named is null ? end.Item2 : $"{end.Item2} {named}");
    }

    /// <summary>What each position joins it to: <c>bridge: A0; both: A0, A2</c>.</summary>
    private static string Contacts(Circuit circuit, Part part, Lug lug)
    {
        var told = part
            .Controls.Select(control => circuit.Controls[control])
            .SelectMany(control => control.Positions)
            .Select(position => (position.Name, Others: OthersIn(position)))
            .Where(position => position.Others.Length > 0)
            .ToList();
        var listed = told.Take(MostPositions).Select(position => $"{position.Name}: {position.Others}");
        return string.Join("; ", told.Count > MostPositions ? listed.Append("…") : listed);

        string OthersIn(Position position) =>
            string.Join(
                ", ",
                position
                    .Closed.Where(group => group.Contains(lug.Index))
                    .SelectMany(group => group)
                    .Where(other => other != lug.Index)
                    .Select(other => circuit.Lugs[other].Terminal.Name)
            );
    }

    private static string OnIt(Circuit circuit, Lug lug)
    {
        var wires = circuit.Wires.Count(wire => wire.Touches(lug.Index));
        return wires switch
        {
            0 => "nothing on it yet",
            1 => "1 wire on it",
            _ => $"{wires} wires on it",
        };
    }
}
