using WireText.Testing;
using WireText.Tests.Judging;

namespace WireText.Tests.Checks.Mutants;

/// <summary>What is called equal is judged by a solver that the program has no part in.</summary>
public class JudgedMutantTests
{
    public static TheoryData<string> Examples => Rows.Of(Repository.Examples);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Mutants_OfAnExample_AreEqualOrNotAsTheJudgeFinds(string path)
    {
        var right = MutantSuite.Read(path);
        var judge = new Judge(right);
        var slips = WireMutants.Of(right).ToList();

        var disputed = slips
            .AsParallel()
            .AsOrdered()
            .Select(slip =>
            {
                var circuit = slip.Apply(right);
                var (said, found) = (VerdictOf(Equality.Of(right, circuit)), judge.Compare(circuit));
                return said == found ? null : $"{WireMutants.NameOf(right, slip)}: said {said}, judged {found}";
            })
            .OfType<string>();

        Assert.NotEmpty(slips);
        Assert.Empty(disputed);
    }

    private static Verdict VerdictOf(Equality equality) =>
        equality.Rule switch
        {
            null => Verdict.Different,
            EqualityRule.Sign => Verdict.EqualButForSign,
            _ => Verdict.Equal,
        };
}
