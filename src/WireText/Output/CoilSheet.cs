using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Output;

/// <summary>The words of a table of coils: their values, and where each comes from.</summary>
/// <param name="Rows">Each with one cell a column.</param>
/// <param name="Origins">For each row where its values come from; empty when the text gives them all.</param>
/// <param name="Remarks">Whole sentences without a full stop.</param>
internal sealed record CoilSheet(
    ImmutableArray<string> Heading,
    ImmutableArray<ImmutableArray<string>> Rows,
    ImmutableArray<string> Origins,
    ImmutableArray<string> Remarks
)
{
    private const double ReferenceCelsius = 20;
    private const string AllGiven = "given";

    /// <summary>With the origins in a column of their own, if there are any.</summary>
    public ImmutableArray<string> FullHeading => Origins.IsEmpty ? Heading : Heading.Add("where from");

    public ImmutableArray<ImmutableArray<string>> FullRows =>
        Origins.IsEmpty ? Rows : [.. Rows.Zip(Origins, (row, origin) => row.Add(origin))];

    /// <summary>Null when the circuit has no coil.</summary>
    public static CoilSheet? Of(Circuit circuit)
    {
        var coils = circuit.Elements.OfType<Coil>().ToList();
        if (coils.Count == 0)
        {
            return null;
        }

        var day = circuit.Surroundings;
        string[] origins =
        [
            .. coils.Select(coil =>
                string.Join(PositionSheet.NoteMark, OriginsOf(circuit, coil).Concat(NotesOf(coil)))
            ),
        ];
        var areAllGiven = Array.TrueForAll(origins, origin => origin == AllGiven);
        var isUsualDay = day is { CoolestCelsius: ReferenceCelsius, WarmestCelsius: ReferenceCelsius };
        return new CoilSheet(
            [
                "coil",
                "at 20 °C",
                .. isUsualDay ? Array.Empty<string>() : [$"at {Day(day)}"],
                "inductance",
                "capacitance",
                "alone",
                "wound",
                "magnet",
            ],
            [.. coils.Select(coil => Cells(circuit, coil, isUsualDay))],
            areAllGiven ? [] : [.. origins],
            [.. RemarksOf(coils, areAllGiven)]
        );
    }

    private static ImmutableArray<string> Cells(Circuit circuit, Coil coil, bool isUsualDay)
    {
        var from = coil.Origins;
        return
        [
            coil.Name,
            ValueText.Figure(coil.Ohms, Unit.Ohm) + MarkOf(from.Ohms),
            .. isUsualDay ? Array.Empty<string>() : [OhmsOfTheDay(coil.Ohms, circuit.Surroundings) + MarkOf(from.Ohms)],
            ValueText.Figure(coil.Henries, Unit.Henry) + MarkOf(from.Henries),
            ValueText.Figure(coil.Farads, Unit.Farad) + MarkOf(from.Farads),
            coil.OwnResonanceHertz is { } hertz
                ? ValueText.Figure(hertz, Unit.Hertz)
                    + (AssumedValues.IsResonanceAssumed(coil) ? AssumedValues.Mark : "")
                : "-",
            CoilWords.Of(coil.Winding ?? Winding.Clockwise) + MarkOf(from.Winding),
            CoilWords.Of(coil.Magnet ?? MagnetPole.North) + MarkOf(from.Magnet),
        ];
    }

    private static string MarkOf(ValueOrigin origin) => origin == ValueOrigin.Assumed ? AssumedValues.Mark : "";

    /// <summary>One phrase an origin, those that the text says first; one word when all are given.</summary>
    private static IEnumerable<string> OriginsOf(Circuit circuit, Coil coil)
    {
        var from = coil.Origins;
        (string Name, ValueOrigin Origin)[] values =
        [
            ("resistance", from.Ohms),
            ("inductance", from.Henries),
            ("capacitance", from.Farads),
            ("winding", from.Winding),
            ("magnet", from.Magnet),
        ];
        ValueOrigin[] order =
        [
            ValueOrigin.Given,
            ValueOrigin.Shared,
            ValueOrigin.ByModel,
            ValueOrigin.ByWinding,
            ValueOrigin.Assumed,
        ];
        var groups = order
            .Select(origin => (origin, Names: values.Where(v => v.Origin == origin).Select(v => v.Name).ToList()))
            .Where(group => group.Names.Count > 0)
            .ToList();
        return groups.Select(group =>
            (
                groups.Count == 1 ? ""
                : group == groups[^1] && group.Names.Count > 1 ? "the rest "
                : ListOf(group.Names) + " "
            ) + Words(circuit, coil, group.origin)
        );
    }

    private static string Words(Circuit circuit, Coil coil, ValueOrigin origin) =>
        origin switch
        {
            ValueOrigin.Given => AllGiven,
            ValueOrigin.Shared => "given for the whole pickup, shared equally",
            ValueOrigin.ByModel => $"given by the model {circuit.Parts[coil.Part].Definition.Model}",
            ValueOrigin.ByWinding => $"computed: {WireText(coil.Wire!)}",
            _ => $"assumed, {UsualText(circuit.Parts[coil.Part], circuit)}",
        };

    private static string UsualText(Part part, Circuit circuit) =>
        part.Elements.Count(element => circuit.Elements[element] is Coil) is > 1 and var count
            ? $"usual for one of {count.ToString(CultureInfo.InvariantCulture)} coils in series"
            : "usual for a single coil";

    private static string WireText(CoilWire wire) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{wire.Turns:#,0.##} turns of AWG {wire.Gauge:0.##}, {wire.TurnMetres * 1e3:0.##} mm each"
        );

    /// <summary>What the winding says beside a resistance that is given, and what is missing for it to say anything.</summary>
    private static IEnumerable<string> NotesOf(Coil coil)
    {
        if (coil.Wire is not { } wire || coil.Origins.Ohms == ValueOrigin.ByWinding)
        {
            yield break;
        }

        if (wire.Ohms is { } computed)
        {
            yield return $"its winding would give {ValueText.Figure(computed, Unit.Ohm)}, {Apart(computed, coil.Ohms)}: {WireText(wire)}";
        }
        else if (coil.Origins.Ohms == ValueOrigin.Assumed)
        {
            yield return $"its winding gives a resistance once {MissingOf(wire)} is said too";
        }
    }

    private static string Apart(double computed, double given)
    {
        var percent = Math.Round(100 * ((computed / given) - 1), 1);
        return percent == 0
            ? "as given"
            : $"{Math.Abs(percent).ToString("0.#", CultureInfo.InvariantCulture)} % {(percent < 0 ? "less" : "more")} than given";
    }

    private static string MissingOf(CoilWire wire)
    {
        string[] missing =
        [
            .. wire.Turns is null ? ["turns="] : Array.Empty<string>(),
            .. wire.Gauge is null ? ["awg="] : Array.Empty<string>(),
            .. wire.TurnMetres is null ? ["turn-length="] : Array.Empty<string>(),
        ];
        return ListOf(missing);
    }

    private static IEnumerable<string> RemarksOf(List<Coil> coils, bool areAllGiven)
    {
        if (areAllGiven)
        {
            yield return "every value of the coils is given by the text";
        }

        if (coils.Exists(IsAssumed))
        {
            yield return "* assumed, not measured: the text does not say; dcr= l= c= wind= magnet= on the pickup's line do";
        }

        yield return "alone: where the coil resonates by itself, with no cable, pot or amplifier on it";
    }

    private static bool IsAssumed(Coil coil) =>
        coil.Origins is var from
        && (from.Ohms, from.Henries, from.Farads, from.Winding, from.Magnet)
            is
                (ValueOrigin.Assumed, _, _, _, _)
                or
                (_, ValueOrigin.Assumed, _, _, _)
                or
                (_, _, ValueOrigin.Assumed, _, _)
                or
                (_, _, _, ValueOrigin.Assumed, _)
                or
                (_, _, _, _, ValueOrigin.Assumed);

    private static string OhmsOfTheDay(double ohms, Surroundings day)
    {
        var least = ValueText.Figure(ohms * Ohmmeter.CopperFactor(day.CoolestCelsius), Unit.Ohm);
        var most = ValueText.Figure(ohms * Ohmmeter.CopperFactor(day.WarmestCelsius), Unit.Ohm);
        return least == most ? least : $"{least} to {most}";
    }

    private static string Day(Surroundings day)
    {
        var (low, high) = (Degrees(day.CoolestCelsius), Degrees(day.WarmestCelsius));
        return low == high ? $"{low} °C" : $"{low} to {high} °C";
    }

    private static string Degrees(double celsius) =>
        celsius.ToString("0.#", CultureInfo.InvariantCulture).Replace('-', '−');

    private static string ListOf(IReadOnlyList<string> names) =>
        names.Count == 1 ? names[0] : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";
}
