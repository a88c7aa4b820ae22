using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;

namespace WireText.Electrical.BenchPlans;

/// <summary>Which way a needle on the plug kicks when iron touches the pole pieces of a coil.</summary>
public enum Swing
{
    /// <summary>As for the coil that all are compared with.</summary>
    Alike,

    /// <summary>The other way: together they would be out of phase.</summary>
    Against,

    /// <summary>Neither for certain: something in its way turns the phase.</summary>
    Unclear,
}

/// <summary>A coil that sounds when it is tapped.</summary>
/// <param name="IsAssumed">True when its swing rests on a winding or a magnet that nobody gave.</param>
public sealed record TappedCoil(Coil Coil, Swing Swing, bool IsAssumed);

/// <summary>Which coils sound when iron taps their pole pieces, in one position of the switches with the dials at rest.</summary>
/// <param name="Jack">The part of the jack that is listened at.</param>
/// <param name="Outcome">Why nothing sounds where no coil does.</param>
/// <param name="Sounding">In order of declaration; a trace does not count.</param>
public sealed record TapCheck(int Jack, State State, Outcome Outcome, ImmutableArray<TappedCoil> Sounding)
{
    /// <summary>A gain whose real part is less of it than this has turned too far to say which way a needle kicks. Chosen: 60°.</summary>
    private const double LeastRealShare = 0.5;

    /// <summary>One for every position at every jack; swings are told against the first coil that sounds in the first of them.</summary>
    internal static ImmutableArray<TapCheck> All(Study study, CancellationToken cancellation)
    {
        var checks = ImmutableArray.CreateBuilder<TapCheck>();
        int? reference = null;
        foreach (var jack in study.Jacks)
        {
            foreach (var state in BenchSettings.At(jack))
            {
                cancellation.ThrowIfCancellationRequested();
                checks.Add(Of(jack.Analyse(state), jack.Circuit.Outputs[0].Part, ref reference));
            }
        }

        return checks.ToImmutable();
    }

    private static TapCheck Of(StateAnalysis analysis, int jack, ref int? reference)
    {
        var (sound, tapped) = (analysis.Sound, ImmutableArray.CreateBuilder<TappedCoil>());
        if (sound is { Outcome: Outcome.Sound, Gains: { } gains })
        {
            foreach (var heard in sound.Heard)
            {
                // A needle follows the slowest of what is computed: the lowest string.
                var gain = gains.BandGains(heard.Place)[0];
                var isClear = Math.Abs(gain.Real) >= LeastRealShare * gain.Magnitude;
                if (isClear)
                {
                    reference ??= Math.Sign(gain.Real);
                }

                tapped.Add(
                    new TappedCoil(
                        heard.Coil,
                        !isClear ? Swing.Unclear
                            : Math.Sign(gain.Real) == reference ? Swing.Alike
                            : Swing.Against,
                        CoilSigns.ArePhaseAssumed(heard.Coil)
                    )
                );
            }
        }

        return new TapCheck(jack, analysis.State, sound.Outcome, tapped.ToImmutable());
    }
}
