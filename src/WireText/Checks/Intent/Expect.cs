using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Forms;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Intent;

/// <summary>Finds what the author expects and the circuit does not do.</summary>
public sealed class Expect : IStudyCheck
{
    public const string Id = "expect";

    /// <summary>States listed beyond the first.</summary>
    private const int Listed = 4;

    public CheckDescription Description { get; } =
        new(
            Id: Id,
            Title: "the circuit does not do what is expected",
            Severity: Severity.Error,
            Group: FindingGroup.Sound,
            Why: """
            A line that says what a position is meant to do is proved or refuted from the wires. Many wrong wires make
            another circuit that works, two positions exchanged or a pickup turned round, and only what is meant tells
            them apart.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            expect sel=2: [|neck|]
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            expect sel=1: neck
            expect sel=2: bridge
            """,
            Mend: """
            Compare what is there with what is meant: the finding names the first state that differs. Mend the wires, or
            the line if it was wrong. Where one edit alone makes every claim true, the finding gives it as lines to write;
            where two or three do, it gives each. What every position does is a command away: wiretext positions FILE.
            """
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var refuted = context
            .JudgedExpectations.Select(one => context.Study.JudgeOf(one).Refute(one, context.Cancellation))
            .OfType<Refutation>()
            .ToList();
        return refuted.Count == 0 ? [] : [Report(context, refuted)];
    }

    /// <summary>One finding: a wrong wire refutes many lines. The first is told whole, the others as places.</summary>
    private Finding Report(StudyContext context, List<Refutation> refuted) =>
        Report(context, refuted, FittingValue.Find(context, refuted)) with
        {
            Related =
            [
                .. OtherStates(context, refuted[0]),
                .. refuted
                    .Skip(1)
                    .Select(other => new RelatedPlace(
                        other.Claim.DeclaredAt,
                        "refuted too: " + Statement(context, other)
                    )),
            ],
        };

    /// <summary>Where the claim fails too, beside the state that is told.</summary>
    private static IEnumerable<RelatedPlace> OtherStates(StudyContext context, Refutation refuted) =>
        StatesOf(context, refuted).Skip(1).ToList() is { Count: > 0 } others
            ? [new RelatedPlace(refuted.Claim.DeclaredAt, $"it fails too at {Some(others)}")]
            : [];

    /// <summary>What to mend: a value where one value is all that differs, else the wires.</summary>
    private static string MendOf(List<Refutation> refuted, string? fitting) =>
        fitting is not null ? $"it fits with {fitting}"
        : refuted.TrueForAll(one => BandOf(one.Claim) is not null) ? "compare the values, and then the wires"
        : "mend the wires";

    /// <param name="all">What is refuted, the first of which is told.</param>
    /// <param name="fitting">The value that would fit; null where none does.</param>
    private Finding Report(StudyContext context, List<Refutation> all, string? fitting)
    {
        var refuted = all[0];
        var otherwise = Instead(context.Circuit, refuted) is { } instead
            ? $"or if this is what it is meant to do, write: {instead}"
            : "or take the claim out";

        return Description.At(
            refuted.Claim.DeclaredAt,
            Statement(context, refuted),
            $"{MendOf(all, fitting)}, {otherwise}",
            [.. SubjectsOf(context.Circuit, refuted)]
        ) with
        {
            // Where an edit of a wire mends it as well, that is told first, and the value behind it.
            Remedy = fitting is null ? Remedy.Told : Remedy.Value,
            Otherwise = fitting is null ? otherwise : $"or it fits with {fitting}, {otherwise}",
        };
    }

    private static string Statement(StudyContext context, Refutation refuted)
    {
        var states = StatesOf(context, refuted);
        var more =
            states.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $" and in {states.Count - 1} more") : "";
        var band = BandOf(refuted.Claim) is { } allowed ? $" ({allowed})" : "";
        var at = JackOf(context, refuted) + At(states[0]) + more;
        var there = $"there is: {WhatIsThere(context, refuted)}";

