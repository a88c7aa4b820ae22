using System.Collections.Immutable;
using System.Globalization;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Binds <c>expect</c> lines: the jack and the state that they name, and what they claim of it.</summary>
/// <param name="names">Finds what a line names.</param>
internal sealed class ExpectBinder(CircuitDraft draft, StateBinder names)
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
            !names.ReadJack(syntax.Jack, out var jack)
            || names.HasTwice(syntax.State)
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
            Naming.Alike(pair.Key.Text, StateText.OthersWord) || names.Read(pair, positions, travels);
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
            ValueClaimSyntax value => OfARun(value, ReadValue(value, at)),
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

    /// <summary>The claim with the share of a run that it is made of; null where that share is none.</summary>
    private Claim? OfARun(ValueClaimSyntax syntax, Claim? claim)
    {
        if (claim is null || syntax.Share is not { } word)
        {
            return claim;
        }

        if (PercentIn(word.Text) is > 0 and <= 1 and var share)
        {
            return claim with { Share = share };
        }

        draft.Sink.Add(
            ValueFindings.BadValue.At(
                word.Location,
                $"'{word.Text}' is no share of a run",
                "write how many instruments of a hundred, above 0% and up to 100%, such as 95%"
            )
        );
        return null;
    }

    private static double? PercentIn(string text) => text.EndsWith('%') ? Number(text[..^1]) / 100 : null;

    private double? Percent(WordSyntax word)
    {
        if (PercentIn(word.Text) is { } percent)
        {
            return percent;
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
            : names.CoilsOf(coil.Coil!) is { } coils ? new ClaimedPickup(coils, Through: [], IsReversed: false)
            : null;
        var through = coil.Through is { } word ? names.FindPart(word) : null;
        return claimed is null || (coil.Through is not null && through is null)
            ? null
            : claimed with
            {
                Through = through is null ? claimed.Through : claimed.Through.Add(through.Index),
                IsReversed = claimed.IsReversed != coil.IsReversed,
            };
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
