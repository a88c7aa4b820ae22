using System.Globalization;

namespace WireText.Circuits;

/// <summary>Words for states: <c>sel=neck vol=7</c>.</summary>
public static class StateText
{
    /// <summary>Stands for everything at rest.</summary>
    public const string RestWord = "rest";

    /// <summary>Stands for each position of a control.</summary>
    public const string AnyWord = "any";

    /// <summary>Stands for every control that is not named, plugs left out.</summary>
    public const string OthersWord = "others";

    /// <summary>A control in a position: <c>sel=both</c>.</summary>
    public static string Of(Control control, int position) => $"{control.Name}={control.Positions[position].Name}";

    /// <summary>A dial at a travel: <c>vol=7.5</c>.</summary>
    public static string Of(Dial dial, double travel) =>
        $"{dial.Name}={travel.ToString("0.###", CultureInfo.InvariantCulture)}";

    /// <summary>The state as it was said; <c>rest</c> when nothing was named.</summary>
    public static string AsSaid(State state) => state.Named.IsEmpty ? RestWord : string.Join(' ', state.Named);

    /// <summary>The name of the position that a control is in; <c>any</c> where it may be in each.</summary>
    public static string PositionOf(Control control, State state) =>
        state[control.Index] is { } position ? control.Positions[position].Name : AnyWord;

    /// <summary>Every control that is not at any, plugs left out.</summary>
    public static IEnumerable<Control> Stated(Circuit circuit, State state) =>
        circuit.Controls.Where(control => !control.IsPlug && state[control.Index] is not null);

    /// <summary>As <see cref="Stated"/>, in words, parted by blanks; empty where there is none.</summary>
    public static string OfStated(Circuit circuit, State state) =>
        string.Join(' ', Stated(circuit, state).Select(control => $"{control.Name}={PositionOf(control, state)}"));
}