        // The claim stands on the line that is marked.
        return ShortMessage.FirstOf(
            $"'{refuted.Claim.Text}'{band} is expected {at}, but {there}",
            $"{at} {there}",
            there
        );
    }

    private static List<string> StatesOf(StudyContext context, Refutation refuted) =>
        [.. refuted.Failing.Select(state => WordsOf(context.Circuit, refuted.Expectation, state))];

    /// <summary>What a claimed value allows, from the least to the most; null for a claim of no value.</summary>
    private static string? BandOf(Claim claim) =>
        claim switch
        {
            ReadsClaim reads => Band(reads.Ohms, reads.Tolerance, Unit.Ohm),
            ResonatesClaim resonates => Band(resonates.Hertz, resonates.Tolerance, Unit.Hertz),
            LevelClaim level => Band(level.Decibels, level.Tolerance),
            LevelAtClaim level => Band(level.Decibels, level.Tolerance),
            _ => null,
        };

    private static string Band(double value, double share, Unit unit) =>
        $"{ValueText.Figure(value * (1 - share), unit)} to {ValueText.Figure(value * (1 + share), unit)}";

    private static string Band(double level, double tolerance) =>
        $"{LevelText(level - tolerance)} to {LevelText(level + tolerance)}";

    /// <summary>The jack that the line is about, where there are several.</summary>
    private static string JackOf(StudyContext context, Refutation refuted) =>
        context.Study.At(refuted.Expectation.Jack).Circuit.JackToName() is { } jack ? $"at '{jack}' " : "";

    private static string At(string state) => state == "rest" ? "at rest" : $"at {state}";

    private static string Some(List<string> states) =>
        states.Count <= Listed
            ? string.Join(", ", states)
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Join(", ", states.Take(Listed))} and {states.Count - Listed} more"
            );

    /// <summary>The settings that the line names, each at the position meant here, and those that <c>any</c> stands for.</summary>
    private static string WordsOf(Circuit circuit, Expectation expectation, State state)
    {
        var words = Meant(circuit, expectation, state)
            .Select(at => StateText.Of(at.Control, at.Position))
            .Concat(
                circuit
                    .Dials.Where(dial => expectation.State.Names(dial.Name))
                    .Select(dial => StateText.Of(dial, expectation.State.Travels[dial.Index]))
            )
            .ToList();
        return words.Count == 0 ? StateText.RestWord : string.Join(' ', words);
    }

    /// <summary>The controls that the line names, and those that <c>any</c> stands for, each with its position here.</summary>
    private static IEnumerable<(Control Control, int Position)> Meant(
        Circuit circuit,
        Expectation expectation,
        State state
    ) =>
        state
            .Stated.Select(at => (Control: circuit.Controls[at.Control], at.Position))
            .Where(at => expectation.State[at.Control.Index] is null || expectation.State.Names(at.Control.Name));

    private static string WhatIsThere(StudyContext context, Refutation refuted)
    {
        var there = refuted.There;
        if (refuted.Run is { } run)
        {
            return RunText.Of(run);
        }

        return refuted.Claim switch
        {
            BatteryClaim claim => !context.Circuit.Elements.Any(element => element is Battery) ? "no battery"
            : claim.IsOn ? "a battery that nothing draws from"
            : "a battery that is drawn from",
            ReadsClaim => there.Reading switch
            {
                { Kind: ReadingKind.None } => "no reading",
                { } reading => ValueText.Figure(reading.Ohms, Unit.Ohm) + Marked(AssumedValues.BearReading(there)),
                null => "not computed",
            },
            ResonatesClaim when there.Outcome == Outcome.Sound => there.Resonance is { } peak
                ? ValueText.Figure(peak.Hertz, Unit.Hertz) + Marked(AssumedValues.BearPeak(there))
                : "no peak",
            LevelClaim or LevelAtClaim when refuted.LevelDecibels is { } level => LevelText(level)
                + Marked(AssumedValues.BehindResponse(there).Any()),
            HumCancellingClaim when there.Outcome == Outcome.Sound => Hum(there.Sound)
                + " of "
                + Heard(context, there)
                + Marked(there.Sound.IsHumAssumed),
            _ => Heard(context, there) + Marked(there.Outcome == Outcome.Sound && there.Sound.IsPhaseAssumed),
        };
    }

    /// <summary>What is there by values of coils that nobody gave must not pass for what a meter would show.</summary>
    private static string Marked(bool isAssumed) => isAssumed ? ", by assumed values" : "";

    private static string Heard(StudyContext context, StateAnalysis there) =>
        new PositionRow(there.State, there, null).WhatIsHeard(context.Circuit);

    private static string Hum(JackSound sound) =>
        sound.Hum is { Word: HumWord.LeftOver } hum
            ? $"hum left over ({hum.ResidueDecibels.ToString("0.0", CultureInfo.InvariantCulture)} dB)"
            : "the full hum";

    /// <summary>The claim that would hold; null for what no claim can say.</summary>
    private static string? Instead(Circuit circuit, Refutation refuted)
    {
        var there = refuted.There;
        if (refuted.Run is { } run)
        {
            return RunText.Claimable(run) is { } percent
                ? $"{refuted.Claim.Text[..refuted.Claim.Text.LastIndexOf(' ')]} {percent}"
                : null;
        }

        return (refuted.Claim, there.Outcome) switch
        {
            (BatteryClaim battery, _) => circuit.Elements.Any(element => element is Battery)
                ? battery.IsOn
                    ? "battery off"
                    : "battery on"
                : null,
            (ReadsClaim, _) => there.Reading is { Kind: not ReadingKind.None } reading
                ? $"reads {ValueText.Label(reading.Ohms, Unit.Ohm, 3)}"
                : null,
            (ResonatesClaim, _) => there.Resonance is { } peak
                ? $"resonates {ValueText.Label(peak.Hertz, Unit.Hertz, 3)}"
                : null,
            (LevelClaim, _) => refuted.LevelDecibels is { } level ? $"level {LevelWord(level)}" : null,
            (LevelAtClaim claim, _) => refuted.LevelDecibels is { } level
                ? $"level {LevelWord(level)} at {ValueText.Label(claim.Hertz, Unit.Hertz)}"
                : null,
            (HumCancellingClaim, _) => null,
            (_, Outcome.Short or Outcome.Quiet) => "silence",
            (_, Outcome.Open) => "open",
            (_, Outcome.Dead) => "dead",
            (_, Outcome.Sound) => FormText.AsClaim(circuit, there.Form),
            _ => null,
        };
    }

    /// <summary>Rounded to a tenth, with no minus before a zero.</summary>
    private static string LevelText(double decibels) =>
        (Math.Round(decibels, 1) + 0.0).ToString("0.0", CultureInfo.InvariantCulture) + " dB";

    private static string LevelWord(double decibels) => LevelText(decibels).Replace(" ", "", StringComparison.Ordinal);

    private static IEnumerable<Subject> SubjectsOf(Circuit circuit, Refutation refuted) =>
        Meant(circuit, refuted.Expectation, refuted.Failing[0])
            .Select(at => Subject.Position(at.Control.Name, at.Control.Positions[at.Position].Name))
            .Concat(
                circuit
                    .Dials.Where(dial => refuted.Expectation.State.Names(dial.Name))
                    .Select(dial => Subject.Part(circuit.Parts[dial.Part].Name))
            )
            .Concat(PickupsIn(circuit, refuted));

    /// <summary>The pickups that are claimed and not heard, or heard and not claimed; all that are claimed when only their join differs.</summary>
    private static IEnumerable<Subject> PickupsIn(Circuit circuit, Refutation refuted)
    {
        if (refuted.Claim is not CoilsClaim claim)
        {
            return [];
        }

        var claimed = claim.Coils.All().ToHashSet();
        var heard = refuted.There.Sound.Heard.Select(one => one.Coil.Index).ToHashSet();
        var differing = claimed.SetEquals(heard) ? claimed : claimed.Except(heard).Concat(heard.Except(claimed));
        return differing
            .Order()
            .Select(coil => Subject.Part(circuit.Parts[circuit.Elements[coil].Part].Name))
            .Distinct();
    }
}
