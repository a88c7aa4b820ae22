using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Studies;

namespace WireText.Checks.Intent;

/// <summary>A line whose claims hold with some of the values that an unknown one may have, and not with others.</summary>
/// <param name="Claim">One that holds with some of them.</param>
/// <param name="Elements">Whose values it turns on.</param>
public sealed record DoubtfulClaim(Expectation Expectation, Claim Claim, ImmutableArray<Element> Elements)
{
    /// <summary>Null where the claims hold with every value looked at, or with none.</summary>
    public static DoubtfulClaim? Of(Study study, Expectation expectation, CancellationToken cancellation)
    {
        // A run is spread over what a value may be: such a claim is judged as it stands.
        var claims = expectation.Claims.RemoveAll(claim => claim.Share is not null);
        if (study.Doubted.IsEmpty || claims.IsEmpty)
        {
            return null;
        }

        expectation = expectation with { Claims = claims };

        var verdicts = study.Doubted.Prepend(study).Select(Refute).ToList();
        if (verdicts.TrueForAll(one => one is null) || verdicts.TrueForAll(one => one is not null))
        {
            return null;
        }

        var isRefuted = verdicts[0] is not null;
        var alone = DoubtVariants
            .InDoubt(study.Circuit)
            .Where(element =>
                DoubtVariants
                    .Of(study.Circuit, element)
                    .Any(circuit => Refute(study.Beside(circuit)) is not null != isRefuted)
            )
            .ToImmutableArray();
        return new DoubtfulClaim(
            expectation,
            verdicts.OfType<Refutation>().First().Claim,
            alone.IsEmpty ? [.. DoubtVariants.InDoubt(study.Circuit)] : alone
        );

        Refutation? Refute(Study one) => one.JudgeOf(expectation).Refute(expectation, cancellation);
    }
}
