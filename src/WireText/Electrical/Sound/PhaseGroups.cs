using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Sound;

/// <summary>The heard coils of a state in two groups: those in phase with the first, and those against it.</summary>
/// <remarks>A coil whose phase turns with frequency belongs to neither.</remarks>
public sealed record PhaseGroups(ImmutableArray<Coil> WithFirst, ImmutableArray<Coil> AgainstFirst)
{
    /// <summary>True when some heard coils are against others.</summary>
    public bool AreSplit => !AgainstFirst.IsEmpty;

    /// <summary>The smaller group; of equal ones that without the first coil.</summary>
    public ImmutableArray<Coil> Minority => WithFirst.Length < AgainstFirst.Length ? WithFirst : AgainstFirst;

    public static PhaseGroups Of(JackSound sound)
    {
        var heard = sound.Heard.ToList();
        if (heard.Count < 2 || sound.Gains is not { } gains)
        {
            return new PhaseGroups([.. heard.Select(one => one.Coil)], []);
        }

        // One that turns with frequency tells nothing: begin at the first that is clearly for or against another.
        var first = heard.Find(one => heard.Exists(other => other != one && IsClear(gains, one, other))) ?? heard[0];
        return new PhaseGroups(
            [
                .. heard
                    .Where(one => one == first || Between(gains, first, one) >= -Thresholds.OutOfPhaseCorrelation)
                    .Select(one => one.Coil),
            ],
            [
                .. heard
                    .Where(one => one != first && Between(gains, first, one) <= Thresholds.OutOfPhaseCorrelation)
                    .Select(one => one.Coil),
            ]
        );
    }

    private static bool IsClear(FixedGains gains, HeardCoil one, HeardCoil other) =>
        Math.Abs(Between(gains, one, other)) >= -Thresholds.OutOfPhaseCorrelation;

    private static double Between(FixedGains gains, HeardCoil one, HeardCoil other) =>
        gains.Correlation(one.Place, other.Place);
}
