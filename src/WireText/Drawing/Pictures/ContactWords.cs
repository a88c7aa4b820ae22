using WireText.Circuits;
using WireText.Drawing.Lettering;

namespace WireText.Drawing.Pictures;

/// <summary>Tells what each position of a control joins, in the language's own words: <c>sel: neck A0+A1 · both A0+A1, B0+B1</c>.</summary>
internal static class ContactWords
{
    /// <summary>A control with more positions is told up to here.</summary>
    private const int MostPositions = 24;

    /// <summary>For each control that joins anything a line, or one for each position where a line has no room for all.</summary>
    /// <param name="told">The index of a control that is told elsewhere; null for none.</param>
    public static IEnumerable<string> Of(Circuit circuit, double width, int? told) =>
        circuit
            .Controls.Where(control =>
                control.Index != told
                && control.Positions.Length > 1
                && control.Positions.Any(position => !position.Closed.IsEmpty)
            )
            .SelectMany(control => Lines(circuit, control, width));

    private static IEnumerable<string> Lines(Circuit circuit, Control control, double width)
    {
        var told = control.Positions.Take(MostPositions).Select(position => Told(circuit, position)).ToList();
        if (control.Positions.Length > MostPositions)
        {
            told.Add("…");
        }

        var line = DrawnText.Clean($"{control.Name}: {string.Join(" · ", told)}");
        return DrawnText.Width(line, TextWeight.Regular, Tokens.NoteSize) <= width
            ? [line]
            : told.Select(words => DrawnText.Clean($"{control.Name}: {words}"));
    }

    private static string Told(Circuit circuit, Position position) => $"{position.Name} {Joined(circuit, position)}";

    /// <summary>What a position joins: <c>A0+A1, B0+B1</c>, or <c>nothing</c>.</summary>
    public static string Joined(Circuit circuit, Position position)
    {
        var joined = position.Closed.Select(group =>
            string.Join('+', group.Select(lug => circuit.Lugs[lug].Terminal.Name))
        );
        return position.Closed.IsEmpty ? "nothing" : string.Join(", ", joined);
    }
}
