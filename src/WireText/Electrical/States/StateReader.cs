using System.Globalization;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Electrical.States;

/// <summary>What was read, or why it could not be.</summary>
/// <param name="Value">Null when it could not be read.</param>
/// <param name="Problem">What is wrong, ready to be shown; null when it was read.</param>
public readonly record struct Read<T>(T? Value, string? Problem)
    where T : class;

/// <summary>Reads a state as it is said at the bench: <c>sel=neck,vol=7</c>. What is not named is at rest.</summary>
/// <remarks>
/// Settings are parted by commas or blanks. Positions go by the circuit's own words, upper and lower case alike; dials by a
/// number from 0 to 10. <c>rest</c> alone is everything at rest.
/// </remarks>
public static class StateReader
{
    /// <summary>The highest travel of a dial.</summary>
    public const double HighestTravel = 10;

    public const string RestWord = "rest";

    /// <summary>How many words a message lists before it says only how many there are.</summary>
    private const int MostListed = 12;

    public static Read<CircuitState> Read(Circuit circuit, string text)
    {
        var state = CircuitState.Rest(circuit);
        var settings = text.Split([',', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (settings is [RestWord])
        {
            return Good(state);
        }

        if (settings.Length == 0)
        {
            return Bad("no state is given; write CONTROL=POSITION, or rest");
        }

        var named = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var setting in settings)
        {
            var parts = setting.Split('=', 2);
            if (!named.Add(parts[0]))
            {
                return Bad($"'{parts[0]}' is set twice");
            }

            var set = Set(circuit, state, parts[0], parts.Length == 2 ? parts[1] : null);
            if (set.Value is null)
            {
                return set;
            }

            state = set.Value;
        }

        return Good(state);
    }

    internal static Control? FindControl(Circuit circuit, string name) =>
        circuit.Controls.FirstOrDefault(control => IsSame(control.Name, name));

    internal static Dial? FindDial(Circuit circuit, string name) =>
        circuit.Dials.FirstOrDefault(dial => IsSame(dial.Name, name));

    /// <summary>What to say of a name that is neither a control nor a dial.</summary>
    internal static string UnknownControl(Circuit circuit, string name)
    {
        var known = circuit.Controls.Select(control => control.Name).Concat(circuit.Dials.Select(dial => dial.Name));
        return $"no control is called '{name}'{Offer(name, [.. known])}";
    }

    /// <summary>The travel that a text says; null when it is no number from 0 to 10.</summary>
    internal static double? Travel(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var travel)
        && travel is >= 0 and <= HighestTravel
            ? travel
            : null;

    private static Read<CircuitState> Set(Circuit circuit, CircuitState state, string name, string? value)
    {
        if (FindDial(circuit, name) is { } dial)
        {
            return Travel(value ?? "") is { } travel
                ? Good(state.With(dial, travel))
                : Bad(
                    $"'{dial.Name}' turns from 0 to 10"
                        + (string.IsNullOrEmpty(value) ? $"; write {dial.Name}=5" : $"; '{value}' is not on it")
                );
        }

        if (FindControl(circuit, name) is not { } control)
        {
            return Bad(UnknownControl(circuit, name));
        }

        string[] words = [.. control.Positions.Select(position => position.Name)];
        var place = Array.FindIndex(words, word => IsSame(word, value ?? ""));
        return place >= 0
            ? Good(state.With(control, place))
            : Bad(
                string.IsNullOrEmpty(value)
                    ? $"'{control.Name}' needs a position; write {control.Name}={words[0]}"
                    : $"'{control.Name}' has no position '{value}'{Offer(value, words)}"
            );
    }

    /// <summary>The word that was probably meant, else all that there are.</summary>
    internal static string Offer(string word, IReadOnlyList<string> known) =>
        DidYouMean.Nearest(word, known) is { } near ? $"; did you mean '{near}'?"
        : known.Count == 0 ? "; there is none"
        : known.Count <= MostListed ? $"; there is {string.Join(", ", known)}"
        : string.Create(CultureInfo.InvariantCulture, $"; there are {known.Count}, such as {known[0]}");

    private static Read<CircuitState> Good(CircuitState state) => new(state, null);

    private static Read<CircuitState> Bad(string problem) => new(null, problem);

    private static bool IsSame(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
