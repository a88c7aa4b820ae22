using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Forms;

/// <summary>One state whose form is sought: what is heard there, and what changes when elements are opened or joined.</summary>
internal sealed class FormTrial
{
    private readonly State state;
    private readonly ImmutableArray<HeardCoil> heard;
    private readonly HashSet<int> counted;
    private readonly double[][] balance;

    public FormTrial(Network network, State state, JackSound sound)
    {
        Network = network;
        Sound = sound;
        this.state = state;
        heard = [.. sound.Heard];
        counted =
        [
            .. heard.Select(coil => coil.Coil.Index),
            .. sound.Gains!.Coils.Where(coil => !coil.HearsStrings).Select(coil => coil.Index),
        ];
        balance = BalanceOf(sound.Gains!);
    }

    public Network Network { get; }

    public JackSound Sound { get; }

    public Circuit Circuit => Network.Circuit;

    /// <summary>True for a branch that is part of the form: a heard coil, a coil without magnet, an amplifier's output.</summary>
    public bool Counts(LiveBranch branch) =>
        branch.Source.Kind == BranchKind.AmplifierOutput || counted.Contains(branch.Source.Element);

    public double StrengthOf(Coil coil) => heard.FirstOrDefault(other => other.Coil == coil)?.Decibels ?? 0;

    public LiveNetwork LiveWith(BranchEdits edits) => LiveNetwork.Of(Network, state, edits);

    /// <summary>The most by which any heard coil's gain over the loudest's changes, in dB; infinite when nothing is left to hear.</summary>
    public double BalanceChange(BranchEdits edits)
    {
        if (GainsWith(edits) is not { } gains)
        {
            return double.PositiveInfinity;
        }

        var changed = BalanceOf(gains);
        return heard
            .Select((_, i) => balance[i].Zip(changed[i], (before, after) => Math.Abs(after - before)).Max())
            .Max();
    }

    /// <summary>By how much the treble rises over the low strings, in dB; null when nothing is left to hear.</summary>
    public double? TrebleRise(BranchEdits edits) =>
        GainsWith(edits) is { } gains
            ? gains.TrebleDecibels - gains.PowerDecibels - Sound.Gains!.TrebleDecibels + Sound.Gains.PowerDecibels
            : null;

    private FixedGains? GainsWith(BranchEdits edits) =>
        AcSolver.Prepare(LiveWith(edits), Circuit.Surroundings) is { } solver ? FixedGains.Of(Circuit, solver) : null;

    /// <summary>For each heard coil and each frequency, its gain over the loudest's in dB, not below the floor.</summary>
    private double[][] BalanceOf(FixedGains gains)
    {
        var sizes = heard
            .Select(coil => gains.Coils.IndexOf(coil.Coil))
            .Select(place => place < 0 ? null : gains.BalanceGains(place).ToArray())
            .Select(sizes => sizes ?? new double[FixedFrequencies.Balance.Length])
            .ToArray();
        var loudest = Enumerable
            .Range(0, FixedFrequencies.Balance.Length)
            .Select(f => sizes.Max(size => size[f]))
            .ToArray();
        return
        [
            .. sizes.Select(size =>
                size.Select((value, f) => loudest[f] > 0 ? Decibels.Of(value / loudest[f]) : Decibels.Floor)
                    .Select(decibels => Math.Max(decibels, Thresholds.BalanceFloorDecibels))
                    .ToArray()
            ),
        ];
    }
}
