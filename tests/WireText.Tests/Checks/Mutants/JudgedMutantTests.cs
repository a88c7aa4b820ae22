using System.Collections.Immutable;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Checks.Mutants.Harnesses;
using WireText.Tests.Electrical;
using WireText.Tests.Judging;

namespace WireText.Tests.Checks.Mutants;

/// <summary>What is called equal is judged by a solver that the program has no part in.</summary>
public class JudgedMutantTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.Examples);

    public static TheoryData<int> Harnesses => Rows.Of(UsualHarnesses.All.Select(harness => harness.Number));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Mutants_OfAnExample_AreEqualOrNotAsTheJudgeFinds(string path)
    {
        var right = MutantSuite.Read(path);

        Assert.Empty(Disputed(right, WireMutants.Of(right)));
    }

    [Theory]
    [MemberData(nameof(Harnesses))]
    public void Mutants_OfAHarness_AreEqualOrNotAsTheJudgeFinds(int number)
    {
        var right = Bench.CompileText(UsualHarnesses.All[number - 1].Text);

        Assert.Empty(Disputed(right, HarnessSuite.Tried([.. WireMutants.Of(right)])));
    }

    private static ImmutableArray<string> Disputed(Circuit right, IEnumerable<CircuitEdit> slips)
    {
        var judge = new Judge(right);
        return
        [
            .. Every
                .Of(slips)
                .AsParallel()
                .AsOrdered()
                .Select(slip =>
                {
                    var circuit = slip.Apply(right);
                    var (said, found) = (VerdictOf(Equality.Of(right, circuit)), judge.Compare(circuit));
                    return said == found ? null : $"{WireMutants.NameOf(right, slip)}: said {said}, judged {found}";
                })
                .OfType<string>(),
        ];
    }

    private static Verdict VerdictOf(Equality equality) =>
        equality.Rule switch
        {
            null => Verdict.Different,
            EqualityRule.Sign => Verdict.EqualButForSign,
            _ => Verdict.Equal,
        };
}
