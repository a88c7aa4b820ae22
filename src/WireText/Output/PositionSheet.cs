using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Quantities;

namespace WireText.Output;

/// <summary>The words of a table of positions: a heading, rows of cells, and what is said below them.</summary>
/// <param name="Rows">Each with one cell a column.</param>
/// <param name="Remarks">Whole sentences without a full stop.</param>
internal sealed record PositionSheet(
    ImmutableArray<string> Heading,
    ImmutableArray<ImmutableArray<string>> Rows,
    ImmutableArray<string> Remarks
)
{
    /// <summary>What parts the notes of a row from what is heard.</summary>
    public const string NoteMark = "; ";

    /// <summary>The head of the column that names the jack of a row, where there are several.</summary>
    public const string JackColumn = "jack";

    private const string Nothing = "-";

    /// <summary>The column that may be broken into lines: what is heard.</summary>
    public int HeardColumn { get; private init; }

    public static PositionSheet Of(PositionTable table)
    {
        var columns = table
            .Columns.Concat(table.Local.Select(local => local.Control))
            .DistinctBy(control => control.Index)
            .OrderBy(control => control.Index)
            .ToList();
        return new PositionSheet(
            [
                .. table.HasJacks ? [JackColumn] : Array.Empty<string>(),
                .. columns.Select(control => control.Name),
                "heard",
                "level",
                "hum",
                "meter",
                "peak",
            ],
            [.. RowsOf(table).Select(row => Cells(table.Circuit, columns, row))],
            [.. RemarksOf(table)]
        )
        {
            HeardColumn = columns.Count + (table.HasJacks ? 1 : 0),
        };
    }

    /// <summary>The rows, then the other positions of local controls.</summary>
    public static IEnumerable<PositionRow> RowsOf(PositionTable table) =>
        table.Rows.Concat(table.Local.SelectMany(local => local.Rows));

    /// <summary>The name of the jack that a row is about; nothing in a table of one jack.</summary>
    public static IEnumerable<string> JackOf(Circuit circuit, PositionRow row) =>
        row.Jack is { } jack ? [circuit.Parts[jack].Name] : [];

    public static string PositionOf(Control control, PositionRow row) => StateText.PositionOf(control, row.State);

    /// <summary>What is heard and what else is to be known of a row.</summary>
    public static IEnumerable<string> NotesOf(PositionRow row)
    {
        if (row.Analysis.Sound.IsThin)
        {
            yield return "cancels in the model: real strings leave a thin sound";
        }

        if (row.Doubt is { IsHeardSure: false } doubt)
        {
            var names = string.Join(", ", doubt.Elements.Select(element => element.Name));
            yield return $"what is heard turns on {names}, which nobody knows";
        }

        foreach (var coil in row.Antennas)
        {
            yield return $"{coil.Name} hangs on the signal by one end: an antenna";
        }

        if (Math.Abs(row.Analysis.JackVolts ?? 0) > Thresholds.JackVolts)
        {
            yield return $"direct voltage at the tip: {ValueText.Figure(row.Analysis.JackVolts!.Value, Unit.Volt)}";
        }
    }

    /// <summary>The words for a hum: <c>cancelled (−24 dB)</c>, <c>−9.5 dB left over</c>, <c>full</c>.</summary>
    public static string HumOf(Hum hum) =>
        hum.Word switch
        {
            HumWord.Cancelled when hum.ResidueDecibels <= Thresholds.BalanceFloorDecibels => "cancelled",
            HumWord.Cancelled => $"cancelled ({Signed(hum.ResidueDecibels, "0")} dB)",
            HumWord.LeftOver => $"{Signed(hum.ResidueDecibels, "0.0")} dB left over",
            _ => "full",
        };

    public static string ReadingOf(Reading reading) =>
        reading.Kind switch
        {
            ReadingKind.Joined => "0 Ω",
            ReadingKind.None => "no reading",
            _ when reading.IsInDoubt => Range(
                ValueText.Figure(reading.Least, Unit.Ohm),
                ValueText.Figure(reading.Most, Unit.Ohm)
            ),
            _ => $"{ValueText.Figure(reading.Ohms, Unit.Ohm)} ({Band(reading)})",
        };

    /// <summary>What is heard, the level, the hum, the meter and the peak of one row.</summary>
    public static ImmutableArray<string> CellsOf(Circuit circuit, PositionRow row) =>
        Cells(circuit, [], row with { Jack = null });

    private static ImmutableArray<string> Cells(Circuit circuit, List<Control> columns, PositionRow row)
    {
        var (sound, isSound) = (row.Analysis.Sound, row.Analysis.Outcome == Outcome.Sound);
        return
        [
            .. JackOf(circuit, row),
            .. columns.Select(control => PositionOf(control, row)),
            string.Join(
                NoteMark,
                NotesOf(row)
                    .Prepend(row.WhatIsHeard(circuit) + (isSound && sound.IsPhaseAssumed ? AssumedValues.Mark : ""))
            ),
            row.LevelDecibels is { } level ? LevelOf(row, level) : Nothing,
            isSound && sound.Hum is { } hum ? HumOf(hum) + (sound.IsHumAssumed ? AssumedValues.Mark : "") : Nothing,
            row.Analysis.Reading is { } reading
                ? ReadingOf(reading) + (AssumedValues.BearReading(row.Analysis) ? AssumedValues.Mark : "")
                : "not computed",
            isSound ? PeakOf(row) + (AssumedValues.BearPeak(row.Analysis) ? AssumedValues.Mark : "") : Nothing,
        ];
    }

    /// <summary>The level; where it rests on what nobody knows, from the least to the most.</summary>
    private static string LevelOf(PositionRow row, double level)
    {
        if (row.Doubt is not { LeastDecibels: { } least, MostDecibels: { } most })
        {
            return $"{Signed(level, "0.0")} dB" + (row.Doubt is null ? "" : AssumedValues.Mark);
        }

        var over = level - row.Analysis.Sound.LevelDecibels;
        return Range($"{Signed(least + over, "0.0")} dB", $"{Signed(most + over, "0.0")} dB") + AssumedValues.Mark;
    }

    /// <summary>Both ends with the unit once where it is the same; one where both are alike.</summary>
    private static string Range(string least, string most)
    {
        var (low, high) = (least.Split(' '), most.Split(' '));
        return least == most ? least
            : low[1] == high[1] ? $"{low[0]} to {most}"
            : $"{least} to {most}";
    }

    private static string PeakOf(PositionRow row) =>
        row.Doubt is { Lowest: { } lowest, Highest: { } highest } doubt
            ? (doubt.MayHaveNoPeak ? "none, or " : "")
                + Range(ValueText.Figure(lowest.Hertz, Unit.Hertz), ValueText.Figure(highest.Hertz, Unit.Hertz))
        : row.Analysis.Resonance is not { } peak ? "none"
        // Where the low strings cancel, a height over them means nothing.
        : row.Analysis.Sound.IsThin ? ValueText.Figure(peak.Hertz, Unit.Hertz)
        : $"{ValueText.Figure(peak.Hertz, Unit.Hertz)}, {Signed(peak.HeightDecibels, "+0.0")} dB";

    private static string Band(Reading reading)
    {
        var (least, most) = (ValueText.Figure(reading.Least, Unit.Ohm), ValueText.Figure(reading.Most, Unit.Ohm));
        var (unit, otherUnit) = (least.Split(' ')[1], most.Split(' ')[1]);
        return
            unit == otherUnit && ValueText.Figure(reading.Ohms, Unit.Ohm).EndsWith(" " + unit, StringComparison.Ordinal)
            ? $"{least.Split(' ')[0]}–{most.Split(' ')[0]}"
            : $"{least}–{most}";
    }

    private static IEnumerable<string> RemarksOf(PositionTable table)
    {
        var circuit = table.Circuit;
        if (!table.Crowding.IsEmpty)
        {
            var names = string.Join(", ", table.Crowding.Select(control => control.Name));
            yield return $"{names} together make more than {SituationTree.Limit.ToString(CultureInfo.InvariantCulture)} situations: too many to list";
            yield break;
        }

        if (table.HasJacks)
        {
            yield return "each jack with an amplifier on it alone: nothing loads the others";
        }

        foreach (var local in table.Local.DistinctBy(local => (local.Control, local.Pickup)))
        {
            yield return $"{local.Control.Name} changes {circuit.Parts[local.Pickup].Name} alone: its other positions are shown once, the other controls as in the first line";
        }

        foreach (var bare in table.BareReadings)
        {
            var jack = bare.Jack is { } named ? $"jack '{circuit.Parts[named].Name}'" : "jack";
            yield return $"probes on the bare {jack}, no plug in it: {ReadingOf(bare.Reading)}{CubeOf(circuit, bare)}";
        }

        if (AssumedCoils(table) is { Count: > 0 } assumed)
        {
            yield return $"* assumed: {string.Join(", ", assumed)} wound clockwise, magnet north, where the text does not say";
        }

        if (DoubtText.Remark(RowsOf(table).SelectMany(row => row.Doubt?.Elements ?? [])) is { } unknown)
        {
            yield return unknown;
        }

        if (RowsOf(table).Any(row => AssumedValues.AreOfCoils(row.Analysis)))
        {
            yield return "* with coils whose resistance, inductance or capacitance is assumed: see the table of coils";
        }

        yield return $"level against {ReferenceOf(table)}; peak over 100 Hz, into {ValueText.Figure(circuit.Surroundings.CableFarads, Unit.Farad)} of cable and {ValueText.Figure(circuit.Surroundings.InputOhms, Unit.Ohm)}; hum at {circuit.Surroundings.MainsHertz.ToString("0", CultureInfo.InvariantCulture)} Hz";
        yield return circuit.Dials.IsEmpty
            ? "meter on the plug, batteries out"
            : $"dials at rest: {RestOf(circuit)}; meter on the plug, batteries out";
        yield return TemperatureRemark(circuit.Surroundings);
    }

    private static string ReferenceOf(PositionTable table) =>
        table.Reference == LevelReference.OneCoil ? "what the strings induce in one coil" : "the loudest line";

    private static string CubeOf(Circuit circuit, BareReading bare)
    {
        var words = StateText.OfStated(circuit, bare.State);
        return words.Length == 0 ? "" : $" at {words}";
    }

    private static List<string> AssumedCoils(PositionTable table) =>
        RowsOf(table).Any(row => row.Analysis.Sound.IsPhaseAssumed || row.Analysis.Sound.IsHumAssumed)
            ?
            [
                .. table
                    .Circuit.Elements.OfType<Coil>()
                    .Where(coil => CoilSigns.ArePhaseAssumed(coil))
                    .Select(coil => coil.Name),
            ]
            : [];

    /// <summary>Where every dial rests: <c>vol 10, tone 10</c>.</summary>
    public static string RestOf(Circuit circuit) =>
        string.Join(
            ", ",
            circuit.Dials.Select(dial => $"{dial.Name} {dial.Rest.ToString("0.##", CultureInfo.InvariantCulture)}")
        );

    /// <summary>At what temperature a meter reads, what stands in brackets, and what another day does to coils.</summary>
    public static string TemperatureRemark(Surroundings day)
    {
        var usual = Surroundings.Usual;
        if ((day.CoolestCelsius, day.WarmestCelsius) != (usual.CoolestCelsius, usual.WarmestCelsius))
        {
            var (low, high) = (Degrees(day.CoolestCelsius), Degrees(day.WarmestCelsius));
            return low == high
                ? $"meter at {low} °C; in brackets what tolerances allow"
                : $"meter at {low} to {high} °C; in brackets what that and tolerances allow";
        }

        return $"meter at 20 °C, in brackets what tolerances allow; coils read {Change(10)} at 10 °C, {Change(35)} at 35 °C";
    }

    private static string Change(double celsius)
    {
        var percent = Math.Round(100 * (Ohmmeter.CopperFactor(celsius) - 1));
        return $"{Math.Abs(percent).ToString("0", CultureInfo.InvariantCulture)} % {(percent < 0 ? "less" : "more")}";
    }

    private static string Degrees(double celsius) => Signed(celsius, "0.#");

    /// <summary>With a minus that is as wide as a plus, and no minus before a zero.</summary>
    internal static string Signed(double value, string format)
    {
        var plus = format[0] == '+' ? "+" : "";
        var digits = format.TrimStart('+');
        var text = Math.Abs(value).ToString(digits, CultureInfo.InvariantCulture);
        return value < 0 && text.Any(c => c is >= '1' and <= '9') ? "−" + text : plus + text;
    }
}
