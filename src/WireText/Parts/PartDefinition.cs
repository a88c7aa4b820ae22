using System.Collections.Immutable;
using System.Globalization;
using WireText.Geometry;
using WireText.Text;

namespace WireText.Parts;

/// <summary>The outline of a part around its hole at 0,0, in millimetres.</summary>
public abstract record BodyShape
{
    public sealed record Round(double Diameter) : BodyShape;

    public sealed record Box(double Width, double Height) : BodyShape;
}

/// <summary>What has to be drilled or cut for a part, in millimetres.</summary>
public abstract record HoleShape
{
    /// <summary>The largest that a hole may be, along either side. Chosen: more is a route, not a hole.</summary>
    public const double Largest = 100;

    public sealed record Round(double Diameter) : HoleShape;

    /// <summary>Upright in the part's own frame, with round ends on its shorter sides.</summary>
    public sealed record Slot(double Width, double Height) : HoleShape;

    /// <summary>Its size, as in <c>10 mm</c> or <c>26 × 2.5 mm</c>.</summary>
    public string InWords =>
        this switch
        {
            Round round => $"{Text(round.Diameter)} mm",
            Slot slot => $"{Text(slot.Width)} × {Text(slot.Height)} mm",
            _ => "",
        };

    private static string Text(double millimetres) => millimetres.ToString("0.###", CultureInfo.InvariantCulture);

    public bool IsPossible =>
        this switch
        {
            Round round => round.Diameter is > 0 and <= Largest,
            Slot slot => slot.Width is > 0 and <= Largest && slot.Height is > 0 and <= Largest,
            _ => false,
        };
}

/// <summary>A hole of a part: for its shaft or its lever, or for a screw that holds it.</summary>
/// <param name="At">Its middle in the part's own frame, in millimetres.</param>
public sealed record PartHole(HoleShape Shape, Point At);

public enum TerminalKind
{
    /// <summary>A solder point on the part.</summary>
    Lug,

    /// <summary>A wire fixed to the part by its maker; it ends once.</summary>
    Lead,

    /// <summary>A point inside that no wire reaches.</summary>
    Inner,
}

/// <summary>A lug, a lead or an inner point of a part.</summary>
/// <param name="Name">The name inside the part: <c>A1</c>, <c>top.1</c>, <c>case</c>.</param>
/// <param name="Kind">Lug, lead or inner point.</param>
/// <param name="At">Where it sits on the face; null when the definition does not say (inner points never do).</param>
/// <param name="IsMetal">Bare housing, braid or cover: it must reach the sleeve, and takes many joints.</param>
/// <param name="IsSpare">It may stay empty.</param>
public sealed record Terminal(string Name, TerminalKind Kind, Point? At, bool IsMetal, bool IsSpare);

/// <summary>Which way a coil is wound from its start to its finish, seen from the strings.</summary>
public enum Winding
{
    Clockwise,
    CounterClockwise,
}

/// <summary>Which pole of the magnet faces the strings.</summary>
public enum MagnetPole
{
    North,
    South,

    /// <summary>No magnet: a dummy coil that hears hum alone.</summary>
    None,
}

/// <summary>What a part is made of inside. Terminals are named as inside the part.</summary>
public abstract record Inside
{
    /// <summary>A coil from START to FINISH. <paramref name="Name"/> is null for the only coil of a pickup.</summary>
    public sealed record CoilInside(
        string Start,
        string Finish,
        string? Name,
        Winding? Winding,
        MagnetPole? Magnet,
        ImmutableArray<ValuePair> Values
    ) : Inside;

    /// <summary>A resistance track with its low end, wiper and high end. <paramref name="Name"/> is the dial's suffix.</summary>
    /// <param name="FreeAt">The travel, 0 to 10, at which the wiper has left the track and rests on the high lug.</param>
    public sealed record TrackInside(string Low, string Wiper, string High, string? Name, Taper? Taper, double? FreeAt)
        : Inside;

    public sealed record ResistorInside(string A, string B, double? Ohms) : Inside;

