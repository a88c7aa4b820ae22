using System.Globalization;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Reads <c>load cable=470p input=1M mains=60 temperature=15..30 scale=648mm strings=guitar</c>.</summary>
internal sealed class SurroundingsBinder(FindingSink sink)
{
    /// <summary>In °C; far past where a guitar is played, so that a slip of the pen is seen. Chosen.</summary>
    private const double Coldest = -40;
    private const double Hottest = 80;

    private static readonly string[] Keys = ["cable", "input", "mains", "temperature", "scale", "strings"];

    public Surroundings Bind(LoadSyntax? load)
    {
        var surroundings = Surroundings.Usual;
        foreach (var pair in load?.Pairs ?? [])
        {
            surroundings = pair.Key.Text.ToLowerInvariant() switch
            {
                "cable" when Read(pair.Value, ValueUse.CableCapacitance) is { } farads => surroundings with
                {
                    CableFarads = farads,
                },
                "input" when Read(pair.Value, ValueUse.AmplifierInput) is { } ohms => surroundings with
                {
                    InputOhms = ohms,
                },
                "mains" when Mains(pair.Value) is { } hertz => surroundings with { MainsHertz = hertz },
                "temperature" when Temperature(pair.Value) is var (low, high) => surroundings with
                {
                    CoolestCelsius = low,
                    WarmestCelsius = high,
                },
                "scale" when Read(pair.Value, ValueUse.ScaleLength) is { } metres => surroundings with
                {
                    ScaleMetres = metres,
                },
                "strings" when Strings(pair.Value) is { } strings => surroundings with { Strings = strings },
                "cable" or "input" or "mains" or "temperature" or "scale" or "strings" => surroundings,
                _ => Unknown(pair, surroundings),
            };
        }

        return surroundings;
    }

    private Surroundings Unknown(PairSyntax pair, Surroundings surroundings)
    {
        var help = DidYouMean.Nearest(pair.Key.Text, Keys) is { } meant
            ? $"write {meant}="
            : "a load has cable=, input=, mains=, temperature=, scale= and strings=";
        sink.Add(PartFindings.UnknownKey.At(pair.Key.Location, $"a load has no '{pair.Key.Text}'", help));
        return surroundings;
    }

    private double? Read(WordSyntax word, ValueUse use)
    {
        var reading = ValueReader.Read(word.Text, use);
        if (reading.Problem is { } problem)
        {
            var help = reading.Suggestion is { } suggestion ? $"write '{suggestion}'" : null;
            sink.Add(ValueFindings.BadValue.At(word.Location, problem, help));
        }

        return reading.Value;
    }

    /// <summary>50 or 60: no other mains is in use where guitars are played.</summary>
    private double? Mains(WordSyntax word)
    {
        if (word.Text is "50" or "60")
        {
            return word.Text == "50" ? 50 : 60;
        }

        sink.Add(
            ValueFindings.BadValue.At(
                word.Location,
                $"'{word.Text}' is no mains frequency",
                "write mains=50 or mains=60"
            )
        );
        return null;
    }

    private StringSet? Strings(WordSyntax word)
    {
        foreach (var set in Enum.GetValues<StringSet>())
        {
            if (Naming.Alike(word.Text, StringSetWords.Of(set)))
            {
                return set;
            }
        }

        sink.Add(
            ValueFindings.BadValue.At(
                word.Location,
                $"'{word.Text}' is no set of strings",
                "write strings=guitar or strings=bass"
            )
        );
        return null;
    }

    private (double Low, double High)? Temperature(WordSyntax word)
    {
        var ends = word.Text.Split("..");
        if (ends.Length is 1 or 2 && Celsius(ends[0]) is { } low && Celsius(ends[^1]) is { } high && low <= high)
        {
            return (low, high);
        }

        sink.Add(
            ValueFindings.BadValue.At(
                word.Location,
                $"'{word.Text}' is no temperature",
                "write degrees Celsius: temperature=20 or temperature=15..30"
            )
        );
        return null;
    }

    private static double? Celsius(string text) =>
        double.TryParse(
            text,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var degrees
        ) && degrees is >= Coldest and <= Hottest
            ? degrees
            : null;
}
