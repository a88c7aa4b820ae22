using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.BenchPlans;
using WireText.Electrical.Positions;
using WireText.Electrical.Sound;

namespace WireText.Output;

/// <summary>The words of a bench plan: its tables cell by cell, and its remarks.</summary>
internal sealed class BenchSheet(BenchPlan plan)
{
    /// <summary>Where the technician writes what was found.</summary>
    private const string ToFill = "________";

    private const string AtRest = "at rest";

    private readonly Circuit circuit = plan.Circuit;
    private readonly ImmutableArray<Control> moved = [.. plan.Moved];

    /// <summary>The column of the readings that may be broken into lines: what is expected.</summary>
    public int ExpectedColumn => ReadingHeading.IndexOf("expected");

    /// <summary>The column of the taps that may be broken into lines: what sounds.</summary>
    public int SoundingColumn => TapHeading.IndexOf("sounds");

    public ImmutableArray<string> ReadingHeading =>
        ["no.", .. moved.Select(control => control.Name), "dials", "from", "to", "expected", "range", "found"];

    public ImmutableArray<ImmutableArray<string>> Readings => [.. plan.Readings.Select(Cells)];

    public ImmutableArray<string> TapHeading =>
        [
            .. HasJacks ? [PositionSheet.JackColumn] : Array.Empty<string>(),
            .. moved.Select(control => control.Name),
            "sounds",
            "needle",
            "found",
        ];

    public ImmutableArray<ImmutableArray<string>> Taps => [.. plan.Taps.Select(Cells)];

    private bool HasJacks => plan.Taps.Select(tap => tap.Jack).Distinct().Skip(1).Any();

    /// <summary>The controls that stand elsewhere over the plan, each with its position in a state.</summary>
    public IEnumerable<string> PositionsIn(State state) =>
        moved.Select(control => StateText.PositionOf(control, state));

    /// <summary>Whole sentences without a full stop.</summary>
    public IEnumerable<string> ReadingRemarks()
    {
        yield return circuit.Dials.IsEmpty
            ? "lead plugged into the instrument alone, batteries out"
            : $"lead plugged into the instrument alone, batteries out; dials at rest: {PositionSheet.RestOf(circuit)}";
        yield return PositionSheet.TemperatureRemark(circuit.Surroundings);
        yield return $"range is the meter's; over {BenchWords.RangeOf(MeterRange.Highest)} it shows nothing";
        if (
            plan.Readings.Any(reading => reading.Expected is { IsInDoubt: true })
            && DoubtText.Remark(DoubtVariants.InDoubt(circuit)) is { } unknown
        )
        {
            yield return unknown;
        }

        if (plan.Readings.Any(reading => reading is { IsAssumed: true, Expected: not { IsInDoubt: true } }))
        {
            yield return "* with coils whose resistance is assumed: measure the coil alone";
        }

        if (!plan.AreAllReadings)
        {
            yield return $"there are more: the first {plan.Readings.Length.ToString(CultureInfo.InvariantCulture)} are told";
        }
    }

    /// <summary>Whole sentences without a full stop.</summary>
    public IEnumerable<string> TapRemarks()
    {
        yield return "tap the pole pieces with iron, dials at rest: these sound in an amplifier, turned low";
        if (ReferenceCoil() is { } reference)
        {
            yield return $"needle: a meter with a pointer on the plug, no amplifier; alike kicks as {reference} does in the first line where it sounds, against kicks the other way";
        }

        if (plan.Taps.SelectMany(tap => tap.Sounding).Any(tapped => tapped.IsAssumed))
        {
            yield return "* wound clockwise, magnet north is assumed where the text does not say";
        }
    }

    private string? ReferenceCoil() =>
        plan.Taps.SelectMany(tap => tap.Sounding).FirstOrDefault(tapped => tapped.Swing != Swing.Unclear)?.Coil.Name;

    private ImmutableArray<string> Cells(BenchReading reading, int index) =>
        [
            BenchWords.NumberOf(index),
            .. PositionsIn(reading.State),
            DialsOf(reading),
            circuit.NameOf(reading.Points.Probe),
            circuit.NameOf(reading.Points.Reference),
            ExpectedOf(reading),
            BenchWords.RangeOf(reading.Range),
            ToFill,
        ];

    private ImmutableArray<string> Cells(TapCheck tap) =>
        [
            .. HasJacks ? [circuit.Parts[tap.Jack].Name] : Array.Empty<string>(),
            .. PositionsIn(tap.State),
            tap.Sounding.IsEmpty ? Silent(tap.Outcome) : string.Join(", ", Named(tap.Sounding)),
            NeedleOf(tap),
            ToFill,
        ];

    /// <summary>The dial that is turned and where to; <c>at rest</c> where none is.</summary>
    public static string DialsOf(BenchReading reading) =>
        reading.Turned is { } dial
            ? $"{dial.Name} {reading.State.Travels[dial.Index].ToString("0.##", CultureInfo.InvariantCulture)}"
            : AtRest;

    private static string ExpectedOf(BenchReading reading) =>
        reading.Expected is not { } expected ? "not computed"
        : reading.Band.IsContinuity || reading.Band.IsNothing ? BenchWords.BandOf(reading.Band)
        : PositionSheet.ReadingOf(expected) + (reading.IsAssumed ? AssumedValues.Mark : "");

    private static string Silent(Outcome outcome) => outcome == Outcome.NotComputed ? "not computed" : "nothing";

    private string NeedleOf(TapCheck tap)
    {
        var groups = tap
            .Sounding.GroupBy(tapped => tapped.Swing)
            .OrderBy(group => group.Key)
            .Select(group => (Word: WordFor(group.Key), Names: string.Join(", ", Named([.. group]))))
            .ToList();
        var mark = tap.Sounding.Any(tapped => tapped.IsAssumed) ? AssumedValues.Mark : "";
        return groups.Count switch
        {
            0 => "-",
            1 => groups[0].Word + mark,
            _ => string.Join(", ", groups.Select(group => $"{group.Word}: {group.Names}")) + mark,
        };
    }

    /// <summary>A pickup by its name where all of its coils that hear strings are there, else coil by coil.</summary>
    private IEnumerable<string> Named(ImmutableArray<TappedCoil> tapped) =>
        tapped
            .GroupBy(one => one.Coil.Part)
            .SelectMany(group =>
                group.Count()
                == circuit.Elements.OfType<Coil>().Count(coil => coil.Part == group.Key && coil.HearsStrings)
                    ? [circuit.Parts[group.Key].Name]
                    : group.Select(one => one.Coil.Name)
            );

    private static string WordFor(Swing swing) =>
        swing switch
        {
            Swing.Alike => "alike",
            Swing.Against => "against",
            _ => "unclear",
        };
}
