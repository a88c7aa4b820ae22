using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Electrical.Responses;

/// <summary>One control or dial at several settings, one after the other.</summary>
/// <remarks>
/// <c>tone=0..10:5</c> is a dial at five travels, evenly spread; <c>tone</c> alone is that too. <c>sel</c> alone is each
/// position of a switch.
/// </remarks>
public sealed class Sweep
{
    /// <summary>How many settings one sweep may have: more cannot be told apart. Chosen.</summary>
    public const int MostSteps = 24;

    /// <summary>Both ends, the middle and the quarters. Chosen.</summary>
    private const int UsualSteps = 5;

    private readonly Control? control;
    private readonly Dial? dial;
    private readonly ImmutableArray<double> travels;

    private Sweep(Control control) => this.control = control;

    private Sweep(Dial dial, ImmutableArray<double> travels) => (this.dial, this.travels) = (dial, travels);

    /// <summary>True for a dial: its settings follow each other in size.</summary>
    public bool IsDial => dial is not null;

    public static Read<Sweep> Read(Circuit circuit, string text)
    {
        var parts = text.Split('=', 2, StringSplitOptions.TrimEntries);
        if (circuit.FindDial(parts[0]) is { } dial)
        {
            return ReadTravels(dial, parts.Length == 2 ? parts[1] : "0..10");
        }

        if (circuit.FindControl(parts[0]) is not { } control)
        {
            return Bad(StateReader.UnknownControl(circuit, parts[0]));
        }

        return parts.Length == 2
                ? Bad($"a sweep of '{control.Name}' is over all its positions; write '{control.Name}' alone")
            : control.Positions.Length > MostSteps
                ? Bad($"'{control.Name}' has more than {MostSteps} positions; name those you want with --at")
            : new(new Sweep(control), null);
    }

    /// <summary>A state at each of the settings.</summary>
    public IEnumerable<State> Over(State state) =>
        dial is null
            ? Enumerable.Range(0, control!.Positions.Length).Select(position => state.With(control, position))
            : travels.Select(travel => state.With(dial, travel));

    private static Read<Sweep> ReadTravels(Dial dial, string text)
    {
        var parts = text.Split(':');
        var ends = parts[0].Split("..");
        var count = UsualSteps;
        if (
            parts.Length > 2
            || ends.Length != 2
            || Setting.ReadTravel(ends[0]) is not { } from
            || Setting.ReadTravel(ends[1]) is not { } to
            || (
                parts.Length == 2 && !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out count)
            )
        )
        {
            return Bad($"'{text}' is no sweep of a dial; write {dial.Name}=0..10:5 for five travels from 0 to 10");
        }

        return count is < 2 or > MostSteps
            ? Bad($"a sweep has 2 to {MostSteps} settings, not {parts[1]}")
            : new(
                new Sweep(dial, [.. Enumerable.Range(0, count).Select(i => from + ((to - from) * i / (count - 1)))]),
                null
            );
    }

    private static Read<Sweep> Bad(string problem) => new(null, problem);
}
