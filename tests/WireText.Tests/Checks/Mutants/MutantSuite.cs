using System.Collections.Immutable;
using System.Globalization;
using WireText.Checks;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants;

/// <summary>All mutants of one right example.</summary>
internal sealed record MutantSuite(string Example, Circuit Right, ImmutableArray<Mutant> All)
{
    /// <summary>Checks that may speak of a mutant that is electrically the same: of the wire itself.</summary>
    private static readonly string[] OfTheWire = ["wire-to-itself", "wire-twice"];

    public IEnumerable<Mutant> Equal => All.Where(mutant => mutant.IsEqual);

    /// <summary>Those that no rule proves equal: what the checks are held to.</summary>
    public IEnumerable<Mutant> Different => All.Where(mutant => !mutant.IsEqual);

    /// <summary>Different, and nothing is found with the claims of the example.</summary>
    public IEnumerable<Mutant> Survivors => Different.Where(mutant => mutant.Found.IsEmpty);

    /// <summary>Different, killed by the claims alone.</summary>
    public IEnumerable<Mutant> KilledByClaims =>
        Different.Where(mutant => !mutant.Found.IsEmpty && mutant.FoundBare.IsEmpty);

    /// <summary>Equal, and yet a check that reads the circuit finds something.</summary>
    public IEnumerable<string> FalseAlarms =>
        from mutant in Equal
        from finding in mutant.Found.Concat(mutant.FoundBare)
        where FindingCatalogue.Find(finding.Id)?.Group != FindingGroup.Building && !OfTheWire.Contains(finding.Id)
        select $"{Example}: {mutant.Name}: {finding.Message} [{finding.Id}]";

    public static MutantSuite Of(string path)
    {
        var compiled = Compile(path);
        var right = compiled.Circuit!;
        return new MutantSuite(
            Path.GetFileName(path),
            right,
            [.. WireMutants.Of(right).AsParallel().AsOrdered().Select(slip => Mutant.Of(compiled, slip))]
        );
    }

    public static Circuit Read(string path) => Compile(path).Circuit!;

    private static Compilation Compile(string path) =>
        Compilation.Of(new SourceText(Path.GetFileName(path), File.ReadAllText(path)), NoSources.Instance);

    /// <summary>The state in which a mutant first differs, and in what.</summary>
    public string StateOf(Mutant mutant)
    {
        var difference = mutant.Equality.Difference!;
        var positions = difference
            .State.Stated.Select(at => (Control: Right.Controls[at.Control], at.Position))
            .Where(at => !at.Control.IsPlug)
            .Select(at => StateText.Of(at.Control, at.Position));
        var dials = difference.Kind is DifferenceKind.Grounding or DifferenceKind.Supply
            ? []
            : Right.Dials.Select(dial =>
                string.Create(CultureInfo.InvariantCulture, $"{dial.Name}={difference.State.Travels[dial.Index]:0.#}")
            );
        return string.Join(' ', positions.Concat(dials).DefaultIfEmpty("always"));
    }
}
