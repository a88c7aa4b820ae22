using System.Globalization;
using WireText.Text;

namespace WireText.Circuits;

/// <summary>Reads a state as it is said at the bench: <c>sel=neck,vol=7</c>. What is not named is at rest.</summary>
/// <remarks>
/// Settings are parted by commas or blanks. Positions go by the circuit's own words, upper and lower case alike; dials by a
/// number from 0 to 10. <c>rest</c> alone is everything at rest.
/// </remarks>
public static class StateReader
{
    /// <summary>How many words a message lists before it says only how many there are.</summary>
    private const int MostListed = 12;

    public static Read<State> Read(Circuit circuit, string text)
    {
        var state = State.Rest(circuit);
        var settings = text.Split([',', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (settings is [StateText.RestWord])
        {
            return Text.Read.Good(state);
        }

        if (settings.Length == 0)
        {
            return Text.Read.Bad<State>("no state is given; write CONTROL=POSITION, or rest");
        }

        var named = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var setting in settings)
        {
            var parts = setting.Split('=', 2);
            if (!named.Add(parts[0]))
            {
                return Text.Read.Bad<State>($"'{parts[0]}' is set twice");
            }

            var set = Set(circuit, state, parts[0], parts.Length == 2 ? parts[1] : "");
            if (set.Value is null)
            {
                return set;
            }

            state = set.Value;
        }

        return Text.Read.Good(state);
    }

    /// <summary>What to say of a name that is neither a control nor a dial.</summary>
    internal static string UnknownControl(Circuit circuit, string name)
    {
        var known = circuit.Controls.Select(control => control.Name).Concat(circuit.Dials.Select(dial => dial.Name));
        return $"no control is called '{name}'{Offer(name, [.. known])}";
    }

    /// <summary>The word that was probably meant, else all that there are.</summary>
    internal static string Offer(string word, IReadOnlyList<string> known) =>
        DidYouMean.Nearest(word, known) is { } near ? $"; did you mean '{near}'?"
        : known.Count == 0 ? "; there is none"
        : known.Count <= MostListed ? $"; there is {string.Join(", ", known)}"
        : string.Create(CultureInfo.InvariantCulture, $"; there are {known.Count}, such as {known[0]}");

    private static Read<State> Set(Circuit circuit, State state, string name, string value) =>
        Setting.Read(circuit.Controls, circuit.Dials, name, value, mayBeAny: false) switch
        {
            Setting.OfDial set => Text.Read.Good(state.With(set.Dial, set.Travel)),
            Setting.OfControl { Position: { } position } set => Text.Read.Good(state.With(set.Control, position)),
            Setting.OffTheDial off => Text.Read.Bad<State>(
                $"'{off.Dial.Name}' turns from 0 to 10"
                    + (value.Length == 0 ? $"; write {off.Dial.Name}=5" : $"; '{value}' is not on it")
            ),
            Setting.NoPosition none => Text.Read.Bad<State>(NoPosition(none.Control, value)),
            _ => Text.Read.Bad<State>(UnknownControl(circuit, name)),
        };

    private static string NoPosition(Control control, string value)
    {
        string[] words = [.. control.Positions.Select(position => position.Name)];
        return value.Length == 0
            ? $"'{control.Name}' needs a position; write {control.Name}={words[0]}"
            : $"'{control.Name}' has no position '{value}'{Offer(value, words)}";
    }
}
