using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>How much one circuit still has room for, insides of parts with it: a short text may name a large model many times.</summary>
internal sealed class CircuitRoom(FindingSink sink)
{
    private int lugs;
    private int elements;
    private int contacts;

    /// <summary>Takes the room of one more part; reports and gives false where there is not as much left.</summary>
    public bool Take(PartDefinition definition, WordSyntax name)
    {
        var limit =
            !Add(ref lugs, definition.Terminals.Length, CircuitLimits.MaxLugs) ? Words(CircuitLimits.MaxLugs, "lugs")
            : !Add(ref elements, definition.Insides.Length, CircuitLimits.MaxElements)
                ? Words(CircuitLimits.MaxElements, "elements inside its parts")
            : !Add(ref contacts, ContactsOf(definition), CircuitLimits.MaxContacts)
                ? Words(CircuitLimits.MaxContacts, "contacts in the positions of its switches")
            : null;
        if (limit is not null)
        {
            sink.Add(LineFindings.TooLarge.At(name.Location, limit, "divide it into several files"));
        }

        return limit is null;
    }

    private static bool Add(ref int taken, int more, int most)
    {
        var hasRoom = more <= most - taken;
        taken += hasRoom ? more : 0;
        return hasRoom;
    }

    /// <summary>A lug that is closed in three positions is three contacts.</summary>
    private static int ContactsOf(PartDefinition definition) =>
        definition.Controls.Sum(control =>
            control.Positions.Sum(position => position.Closed.Sum(group => group.Terminals.Length))
        );

    private static string Words(int most, string what) => $"one circuit has {most} {what} at most";
}
