using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.States;

/// <summary>Where everything that can be moved stands: a position of every control and a travel of every dial.</summary>
/// <param name="Positions">For each control of the circuit, the index of its position.</param>
/// <param name="Travels">For each dial of the circuit, 0 to 10.</param>
public sealed record CircuitState(ImmutableArray<int> Positions, ImmutableArray<double> Travels)
{
    /// <summary>Everything as the parts or the text say that it rests.</summary>
    public static CircuitState Rest(Circuit circuit) =>
        new([.. circuit.Controls.Select(control => control.Rest)], [.. circuit.Dials.Select(dial => dial.Rest)]);

    public DialSetting DialsOf(Network network) => DialSetting.At(network, Travels);

    /// <summary>The settings that were named, in the circuit's words and in the order said: <c>sel=neck</c>.</summary>
    public ImmutableArray<string> Named { get; init; } = [];

    /// <summary>The state as it was said; <c>rest</c> when nothing was named.</summary>
    public string InWords => Named.IsEmpty ? StateReader.RestWord : string.Join(' ', Named);

    /// <summary>The same with a control in a position.</summary>
    public CircuitState With(Control control, int position) =>
        this with
        {
            Positions = Positions.SetItem(control.Index, position),
            Named = Renamed(control.Name, control.Positions[position].Name),
        };

    /// <summary>The same with a dial at a travel.</summary>
    public CircuitState With(Dial dial, double travel) =>
        this with
        {
            Travels = Travels.SetItem(dial.Index, travel),
            Named = Renamed(dial.Name, TravelText(travel)),
        };

    private static string TravelText(double travel) => travel.ToString("0.###", CultureInfo.InvariantCulture);

    private ImmutableArray<string> Renamed(string name, string value) =>
        [.. Named.Where(setting => !setting.StartsWith(name + "=", StringComparison.Ordinal)), $"{name}={value}"];
}
