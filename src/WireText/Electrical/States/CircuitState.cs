using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;

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

    /// <summary>What is not at rest, in the words of the circuit: <c>sel=neck vol=7</c>; <c>rest</c> when all is.</summary>
    public string InWords(Circuit circuit)
    {
        var moved = circuit
            .Controls.Where(control => Positions[control.Index] != control.Rest)
            .Select(control =>
                (control.Part, Words: $"{control.Name}={control.Positions[Positions[control.Index]].Name}")
            )
            .Concat(
                circuit
                    .Dials.Where(dial => !Travels[dial.Index].Equals(dial.Rest))
                    .Select(dial => (dial.Part, Words: $"{dial.Name}={TravelText(Travels[dial.Index])}"))
            )
            .OrderBy(setting => setting.Part)
            .Select(setting => setting.Words)
            .ToList();
        return moved.Count == 0 ? StateReader.RestWord : string.Join(' ', moved);
    }

    internal static string TravelText(double travel) => travel.ToString("0.###", CultureInfo.InvariantCulture);
}
