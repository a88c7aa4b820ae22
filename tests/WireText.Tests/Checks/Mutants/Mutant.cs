using System.Collections.Immutable;
using WireText.Checks.Intent;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants;

/// <summary>A right example with one slip, and what the checks make of it.</summary>
/// <param name="Name">In words, as the page has it.</param>
/// <param name="Found">Errors and warnings, with the <c>expect</c> lines of the example.</param>
/// <param name="FoundBare">Errors and warnings, without these lines.</param>
/// <param name="IsLocated">True when a finding of <paramref name="Found"/> names the place of the slip.</param>
/// <param name="IsLocatedBare">The same of <paramref name="FoundBare"/>.</param>
internal sealed record Mutant(
    string Name,
    Equality Equality,
    ImmutableArray<Finding> Found,
    ImmutableArray<Finding> FoundBare,
    bool IsLocated,
    bool IsLocatedBare
)
{
    public bool IsEqual => Equality.Rule is not null;

    /// <param name="right">The example as it stands.</param>
    /// <param name="slip">An edit of its circuit.</param>
    public static Mutant Of(Compilation right, CircuitEdit slip) => Of(right, right.Circuit!, slip);

    private static Mutant Of(Compilation compiled, Circuit right, CircuitEdit slip)
    {
        var circuit = slip.Apply(right);
        var study = compiled.Study!.Rewired(circuit);
        var place = new FaultPlace(right, circuit, slip);
        var (found, bare) = (Alarms(circuit, study), Alarms(circuit with { Expectations = [] }, study));
        if (MattersWhatMends(found, place) && WireMutants.CanBeWritten(right, slip))
        {
            found = AlarmsOf(compiled, WireMutants.Written(right, slip, compiled.Source.Content));
        }

        return new Mutant(
            WireMutants.NameOf(right, slip),
            Equality.Of(right, circuit),
            found,
            bare,
            found.Any(place.IsNamedBy),
            bare.Any(place.IsNamedBy)
        );
    }

    /// <summary>
    /// True where a repair is worth the search: it can drop what stands beside a refuted claim, and its words name lugs.
    /// </summary>
    private static bool MattersWhatMends(ImmutableArray<Finding> found, FaultPlace place) =>
        found.Any(finding => finding.Id == Expect.Id) && (found.Length > 1 || !found.Any(place.IsNamedBy));

    private static ImmutableArray<Finding> Alarms(Circuit circuit, Study study) =>
        Alarms(Checked.Report(circuit, study).Findings);

    /// <summary>As a technician sees them, with the repair that is found.</summary>
    private static ImmutableArray<Finding> AlarmsOf(Compilation right, string text) =>
        Alarms(right.With(new SourceText("mutant.wiring", text)).Findings);

    private static ImmutableArray<Finding> Alarms(ImmutableArray<Finding> findings) =>
        findings.RemoveAll(finding => finding.Severity < Severity.Warning);
}
