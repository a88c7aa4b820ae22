using System.Collections.Immutable;
using System.Globalization;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Binds <c>expect</c> lines: the jack and the state that they name, and what they claim of it.</summary>
/// <param name="outputs">The jacks; a line that names none is about the first.</param>
internal sealed class ExpectBinder(CircuitDraft draft, ImmutableArray<OutputJack> outputs)
{
    /// <summary>How far a reading or a resonance may be off when nothing is said. Chosen.</summary>
    private const double UsualTolerance = 0.03;

    /// <summary>How far a level may be off when nothing is said, in dB. Chosen.</summary>
    private const double UsualDecibels = 1;

    /// <summary>Null when something in the line is not known; it is reported then.</summary>
    public Expectation? Bind(ExpectSyntax syntax)
    {
        var positions = draft.Controls.Select(control => (int?)control.Rest).ToArray();
        var travels = draft.Dials.Select(dial => dial.Rest).ToArray();
        if (
            !ReadJack(syntax, out var jack)
            || HasTwice(syntax)
            || !ReadOthers(syntax, positions)
            || !syntax.State.All(ReadNamed)
        )
        {
            return null;
        }

        var claims = syntax.Claims.Select(Read).OfType<Claim>().ToImmutableArray();
        return claims.Length < syntax.Claims.Length
            ? null
            : new Expectation(
                State
                    .Of(positions, [.. travels])
                    .Saying([.. syntax.State.Select(pair => $"{pair.Key.Text}={pair.Value.Text}")]),
                claims,
                syntax.Location
            )
            {
                Jack = jack,
            };

        bool ReadNamed(PairSyntax pair) =>
            Naming.Alike(pair.Key.Text, StateText.OthersWord) || Read(pair, positions, travels);
    }

    /// <summary>The jack that the line names, or the first.</summary>
    private bool ReadJack(ExpectSyntax syntax, out int? jack)
    {
        jack = outputs.IsEmpty ? null : outputs[0].Part;
        if (syntax.Jack is not { } named)
        {
            return true;
        }

        jack = draft.FindPart(named.Text)?.Index;
        foreach (var output in outputs)
        {
            if (output.Part == jack)
            {
                return true;
            }
        }

        ReportUnknownJack(named);
        return false;
    }

    private void ReportUnknownJack(WordSyntax named)
    {
        if (draft.IsBroken(named.Text))
        {
            return;
        }

        var names = outputs.Select(output => draft.Parts[output.Part].Name).ToList();
        var near = DidYouMean.Nearest(named.Text, names);
        draft.Sink.Add(
            LugFindings
                .UnknownPart.At(
                    named.Location,
                    $"no output jack is named '{named.Text}'",
                    names.Count == 0
                        ? "write a jack with a tip and a sleeve into the file"
                        : $"{(near is null ? "" : $"did you mean '{near}'? ")}the jacks are {string.Join(" and ", names)}"
                )
                .MendedBy(TextEdit.Meant(named.Location, near, names))
        );
    }

    private bool HasTwice(ExpectSyntax syntax)
    {
        for (var i = 0; i < syntax.State.Length; i++)
        {
            var key = syntax.State[i].Key;
            if (syntax.State.Take(i).Any(other => Naming.Alike(other.Key.Text, key.Text)))
            {
                draft.Sink.Add(
                    StatementFindings.SaidTwice.At(key.Location, $"'{key.Text}' is set twice", "keep one of the two")
                );
                return true;
            }
        }

        return false;
    }

    private bool ReadOthers(ExpectSyntax syntax, int?[] positions)
    {
        if (syntax.State.FirstOrDefault(pair => Naming.Alike(pair.Key.Text, StateText.OthersWord)) is not { } others)
        {
            return true;
        }

        if (!Naming.Alike(others.Value.Text, StateText.AnyWord))
        {
            draft.Sink.Add(
                ControlFindings.UnknownPosition.At(
                    others.Value.Location,
                    $"the others cannot all stand at '{others.Value.Text}'",
                    "write others=any, which means each of their positions"
                )
            );
            return false;
        }

        foreach (var control in draft.Controls.Where(control => !control.IsPlug))
        {
            positions[control.Index] = null;
        }

        return true;
    }

