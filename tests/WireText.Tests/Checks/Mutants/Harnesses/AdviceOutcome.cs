using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Tests.Checks.Slips;
using WireText.Tests.Electrical;
using WireText.Tests.Judging;
using WireText.Text;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>What comes of doing what is printed.</summary>
internal enum Advised
{
    /// <summary>It names no line and no lugs: the how is left to the reader.</summary>
    InWords,

    /// <summary>The harness does again what it should.</summary>
    Mends,

    /// <summary>It is wrong still, and sounds in as many positions as before.</summary>
    LeavesWrong,

    /// <summary>It sounds in fewer positions, or cannot be read.</summary>
    Harms,
}

/// <summary>A finding of a mutant of a harness, and what comes of its advice; or what <c>check --fix</c> made of the mutant.</summary>
/// <param name="Check">The id of the finding; "--fix" for the other.</param>
internal sealed record AdviceOutcome(string Harness, string Check, string? Help, Advised Came)
{
    /// <summary>Every alarm of every mutant that can be written and matters, each followed alone.</summary>
    /// <param name="most">So many of its mutants are tried at most, spread evenly.</param>
    public static ImmutableArray<AdviceOutcome> Of(Harness harness, int most) =>
        Of(FormattableString.Invariant($"{harness.Number}"), harness.Text, most);

    /// <summary>The same of any right circuit.</summary>
    /// <param name="most">So many of its mutants are tried at most, spread evenly.</param>
    public static ImmutableArray<AdviceOutcome> Of(string name, string text, int most)
    {
        var compiled = Compilation.Of(new SourceText("mutant.wiring", text), NoSources.Instance);
        var right = Bench.CompileText(text);
        var judge = new Judge(right);
        return
        [
            .. HarnessSuite
                .Tried([.. WireMutants.Of(right)], most)
                .AsParallel()
                .AsOrdered()
                .Where(slip =>
                    WireMutants.CanBeWritten(right, slip) && judge.Compare(slip.Apply(right)) == Verdict.Different
                )
                .SelectMany(slip =>
                    Of(
                        $"{name}: {WireMutants.NameOf(right, slip)}",
                        compiled.With(new SourceText("mutant.wiring", WireMutants.Written(right, slip, text))),
                        judge
                    )
                ),
        ];
    }

    private static IEnumerable<AdviceOutcome> Of(string name, Compilation compiled, Judge judge)
    {
        var source = compiled.Source;
        var silent = SilentPositions(compiled.Circuit!);
        foreach (var finding in compiled.Findings.Where(finding => finding.Severity >= Severity.Warning))
        {
            var came = PrintedAdvice
                .Ways(source.Content, compiled.Circuit!, finding)
                .Select(followed => CameOf(followed, judge, silent))
                .ToList();
            yield return new AdviceOutcome(name, finding.Id, finding.Help, Sum(came));
        }

        var mended = Mender.Mend(compiled);
        if (mended.Source != source)
        {
            var came = judge.Compare(mended.Left.Circuit!) == Verdict.Different ? Advised.LeavesWrong : Advised.Mends;
            yield return new AdviceOutcome(name, "--fix", null, came);
        }
    }

    /// <summary>Of several ways none may harm; who has the choice takes the one that mends.</summary>
    private static Advised Sum(List<Advised> ways) =>
        ways.Count == 0 ? Advised.InWords
        : ways.Contains(Advised.Harms) ? Advised.Harms
        : ways.Contains(Advised.Mends) ? Advised.Mends
        : Advised.LeavesWrong;

    private static Advised CameOf(string followed, Judge judge, int silent)
    {
        var then = Compilation.Of(new SourceText("mutant.wiring", followed), NoSources.Instance);
        var cannotBeRead = then.ReadingFindings.Any(finding => finding.Severity == Severity.Error);
        return cannotBeRead || then.Circuit is not { } circuit ? Advised.Harms
            : judge.Compare(circuit) != Verdict.Different ? Advised.Mends
            : SilentPositions(circuit) > silent ? Advised.Harms
            : Advised.LeavesWrong;
    }

    /// <summary>In how many positions nothing is heard, by the judge's solver: plugged in, dials at rest.</summary>
    private static int SilentPositions(Circuit circuit) =>
        BenchSetting
            .AllPositions(circuit)
            .Where(setting => circuit.Controls.All(c => !c.IsPlug || setting.Positions[c.Index] == c.Rest))
            .Count(setting => Sounding.PickupsAt(circuit, setting).IsEmpty);
}
