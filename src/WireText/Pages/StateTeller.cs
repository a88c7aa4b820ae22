using System.Collections.Concurrent;
using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Responses;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Output;

namespace WireText.Pages;

/// <summary>Tells what states of one circuit do, as the table of positions and the response tell it.</summary>
/// <param name="loudest">The level that is 0 dB, over the EMF of one coil.</param>
internal sealed class StateTeller(Study study, double loudest)
{
    /// <summary>Of the frequencies of the response each third: 13 an octave, more than a small chart shows. Chosen.</summary>
    private const int EachOf = 3;

    private readonly ConcurrentDictionary<JackSound, Lazy<Curve?>> curves = new();

    /// <summary>The same circuit with values in place of those that nobody knows.</summary>
    private readonly ImmutableArray<Analyst> doubted = [.. study.Doubted.Select(variant => variant.Analyst)];

    /// <summary>The frequencies of a curve.</summary>
    public static ImmutableArray<double> Hertz { get; } =
    [.. ResponseStudy.Hertz.Where((_, place) => place % EachOf == 0)];

    /// <summary>In the order of the states, whatever the number of processors.</summary>
    public Told[] Tell(ImmutableArray<State> states, CancellationToken cancellation)
    {
        var told = new Told[states.Length];
        Parallel.For(
            0,
            states.Length,
            new ParallelOptions { CancellationToken = cancellation },
            place => told[place] = Tell(states[place])
        );
        return told;
    }

    /// <summary>The levels at the jack in dB over the EMF of one coil, at <see cref="Hertz"/>; null when nothing sounds.</summary>
    private ImmutableArray<double>? LevelsOf(JackSound sound) =>
        StringResponse.Of(study.Circuit, sound.Live)?.DecibelsAt(Hertz.AsSpan());

    private Told Tell(State state)
    {
        var analysis = study.Analyse(state);
        var isSound = analysis.Outcome == Outcome.Sound;
        var row = new PositionRow(state, analysis, isSound ? analysis.Sound.LevelDecibels - loudest : null)
        {
            Doubt = RowDoubt.Of(study.Circuit, analysis, doubted),
        };
        var cells = PositionSheet.CellsOf(study.Circuit, row);
        var curve = isSound ? CurveOf(analysis.Sound) : null;
        var band =
            curve is not null && row.Doubt is not null
                ? ResponseStudy.BandOf(study, state, Hertz, curve.Levels, CancellationToken.None)
                : null;
        return new Told(
            cells[0],
            cells[1],
            cells[2],
            cells[3],
            cells[4],
            curve?.Told,
            band is { } lower ? ToldOf(lower.Least) : null,
            band is { } upper ? ToldOf(upper.Most) : null,
            row.Doubt is { } doubt ? string.Join(", ", doubt.Elements.Select(DoubtText.Of)) : "",
            string.Join(", ", AssumedValues.BehindResponse(analysis).Select(coil => coil.Name))
        );
    }

    private Curve? CurveOf(JackSound sound) =>
        curves
            .GetOrAdd(sound, one => new(() => LevelsOf(one) is { } levels ? new Curve(levels, ToldOf(levels)) : null))
            .Value;

    private static ToldCurve ToldOf(ImmutableArray<double> levels) =>
        new(LevelCode.Of(levels), levels.Min(), levels.Max());

    private sealed record Curve(ImmutableArray<double> Levels, ToldCurve Told);
}
