using WireText.Circuits;

namespace WireText.Drawing.Pictures;

/// <summary>Tells in a line what each position of a control joins, in the language's own words: <c>sel: neck A0+A1 · both A0+A1, B0+B1</c>.</summary>
internal static class ContactWords
{
    /// <summary>A control with more positions is told up to here.</summary>
    private const int MostPositions = 24;

    /// <summary>One line for each control that joins anything.</summary>
    public static IEnumerable<string> Of(Circuit circuit) =>
        circuit
            .Controls.Where(control =>
                control.Positions.Length > 1 && control.Positions.Any(position => !position.Closed.IsEmpty)
            )
            .Select(control => Line(circuit, control));

    private static string Line(Circuit circuit, Control control)
    {
        var told = control.Positions.Take(MostPositions).Select(position => Told(circuit, position));
        var more = control.Positions.Length > MostPositions ? " · …" : "";
        return DrawnText.Clean($"{control.Name}: {string.Join(" · ", told)}{more}");
    }

    private static string Told(Circuit circuit, Position position)
    {
        var joined = position.Closed.Select(group =>
            string.Join('+', group.Select(lug => circuit.Lugs[lug].Terminal.Name))
        );
        return $"{position.Name} {(position.Closed.IsEmpty ? "nothing" : string.Join(", ", joined))}";
    }
}
