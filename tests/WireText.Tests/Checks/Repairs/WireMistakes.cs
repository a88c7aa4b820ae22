using WireText.Checks.Intent;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Tests.Checks.Mutants;

namespace WireText.Tests.Checks.Repairs;

/// <summary>Some of the slips of a soldering iron: see <see cref="WireMutants"/>.</summary>
internal static class WireMistakes
{
    /// <summary>Mistakes that refute what the author expects, spread over the circuit; the same in every run.</summary>
    public static IEnumerable<CircuitEdit> ThatRefute(Circuit circuit, int atMost)
    {
        var all = WireMutants.Of(circuit).Where(slip => WireMutants.CanBeWritten(circuit, slip)).ToList();

        // A step without a common factor meets each once, and the first few lie far from each other.
        var step = Enumerable.Range(all.Count * 5 / 8, all.Count).First(step => Factor(step, all.Count) == 1);
        return Enumerable
            .Range(0, all.Count)
            .Select(i => all[(int)((long)i * step % all.Count)])
            .Where(mistake => Checked.Report(mistake.Apply(circuit)).Findings.Any(finding => finding.Id == Expect.Id))
            .Take(atMost);
    }

    private static int Factor(int a, int b) => b == 0 ? a : Factor(b, a % b);
}
