using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Tests.Judging;

/// <summary>How an instrument is set on the bench: every switch and plug in a position, every dial at a travel from 0 to 10.</summary>
/// <param name="Positions">For each of the circuit's controls, the index of its position.</param>
internal sealed record BenchSetting(ImmutableArray<int> Positions, ImmutableArray<double> Travels)
{
    public static BenchSetting Rest(Circuit circuit) =>
        new([.. circuit.Controls.Select(control => control.Rest)], [.. circuit.Dials.Select(dial => dial.Rest)]);

    /// <summary>Every choice of a position for each control, dials at rest; the last control moves first.</summary>
    public static IEnumerable<BenchSetting> AllPositions(Circuit circuit)
    {
        IEnumerable<ImmutableArray<int>> choices =
        [
            [],
        ];
        foreach (var control in circuit.Controls)
        {
            choices = choices.SelectMany(choice => Enumerable.Range(0, control.Positions.Length).Select(choice.Add));
        }

        var rest = Rest(circuit);
        return choices.Select(choice => rest with { Positions = choice });
    }

    /// <summary>
    /// The same with the dials as they are tried: at rest, all at 0, all at 10, all at 5, and twice with no two alike.
    /// </summary>
    public IEnumerable<BenchSetting> Turned()
    {
        yield return this;
        foreach (var travel in new[] { 0.0, 10.0, 5.0 })
        {
            yield return this with
            {
                Travels = [.. Travels.Select(_ => travel)],
            };
        }

        yield return this with
        {
            Travels = [.. Travels.Select((_, dial) => 8.3 / (dial + 1))],
        };
        yield return this with
        {
            Travels = [.. Travels.Select((_, dial) => 10 - (8.9 / (dial + 1)))],
        };
    }

    /// <summary>Positions and travels by name: <c>sel=neck vol=5</c>.</summary>
    public string In(Circuit circuit) =>
        string.Join(
            ' ',
            circuit
                .Controls.Select(control => $"{control.Name}={control.Positions[Positions[control.Index]].Name}")
                .Concat(
                    circuit.Dials.Select(dial => FormattableString.Invariant($"{dial.Name}={Travels[dial.Index]:0.##}"))
                )
        );
}
