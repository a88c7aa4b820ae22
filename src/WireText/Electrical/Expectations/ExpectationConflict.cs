using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Electrical.Expectations;

/// <summary>Two claims of which one excludes the other, about a state that both lines mean; they can be of one line.</summary>
/// <param name="Later">The line that says the second of them.</param>
public sealed record ExpectationConflict(Expectation Earlier, Claim EarlierClaim, Expectation Later, Claim LaterClaim)
{
    /// <summary>
    /// Pairs of claims that are compared, so that no input can keep it busy; a conflict beyond them is still found, for one
    /// of its claims is refuted. Chosen.
    /// </summary>
    internal const long PairLimit = 1_000_000;

    /// <summary>The first conflict of each line with those before it and within itself, in the order of the lines.</summary>
    /// <param name="judgeOf">Who judges a line: claims that are both proved exclude nothing. Null where there is no jack to prove them at.</param>
    public static ImmutableArray<ExpectationConflict> Find(
        Circuit circuit,
        Func<Expectation, ExpectationJudge>? judgeOf,
        CancellationToken cancellation = default
    )
    {
        var lines = circuit.Expectations;
        var found = ImmutableArray.CreateBuilder<ExpectationConflict>();
        var pairs = 0L;
        for (var later = 0; later < lines.Length; later++)
        {
            for (var earlier = 0; earlier <= later; earlier++)
            {
                cancellation.ThrowIfCancellationRequested();
                pairs += 1 + ((long)lines[earlier].Claims.Length * lines[later].Claims.Length);
                if (pairs > PairLimit)
                {
                    return found.ToImmutable();
                }

                if (Between(circuit, lines[earlier], lines[later], judgeOf) is { } conflict)
                {
                    found.Add(conflict);
                    break;
                }
            }
        }

        return found.ToImmutable();
    }

    private static ExpectationConflict? Between(
        Circuit circuit,
        Expectation a,
        Expectation b,
        Func<Expectation, ExpectationJudge>? judgeOf
    )
    {
        if (!MeanOneState(a, b))
        {
            return null;
        }

        var isOneLine = ReferenceEquals(a, b);
        for (var second = 0; second < b.Claims.Length; second++)
        {
            for (var first = 0; first < (isOneLine ? second : a.Claims.Length); first++)
            {
                if (
                    ClaimExclusion.Excludes(circuit, a.Claims[first], b.Claims[second])
                    && !(judgeOf is not null && IsProved(judgeOf(a), a, first) && IsProved(judgeOf(b), b, second))
                )
                {
                    return new ExpectationConflict(a, a.Claims[first], b, b.Claims[second]);
                }
            }
        }

        return null;
    }

    private static bool IsProved(ExpectationJudge judge, Expectation expectation, int claim) =>
        judge.Holds(expectation with { Claims = [expectation.Claims[claim]] }, mayNameTraces: true);

    private static bool MeanOneState(Expectation a, Expectation b) =>
        a.Jack == b.Jack && a.State.Travels.SequenceEqual(b.State.Travels) && a.State.Meets(b.State);
}