    private bool Read(PairSyntax pair, int?[] positions, double[] travels)
    {
        switch (Setting.Read(draft.Controls, draft.Dials, pair.Key.Text, pair.Value.Text, mayBeAny: true))
        {
            case Setting.OfControl set:
                positions[set.Control.Index] = set.Position;
                return true;
            case Setting.OfDial set:
                travels[set.Dial.Index] = set.Travel;
                return true;
            case Setting.NoPosition none:
                SettingFindings.ReportNoPosition(draft, none.Control, pair.Value);
                return false;
            case Setting.OffTheDial off:
                SettingFindings.ReportOffTheDial(draft, off.Dial, pair.Value);
                return false;
            default:
                ReportUnknownControl(pair.Key);
                return false;
        }
    }

    private Claim? Read(ClaimSyntax syntax)
    {
        var at = syntax.Location;
        return syntax switch
        {
            WordClaimSyntax word => word.Word.Text.ToLowerInvariant() switch
            {
                "silence" => new SilenceClaim(at),
                "open" => new OpenClaim(at),
                "dead" => new DeadClaim(at),
                _ => new HumCancellingClaim(at),
            },
            BatteryClaimSyntax battery => new BatteryClaim(battery.IsOn, at),
            ValueClaimSyntax value => ReadValue(value, at),
            CoilsClaimSyntax coils => Read(coils.Coils) is { } claimed ? new CoilsClaim(claimed, at) : null,
            _ => null,
        };
    }

    private Claim? ReadValue(ValueClaimSyntax syntax, SourceLocation at)
    {
        if (Naming.Alike(syntax.Quantity.Text, "level"))
        {
            return ReadLevel(syntax, at);
        }

        var isReading = Naming.Alike(syntax.Quantity.Text, "reads");
        return
            ReadFigure(syntax.Value, isReading ? ValueUse.MeterReading : ValueUse.Resonance) is { } value
            && ToleranceOf(syntax, UsualTolerance, Percent) is { } tolerance
            ? isReading
                ? new ReadsClaim(value, tolerance, at)
                : new ResonatesClaim(value, tolerance, at)
            : null;
    }

    private Claim? ReadLevel(ValueClaimSyntax syntax, SourceLocation at)
    {
        if (
            Decibels(syntax.Value, "a level needs dB, such as '-6dB'") is not { } level
            || ToleranceOf(
                syntax,
                UsualDecibels,
                word => Decibels(word, "a level's tolerance is in dB, such as '±1dB'")
            )
                is not { } decibels
        )
        {
            return null;
        }

        return syntax.At is null ? new LevelClaim(level, decibels, at)
            : ReadFigure(syntax.At, ValueUse.Frequency) is { } hertz ? new LevelAtClaim(level, hertz, decibels, at)
            : null;
    }

    private double? ReadFigure(WordSyntax word, ValueUse use)
    {
        var reading = ValueReader.Read(word.Text, use);
        if (reading.Problem is { } problem)
        {
            var help = reading.Suggestion is { } suggestion ? $"write '{suggestion}'" : null;
            draft.Sink.Add(ValueFindings.BadValue.At(word.Location, problem, help));
        }

        return reading.Value;
    }

    private static double? ToleranceOf(ValueClaimSyntax syntax, double usual, Func<WordSyntax, double?> read)
    {
        if (syntax.Tolerance is not { } word)
        {
            return usual;
        }

        var marks = word.Text.StartsWith('±') ? 1 : 2;
        return read(word.Part(marks, word.Text.Length));
    }

    private double? Percent(WordSyntax word)
    {
        if (word.Text.EndsWith('%') && Number(word.Text[..^1]) is { } percent)
        {
            return percent / 100;
        }

        draft.Sink.Add(
            ValueFindings.BadValue.At(
                word.Location,
                $"'{word.Text}' is no tolerance",
                "write it in percent, such as ±3%"
            )
        );
        return null;
    }

    private double? Decibels(WordSyntax word, string problem)
    {
        var text = word.Text.Replace('−', '-');
        if (
            text.EndsWith("dB", StringComparison.OrdinalIgnoreCase)
            && double.TryParse(
                text[..^2],
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var decibels
            )
        )
        {
            return decibels;
        }

        draft.Sink.Add(ValueFindings.BadValue.At(word.Location, $"'{word.Text}' is no level", problem));
        return null;
    }

