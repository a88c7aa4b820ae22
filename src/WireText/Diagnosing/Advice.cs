using System.Collections.Immutable;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>Weighs what can be measured next: what it is expected to tell of the groups, for its cost.</summary>
internal sealed class Advice
{
    /// <summary>Measurements that are weighed exactly, behind the coarse ones. Chosen.</summary>
    private const int MostExact = 10;

    /// <summary>Less than this, in nats, is not worth a measurement.</summary>
    private const double LeastNats = 0.03;

    private readonly ImmutableArray<Suspect> suspects;
    private readonly ImmutableArray<int> groupOf;
    private readonly double[] shares;
    private readonly double[] groupShares;
    private readonly Odds odds;

    /// <param name="groupOf">For each suspect the number of its group.</param>
    public Advice(ImmutableArray<Suspect> suspects, ImmutableArray<int> groupOf, Odds odds)
    {
        (this.suspects, this.groupOf, this.odds) = (suspects, groupOf, odds);
        shares = [.. suspects.Select(suspect => Math.Exp(suspect.LogShare))];
        var total = shares.Sum();
        groupShares = new double[groupOf.Max() + 1];
        for (var i = 0; i < shares.Length; i++)
        {
            shares[i] /= total;
            groupShares[groupOf[i]] += shares[i];
        }
    }

    /// <summary>The best of them, as an index; null where none is worth it.</summary>
    /// <param name="outlooks">For each measurement, what it would show under each suspect.</param>
    /// <param name="isOpen">True where the cavity is open already.</param>
    public int? Best(ImmutableArray<Measurement> measurements, Outlook[][] outlooks, bool isOpen)
    {
        var coarse = Enumerable
            .Range(0, measurements.Length)
            .Select(at => (At: at, Score: Coarse(outlooks[at]) / measurements[at].Cost(isOpen)))
            .OrderByDescending(one => one.Score)
            .ThenBy(one => one.At)
            .Take(MostExact)
            .ToList();
        var (best, most) = ((int?)null, 0.0);
        foreach (var (at, _) in coarse)
        {
            var nats = Exact(measurements[at], outlooks[at]);
            var score = nats / measurements[at].Cost(isOpen);
            if (nats >= LeastNats && (score > most * (1 + 1e-9) || (best is null && score > 0)))
            {
                (best, most) = (at, score);
            }
        }

        return best;
    }

    /// <summary>What classes of outcomes tell of the groups, in nats.</summary>
    private double Coarse(Outlook[] outlooks)
    {
        var bins = new Dictionary<OutcomeBin, double>();
        var joint = new Dictionary<(int Group, OutcomeBin Bin), double>();
        for (var i = 0; i < outlooks.Length; i++)
        {
            var bin = outlooks[i].Bin;
            var weight = suspects[i].IsOutside ? shares[i] / 2 : shares[i];
            bins[bin] = bins.GetValueOrDefault(bin) + weight;
            joint[(groupOf[i], bin)] = joint.GetValueOrDefault((groupOf[i], bin)) + weight;
        }

        return joint.Sum(one =>
            one.Value > 0 ? one.Value * Math.Log(one.Value / (groupShares[one.Key.Group] * bins[one.Key.Bin])) : 0
        );
    }

    /// <summary>What the outcomes themselves tell of the groups, in nats: values at three points of what is foretold.</summary>
    private double Exact(Measurement measurement, Outlook[] outlooks)
    {
        var nats = 0.0;
        for (var i = 0; i < outlooks.Length; i++)
        {
            foreach (var (point, weight) in PointsOf(outlooks[i]))
            {
                var share = suspects[i].IsOutside ? shares[i] / 2 : shares[i];
                nats += share * weight * Gain(measurement, outlooks, point, groupOf[i]);
            }

            if (suspects[i].IsOutside)
            {
                // The other half may be anything: then nothing else explains it but a slip.
                nats += shares[i] / 2 * Math.Log(0.5 / ((shares[i] / 2) + ((1 - shares[i]) * BenchOdds.Slip)));
            }
        }

        return nats;
    }

    private static IEnumerable<(Outlook Point, double Weight)> PointsOf(Outlook outlook) =>
        outlook.Read is { Kind: ShownKind.Value }
            ? [(outlook, 2.0 / 3), (At(outlook, -Math.Sqrt(3)), 1.0 / 6), (At(outlook, Math.Sqrt(3)), 1.0 / 6)]
            : [(outlook, 1)];

    private static Outlook At(Outlook outlook, double deviations) =>
        outlook with
        {
            Mean = Math.Max(outlook.Mean + (deviations * outlook.Deviation), BenchOdds.ZeroOhms),
        };

    /// <summary>ln of how much likelier the group is when this is found.</summary>
    private double Gain(Measurement measurement, Outlook[] outlooks, Outlook found, int group)
    {
        var (inGroup, all) = (0.0, 0.0);
        for (var i = 0; i < outlooks.Length; i++)
        {
            var likely = shares[i] * Likely(measurement, suspects[i], outlooks[i], found);
            all += likely;
            inGroup += groupOf[i] == group ? likely : 0;
        }

        return all > 0 && inGroup > 0 ? Math.Log(inGroup / groupShares[group] / all) : 0;
    }

    private double Likely(Measurement measurement, Suspect suspect, Outlook should, Outlook found)
    {
        if (measurement.IsByEar)
        {
            var heard = odds.OfHeard(found.Heard!, should.Heard!);
            return suspect.IsOutside ? (heard + 0.1) / 2 : heard;
        }

        if (found.Label is { } label)
        {
            return label == should.Label ? 1 - BenchOdds.LabelWrong : BenchOdds.LabelWrong / 2;
        }

        var (model, slip) = should.Read?.Kind switch
        {
            ShownKind.Value when found.Read?.Kind == ShownKind.Value => (
                found.Mean * Normal(found.Mean, should.Mean, should.Deviation),
                BenchOdds.SlipDensity
            ),
            var kind when kind == found.Read?.Kind => (
                1,
                kind == ShownKind.Open ? BenchOdds.SlipOpen : BenchOdds.SlipZero
            ),
            ShownKind.Joined or ShownKind.NearZero when found.Read?.Kind is ShownKind.Joined or ShownKind.NearZero => (
                0.5,
                BenchOdds.SlipZero
            ),
            _ => (
                0.0,
                found.Read?.Kind switch
                {
                    ShownKind.Open => BenchOdds.SlipOpen,
                    ShownKind.Value => BenchOdds.SlipDensity,
                    _ => BenchOdds.SlipZero,
                }
            ),
        };
        var likely = ((1 - BenchOdds.Slip) * model) + (BenchOdds.Slip * slip);
        return suspect.IsOutside ? (likely + slip) / 2 : likely;
    }

    private static double Normal(double value, double mean, double deviation) =>
        Math.Exp(-(value - mean) * (value - mean) / (2 * deviation * deviation)) / (Math.Sqrt(2 * Math.PI) * deviation);
}
