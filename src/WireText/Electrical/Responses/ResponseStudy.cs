using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;
using WireText.Electrical.Tolerances;

namespace WireText.Electrical.Responses;

/// <summary>The level over frequency at the jack in several states, and with other values, for one look at all of them.</summary>
/// <param name="Circuit">As it is wired.</param>
/// <param name="Common">The settings that all curves share, in the circuit's words.</param>
/// <param name="IsOrdered">True when the curves follow each other as one dial turns.</param>
public sealed record ResponseStudy(
    Circuit Circuit,
    ImmutableArray<ResponseCurve> Curves,
    ImmutableArray<string> Common,
    bool IsOrdered
)
{
    /// <summary>What the circuit without other values is called beside them.</summary>
    public const string AsWired = "as wired";

    /// <summary>How many curves one study may have: more cannot be told apart. Chosen.</summary>
    public const int MostCurves = 24;

    /// <summary>40 an octave: a curve of them is smooth at the size of a chart. Chosen.</summary>
    private const int PointCount = 400;

    /// <summary>The range of hearing, as charts of sound have it.</summary>
    private const double LowestHertz = 20;
    private const double HighestHertz = 20e3;

    /// <summary>400 frequencies from 20 Hz to 20 kHz, each the same ratio above the one before.</summary>
    public static readonly ImmutableArray<double> Hertz =
    [
        .. Enumerable
            .Range(0, PointCount)
            .Select(i => LowestHertz * Math.Pow(HighestHertz / LowestHertz, (double)i / (PointCount - 1))),
    ];

    /// <summary>One line on what the marked curves rest on; null when the text gives every value that matters.</summary>
    public string? Assumption =>
        Curves.SelectMany(curve => curve.AssumedCoils).Distinct(StringComparer.Ordinal).ToList() is { Count: > 0 } coils
            ? $"* with assumed values of {string.Join(", ", coils)}: dcr= l= c= wind= magnet= on a pickup's line give them"
            : null;

    /// <summary>The run that bands stand for; null where they stand for what nobody knows, or there are none.</summary>
    public RunOptions? Run { get; init; }

    /// <summary>One line on what bands of a run stand for; null where they do not.</summary>
    public string? RunRemark =>
        Run is null
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"Bands: at each frequency nine of ten instruments of a run of {Run.Count:#,0}, seed {Run.Seed}, each value anywhere within its tolerance."
            );

    /// <summary>One line on what bands stand for; null when every value is known.</summary>
    public string? Unknown => DoubtText.Remark(Curves.SelectMany(curve => curve.InDoubt));

    /// <param name="states">Where things stand, at least one.</param>
    /// <param name="sweeps">Each state is taken at each setting of each sweep.</param>
    /// <param name="changes">Each state is computed as wired, then with each change.</param>
    /// <returns>Null when that makes more than <see cref="MostCurves"/>.</returns>
    public static ResponseStudy? Of(
        Study study,
        IReadOnlyList<State> states,
        IReadOnlyList<Sweep> sweeps,
        IReadOnlyList<CircuitChange> changes,
        CancellationToken cancellation = default
    )
    {
        var swept = states;
        foreach (var sweep in sweeps)
        {
            swept = [.. swept.SelectMany(sweep.Over)];
            if (swept.Count > MostCurves)
            {
                return null;
            }
        }

        if (swept.Count * (1 + changes.Count) > MostCurves)
        {
            return null;
        }

        (string? Words, Study Study)[] wirings =
        [
            (null, study),
            .. changes.Select(change => ((string?)change.Words, study.Beside(change.Circuit))),
        ];
        ImmutableArray<ResponseCurve> curves =
        [
            .. swept.SelectMany(state =>
                wirings.Select(wiring => Trace(wiring.Study, state, wiring.Words, cancellation))
            ),
        ];
        var common = curves
            .Select(curve => curve.State.Named)
            .Aggregate((shared, named) => [.. shared.Where(named.Contains)]);
        return new ResponseStudy(
            study.Circuit,
            [
                .. curves.Select(curve =>
                    curve with
                    {
                        Label =
                            (study.Circuit.JackToName() is { } jack ? $"{jack}: " : "")
                            + LabelOf(curve, common, curves.Length, changes.Count > 0),
                    }
                ),
            ],
            common,
            states.Count == 1 && changes.Count == 0 && sweeps is [{ IsDial: true }]
        );
    }

    private static ResponseCurve Trace(Study study, State state, string? change, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var circuit = study.Circuit;
        var analysis = study.Analyse(state);
        var levels =
            analysis.Outcome == Outcome.Sound
                ? StringResponse.Of(circuit, LiveNetwork.Of(study.Network, state))?.DecibelsAt(Hertz.AsSpan())
                : null;
        var heard = new PositionRow(state, analysis, LevelDecibels: null).WhatIsHeard(circuit);
        var band =
            levels is { } known && !analysis.InDoubt.IsEmpty ? BandOf(study, state, Hertz, known, cancellation) : null;
        return new ResponseCurve(state, change, analysis.Outcome, heard, levels, analysis.Resonance)
        {
            InDoubt = band is null ? [] : analysis.InDoubt,
            Least = band?.Least,
            Most = band?.Most,
            AssumedCoils = levels is null ? [] : [.. AssumedValues.BehindResponse(analysis).Select(coil => coil.Name)],
        };
    }

    /// <summary>The least and the most at each frequency, over all that was looked at; where nothing sounds, the least that is told.</summary>
    /// <param name="known">The levels at these frequencies with what the unknown values are taken for.</param>
    internal static (ImmutableArray<double> Least, ImmutableArray<double> Most)? BandOf(
        Study study,
        State state,
        ImmutableArray<double> hertz,
        ImmutableArray<double> known,
        CancellationToken cancellation
    )
    {
        var (least, most) = (known.ToBuilder(), known.ToBuilder());
        foreach (var variant in study.Doubted)
        {
            cancellation.ThrowIfCancellationRequested();
            var levels = StringResponse
                .Of(variant.Circuit, LiveNetwork.Of(variant.Network, state))
                ?.DecibelsAt(hertz.AsSpan());
            for (var i = 0; i < known.Length; i++)
            {
                var level = levels?[i] ?? Decibels.Floor;
                least[i] = Math.Min(least[i], level);
                most[i] = Math.Max(most[i], level);
            }
        }

        return (least.ToImmutable(), most.ToImmutable());
    }

    private static string LabelOf(ResponseCurve curve, ImmutableArray<string> common, int count, bool hasChanges)
    {
        if (count == 1)
        {
            return StateText.AsSaid(curve.State);
        }

        var own = curve.State.Named.Where(setting => !common.Contains(setting)).ToList();
        if (hasChanges)
        {
            own.Add(curve.Change ?? AsWired);
        }

        return own.Count == 0 ? StateText.RestWord : string.Join(' ', own);
    }
}
