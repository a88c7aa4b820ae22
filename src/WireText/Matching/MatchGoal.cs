using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Studies;
using WireText.Electrical.Tolerances;

namespace WireText.Matching;

/// <summary>One figure that the parts of an instrument are chosen for, and how near is near enough.</summary>
/// <param name="Words">As written: a claim, or the names of a pair.</param>
/// <param name="Slots">The slots whose parts it may depend on, as indices, in order.</param>
/// <param name="Weight">What one look at it costs, in looks at a meter's reading.</param>
public sealed record MatchGoal(string Words, ImmutableArray<int> Slots, int Weight)
{
    /// <summary>The deviation from what is wanted, in tolerances: up to 1 it holds. Counted no further than <see cref="Farthest"/>.</summary>
    public required Func<BinPart?[], double> DeviationOf { get; init; }

    /// <summary>What is there, in the words of a table.</summary>
    public required Func<BinPart?[], double> FigureOf { get; init; }

    /// <summary>The claim; null for a pair, or the value of a part itself.</summary>
    public Claim? Claim { get; init; }

    /// <summary>False where the figure is a part's own value, which stands with the part.</summary>
    public bool HasColumn { get; init; } = true;

    /// <summary>False where being far is no fault: a pair is only to be near.</summary>
    public bool IsClaimed => Claim is not null;

    /// <summary>Deviations beyond this are counted as this: what is not there at all costs no more. Chosen.</summary>
    public const double Farthest = 100;

    /// <summary>How near the two of a pair are to be, as a fraction. Chosen: the tolerance of a claim that says none.</summary>
    public const double Alike = 0.03;

    /// <summary>
    /// A goal for each claim of a value, in each state that it means, and for each pair; where there is neither, for each part its
    /// value as written.
    /// </summary>
    /// <param name="pairs">Slots that are to be alike, as indices.</param>
    public static ImmutableArray<MatchGoal> Of(
        Study study,
        ImmutableArray<MatchSlot> slots,
        ImmutableArray<(int, int)> pairs,
        CancellationToken cancellation = default
    )
    {
        var goals = ImmutableArray.CreateBuilder<MatchGoal>();
        foreach (var expectation in study.Circuit.Expectations)
        {
            var at = study.At(expectation.Jack);
            var states = expectation.State.HasAny
                ? MeantStates.OfSound(at.Network, expectation.State, cancellation).Sets
                : [expectation.State];
            goals.AddRange(
                from claim in expectation.Claims
                where RunClaim.IsOfAValue(claim)
                from state in states
                select OfClaim(at, slots, claim, state)
            );
        }

        goals.AddRange(pairs.Select(pair => OfPair(slots, pair)));
        return goals.Count > 0 ? goals.ToImmutable() : [.. slots.Select((slot, i) => OfValue(slot, i))];
    }

    private static MatchGoal OfClaim(Study study, ImmutableArray<MatchSlot> slots, Claim claim, State state)
    {
        var factors = RunFactors.Free(study.Circuit);
        var figure = new RunClaim(study.Network, factors, claim, state);
        var followed = figure.Followed.ToHashSet();
        var whole = new BinPart("", "", 1, 1, 1, 0);
        ImmutableArray<int> moved =
        [
            .. Enumerable
                .Range(0, slots.Length)
                .Where(i => slots[i].MovedBy(whole, factors).Any(one => followed.Contains(one.Factor))),
        ];
        return new MatchGoal(claim.Text, moved, figure.Weight)
        {
            Claim = claim,
            FigureOf = Figure,
            DeviationOf = parts => Capped(figure.DeviationOf(Figure(parts))),
        };

        double Figure(BinPart?[] parts)
        {
            var deviations = new double[factors.Count];
            foreach (var slot in moved)
            {
                if (parts[slot] is { } part)
                {
                    foreach (var (factor, times) in slots[slot].MovedBy(part, factors))
                    {
                        deviations[factor] = times - 1;
                    }
                }
            }

            return figure.FigureOf(deviations);
        }
    }

    private static MatchGoal OfPair(ImmutableArray<MatchSlot> slots, (int First, int Second) pair)
    {
        return new MatchGoal(
            $"{slots[pair.First].Part.Name} like {slots[pair.Second].Part.Name}",
            [.. new[] { pair.First, pair.Second }.Order()],
            1
        )
        {
            FigureOf = Ratio,
            DeviationOf = parts => Capped(Math.Log(Ratio(parts)) / Alike),
        };

        double Ratio(BinPart?[] parts) =>
            (parts[pair.First]?.Value ?? slots[pair.First].Value)
            / (parts[pair.Second]?.Value ?? slots[pair.Second].Value);
    }

    private static MatchGoal OfValue(MatchSlot slot, int place)
    {
        return new MatchGoal($"{slot.Part.Name} as written", [place], 1)
        {
            HasColumn = false,
            FigureOf = Value,
            DeviationOf = parts =>
                Capped(slot.Most > slot.Least ? (Value(parts) - slot.Value) / (slot.Most - slot.Least) * 2 : 0),
        };

        double Value(BinPart?[] parts) => parts[place]?.Value ?? slot.Value;
    }

    private static double Capped(double deviation) =>
        double.IsNaN(deviation) ? Farthest : Math.Min(Math.Abs(deviation), Farthest);
}
