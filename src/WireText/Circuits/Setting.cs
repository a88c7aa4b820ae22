using System.Globalization;

namespace WireText.Circuits;

/// <summary>What a setting such as <c>sel=neck</c> or <c>vol=7</c> says, or why it says nothing.</summary>
public abstract record Setting
{
    /// <summary>The highest travel of a dial.</summary>
    public const double HighestTravel = Dial.FullyUp;

    private Setting() { }

    /// <summary>A control in a position, or at any for null.</summary>
    public sealed record OfControl(Control Control, int? Position) : Setting;

    /// <summary>A dial at a travel, 0 to 10.</summary>
    public sealed record OfDial(Dial Dial, double Travel) : Setting;

    /// <summary>The control has no position of that name.</summary>
    public sealed record NoPosition(Control Control) : Setting;

    /// <summary>The dial does not turn to there.</summary>
    public sealed record OffTheDial(Dial Dial) : Setting;

    /// <summary>Nothing that can be moved has that name.</summary>
    public sealed record NoSuchName : Setting;

    /// <summary>Reads a setting by the names of the circuit; upper and lower case are alike.</summary>
    /// <param name="mayBeAny">True where <c>any</c> stands for each position of a control.</param>
    public static Setting Read(
        IEnumerable<Control> controls,
        IEnumerable<Dial> dials,
        string name,
        string value,
        bool mayBeAny
    )
    {
        if (dials.FirstOrDefault(dial => IsSame(dial.Name, name)) is { } dial)
        {
            return ReadTravel(value) is { } travel ? new OfDial(dial, travel) : new OffTheDial(dial);
        }

        if (controls.FirstOrDefault(control => IsSame(control.Name, name)) is not { } control)
        {
            return new NoSuchName();
        }

        for (var position = 0; position < control.Positions.Length; position++)
        {
            if (IsSame(control.Positions[position].Name, value))
            {
                return new OfControl(control, position);
            }
        }

        return mayBeAny && IsSame(value, StateText.AnyWord) ? new OfControl(control, null) : new NoPosition(control);
    }

    /// <summary>The travel that a text says; null when it is no number from 0 to 10.</summary>
    public static double? ReadTravel(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var travel)
        && travel is >= 0 and <= HighestTravel
            ? travel
            : null;

    private static bool IsSame(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
