using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Repairs;
using WireText.Electrical.Studies;
using WireText.Output;
using WireText.Tests.Electrical;
using WireText.Tests.Judging;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>A harness and some of its mutants.</summary>
internal sealed record HarnessSuite(Harness Harness, int Slips, ImmutableArray<HarnessMutant> Mutants)
{
    /// <summary>As many of a harness are tried, spread evenly over all of its slips; bounds the time.</summary>
    public const int MostMutants = 30;

    /// <summary>Checks that may speak of a mutant that does the same: of the wire itself.</summary>
    private static readonly string[] OfTheWire = ["wire-to-itself", "wire-twice"];

    public IEnumerable<HarnessMutant> Different => Mutants.Where(mutant => !mutant.IsEqual);

    /// <summary>Findings of mutants that do the same as the right harness, but those of how it is built.</summary>
    public IEnumerable<(HarnessMutant Mutant, Finding Finding)> FalseAlarms =>
        from mutant in Mutants
        where mutant.IsEqual
        from finding in mutant.Bare
        where FindingCatalogue.Find(finding.Id)?.Group != FindingGroup.Building && !OfTheWire.Contains(finding.Id)
        select (mutant, finding);

    public static HarnessSuite Of(Harness harness)
    {
        var right = Bench.CompileText(harness.Text);
        var (judge, study) = (new Judge(right), Study.Of(right)!);
        var claimed = Bench.CompileText(harness.TextWithClaims);
        var pinned = Bench.CompileText($"{harness.Text}\n{ExpectLines.Write(study)}");
        var slips = WireMutants.Of(right).ToList();
        return new HarnessSuite(
            harness,
            slips.Count,
            [
                .. Tried(slips)
                    .AsParallel()
                    .AsOrdered()
                    .Select(slip => HarnessMutant.Of(study, claimed, pinned, judge, slip)),
            ]
        );
    }

    /// <summary>Those of a harness's slips that are tried.</summary>
    public static IEnumerable<CircuitEdit> Tried(IReadOnlyList<CircuitEdit> slips, int atMost = MostMutants)
    {
        var most = Math.Min(atMost, slips.Count);
        return slips.Where((_, i) => (i + 1) * most / slips.Count > i * most / slips.Count);
    }
}
