using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Quantities;

namespace WireText.Output;

/// <summary>Writes lines that pin what a circuit does now, ready to be pasted below it.</summary>
public static class ExpectLines
{
    /// <summary>Where dials are looked at besides their rest: each alone at 5 and at 0, all at 5 and at 2.</summary>
    private static readonly double[] Alone = [5, 0];

    private static readonly double[] Together = [5, 2];

    /// <summary>One line a row of the table, then those for dials that change it, each with its level.</summary>
    public static string Write(Study study)
    {
        var text = new StringBuilder();
        var (circuit, table) = (study.Circuit, study.Positions);
        ImmutableArray<double> rest = [.. circuit.Dials.Select(dial => dial.Rest)];
        foreach (var row in PositionSheet.RowsOf(table))
        {
            var state = row.State.Settled(circuit);
            var before = study.Analyse(state);
            Append(text, SettingsOf(circuit, row), ClaimsOf(circuit, before));
            foreach (var travels in Turned(rest).Where(_ => before.Outcome == Outcome.Sound))
            {
                var there = study.Analyse(state.At(travels));
                if (Printed(circuit, there) != Printed(circuit, before))
                {
                    var turned = circuit
                        .Dials.Where(dial => travels[dial.Index] != dial.Rest)
                        .Select(dial => $"{dial.Name}={Number(travels[dial.Index])}");
                    Append(text, SettingsOf(circuit, row).Concat(turned), ClaimsOf(circuit, there, before));
                }
            }
        }

        return text.ToString();
    }

    private static IEnumerable<ImmutableArray<double>> Turned(ImmutableArray<double> rest)
    {
        var each = rest.SelectMany((_, dial) => Alone.Select(travel => rest.SetItem(dial, travel)));
        var all = Together.Select(travel => rest.Select(_ => travel).ToImmutableArray());
        return each.Concat(rest.Length > 1 ? all : []).Where(travels => !travels.SequenceEqual(rest));
    }

    private static IEnumerable<string> SettingsOf(Circuit circuit, PositionRow row) =>
        StateText
            .Stated(circuit, row.State)
            .Select(control => $"{control.Name}={StateText.PositionOf(control, row.State)}");

    private static IEnumerable<string> ClaimsOf(Circuit circuit, StateAnalysis there, StateAnalysis? before = null)
    {
        var isSound = there.Outcome == Outcome.Sound;
        var what = there.Outcome switch
        {
            Outcome.Sound => FormText.AsClaim(circuit, there.Form),
            Outcome.Short or Outcome.Quiet => "silence",
            Outcome.Open => "open",
            Outcome.Dead => "dead",
            _ => null,
        };

        // A group through a part has no claim.
        if (what is not null && !what.Contains(") through", StringComparison.Ordinal))
        {
            yield return what;
        }

        if (isSound && there.Sound.Hum is { Word: HumWord.Cancelled } && there.Sound.Gains!.Coils.Length > 1)
        {
            yield return "hum-cancelling";
        }

        if (there.Reading is { Kind: not ReadingKind.None } reading)
        {
            yield return $"reads {ValueText.Label(reading.Ohms, Unit.Ohm, 3)}";
        }

        if (isSound && there.Resonance is { } peak)
        {
            yield return $"resonates {ValueText.Label(peak.Hertz, Unit.Hertz, 3)}";
        }

        if (isSound && before is not null)
        {
            var level = there.Sound.LevelDecibels - before.Sound.LevelDecibels;
            yield return $"level {level.ToString("0.0", CultureInfo.InvariantCulture)}dB";
        }
    }

    private static string Printed(Circuit circuit, StateAnalysis state) =>
        string.Join(
            '|',
            ClaimsOf(circuit, state)
                .Append(state.Outcome == Outcome.Sound ? Number(Math.Round(state.Sound.LevelDecibels)) : "")
        );

    private static void Append(StringBuilder text, IEnumerable<string> settings, IEnumerable<string> claims)
    {
        var (state, what) = (string.Join(' ', settings), string.Join(", ", claims));
        if (what.Length > 0)
        {
            text.Append($"expect  {(state.Length == 0 ? "rest" : state)}:  {what}\n");
        }
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