    private ClaimedCoils? Read(CoilsSyntax syntax)
    {
        if (syntax is JoinedCoilsSyntax joined)
        {
            var parts = joined.Coils.Select(Read).OfType<ClaimedCoils>().ToImmutableArray();
            return parts.Length < joined.Coils.Length
                ? null
                : new ClaimedJoin(joined.Join == CoilJoin.Series, parts, Through: [], IsReversed: false);
        }

        var coil = (CoilSyntax)syntax;
        var claimed =
            coil.Group is { } group ? Read(group)
            : CoilsOf(coil.Coil!) is { } coils ? new ClaimedPickup(coils, Through: [], IsReversed: false)
            : null;
        var through = coil.Through is { } word ? FindPart(word) : null;
        return claimed is null || (coil.Through is not null && through is null)
            ? null
            : claimed with
            {
                Through = through is null ? claimed.Through : claimed.Through.Add(through.Index),
                IsReversed = claimed.IsReversed != coil.IsReversed,
            };
    }

    /// <summary>All coils of a pickup, or the one that is named.</summary>
    private ImmutableArray<int>? CoilsOf(LugSyntax name)
    {
        if (FindPart(name.Name) is not { } part)
        {
            return null;
        }

        var coils = part.Elements.Select(element => draft.Elements[element]).OfType<Coil>().ToList();
        if (coils.Count == 0)
        {
            var pickups = draft
                .Parts.Where(other => other.Elements.Any(e => draft.Elements[e] is Coil))
                .Select(p => p.Name);
            draft.Sink.Add(
                LugFindings.UnknownPart.At(
                    name.Location,
                    $"'{part.Name}' has no coil to be heard",
                    $"name a pickup: {string.Join(", ", pickups)}"
                )
            );
            return null;
        }

        var named = name.Words.Length == 1 ? coils : coils.FindAll(coil => Naming.Alike(coil.Name, name.FullName));
        if (named.Count > 0)
        {
            return [.. named.Select(coil => coil.Index)];
        }

        draft.Sink.Add(
            LugFindings.UnknownPart.At(
                name.Location,
                $"'{part.Name}' has no coil '{name.Words[^1].Text}'",
                $"write {string.Join(" or ", coils.Select(coil => coil.Name))}"
            )
        );
        return null;
    }

    private Part? FindPart(WordSyntax name)
    {
        if (draft.FindPart(name.Text) is { } part)
        {
            return part;
        }

        if (ClaimWords.Meant(name.Text) is { } claim)
        {
            draft.Sink.Add(
                LugFindings
                    .UnknownPart.At(name.Location, $"no part is named '{name.Text}'", $"did you mean '{claim}'?")
                    .MendedBy(new TextEdit(name.Location, claim))
            );
        }
        else if (!draft.IsBroken(name.Text))
        {
            var names = draft.Parts.Select(p => p.Name).ToList();
            var near = DidYouMean.Nearest(name.Text, names, allowed: 1) ?? DidYouMean.CutShort(name.Text, names);
            draft.Sink.Add(
                LugFindings.UnknownPart.At(
                    name.Location,
                    $"no part is named '{name.Text}'",
                    near is null ? null : $"did you mean '{near}'?"
                )
            );
        }

        return null;
    }

    private void ReportUnknownControl(WordSyntax key)
    {
        var part = key.Text.Split('.')[0];
        if (draft.IsBroken(part) || draft.IsNameTwice(part))
        {
            return;
        }

        var names = draft
            .Controls.Select(control => control.Name)
            .Concat(draft.Dials.Select(dial => dial.Name))
            .ToList();
        var near = DidYouMean.Nearest(key.Text, names, allowed: 1) ?? DidYouMean.CutShort(key.Text, names);
        var isPart = draft.FindPart(part) is not null;
        var ofThePart = names.Where(name => name.StartsWith($"{part}.", StringComparison.OrdinalIgnoreCase)).ToList();
        draft.Sink.Add(
            (isPart ? ControlFindings.NoPositions : LugFindings.UnknownPart).At(
                key.Location,
                isPart ? $"'{key.Text}' has no positions and no dial" : $"no part is named '{part}'",
                near is not null ? $"did you mean '{near}'?"
                    : ofThePart.Count > 0 ? $"say which of its controls: {string.Join(" or ", ofThePart)}"
                    : null
            )
        );
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