    public sealed record CapacitorInside(string A, string B, double? Farads) : Inside;

    public sealed record InductorInside(string A, string B, double? Henries) : Inside;

    public sealed record BatteryInside(string Plus, string Minus, double? Volts) : Inside;

    /// <summary>A voltage amplifier between <paramref name="In"/> and <paramref name="Common"/>.</summary>
    /// <param name="Gain">Voltage ratio.</param>
    /// <param name="InputOhms">Input resistance in ohms.</param>
    /// <param name="OutputOhms">Output resistance in ohms.</param>
    /// <param name="Supply">The terminal that takes the supply; null when it needs none.</param>
    /// <param name="IdleFraction">The share of the supply voltage that stands at the output without signal, 0 to 1.</param>
    /// <param name="DrawAmperes">Supply current without signal, in amperes.</param>
    public sealed record AmplifierInside(
        string In,
        string Out,
        string Common,
        double Gain,
        double InputOhms,
        double OutputOhms,
        string? Supply,
        double IdleFraction,
        double DrawAmperes
    ) : Inside;
}

/// <summary>A key with a value as it was written, kept with its place until the part's kind gives it a meaning.</summary>
public sealed record ValuePair(string Key, string Value, SourceLocation Location);

/// <summary>Lugs that one position of a control joins.</summary>
public sealed record ContactGroup(ImmutableArray<string> Terminals);

/// <summary>One position of a control: its name as the part gives it, and the lugs that it joins.</summary>
public sealed record PositionDefinition(string Name, ImmutableArray<ContactGroup> Closed);

/// <summary>Whether a switch makes the new contact before it breaks the old one.</summary>
public enum SwitchOver
{
    BreakBeforeMake,
    MakeBeforeBreak,
}

/// <summary>Something with positions on a part.</summary>
/// <param name="Suffix">Empty for the control that carries the part's name, else the part after the dot: <c>pull</c>.</param>
/// <param name="Positions">In mechanical order.</param>
/// <param name="Rest">The index of the position it rests in.</param>
public sealed record ControlDefinition(string Suffix, ImmutableArray<PositionDefinition> Positions, int Rest);

/// <summary>What a part is: its lugs and leads, its face, its insides and its contacts. Immutable; shared by all parts of the model.</summary>
/// <param name="Kind">The first word: <c>pickup</c>, <c>pot</c>, <c>switch</c>, or a user's own.</param>
/// <param name="Model">The model's name, such as <c>lever-3way</c>.</param>
/// <param name="Terminals">Lugs, leads, then inner points, in the order of the definition.</param>
/// <param name="Holes">What is drilled for it, the main one first; none where the definition does not say.</param>
/// <param name="DialRest">Where dials rest, 0 to 10; null means 10.</param>
public sealed record PartDefinition(
    string Kind,
    string Model,
    string? Remark,
    BodyShape? Body,
    ImmutableArray<PartHole> Holes,
    ImmutableArray<Terminal> Terminals,
    ImmutableArray<ContactGroup> Joined,
    ImmutableArray<Inside> Insides,
    ImmutableArray<ControlDefinition> Controls,
    SwitchOver Between,
    bool IsEndless,
    double? DialRest,
    SourceLocation DefinedAt
)
{
    /// <summary>The name of the plain model of a kind, which nobody needs to be told.</summary>
    public const string StandardModel = "standard";

    /// <summary>The index in <see cref="Terminals"/> of a terminal that this definition is known to have.</summary>
    public int IndexOf(string name)
    {
        for (var i = 0; i < Terminals.Length; i++)
        {
            if (string.Equals(Terminals[i].Name, name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        throw new ArgumentException($"'{Model}' has no terminal '{name}'", nameof(name));
    }

    /// <summary>The terminal of that name, upper and lower case alike, or null.</summary>
    public Terminal? FindTerminal(string name) =>
        Terminals.FirstOrDefault(t => string.Equals(t.Name, name, StringComparison.OrdinalIgnoreCase));
}
