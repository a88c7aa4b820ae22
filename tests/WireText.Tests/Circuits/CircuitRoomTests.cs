using WireText.Circuits;
using WireText.Text;

namespace WireText.Tests.Circuits;

/// <summary>A short text may name a large model many times: what is inside counts, and ends in a finding that names the limit.</summary>
public class CircuitRoomTests
{
    private const int PartsAtTheLimit = 100;
    private const long GiB = 1L << 30;

    /// <summary>A model whose parts fill one of the limits exactly, so many are named.</summary>
    public static TheoryData<string, int, string> Models =>
        new()
        {
            {
                string.Concat(Numbers(CircuitLimits.MaxLugs).Select(i => $"    lugs l{i} 0,0\n")),
                CircuitLimits.MaxLugs,
                "lugs"
            },
            {
                "    lugs a 0,0 b 5,0\n" + Lines("resistor a b 1k", CircuitLimits.MaxElements),
                CircuitLimits.MaxElements,
                "elements"
            },
            {
                // Each position closes two lugs.
                "    lugs a 0,0 b 5,0\n"
                    + string.Concat(Numbers(CircuitLimits.MaxContacts / 2).Select(i => $"    position {i} a+b\n")),
                CircuitLimits.MaxContacts,
                "contacts"
            },
        };

    [Theory]
    [MemberData(nameof(Models))]
    public void Check_PartsThatFillALimit_AreTaken(string model, int most, string what)
    {
        var found = Check(model, PartsAtTheLimit);

        Assert.False(found.Any(one => one.Id == "too-large"), $"{most} {what} are within the limit");
        Assert.DoesNotContain(found, one => one.Severity == Severity.Error);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Check_OnePartMore_IsToldByTheLimit(string model, int most, string what)
    {
        var finding = Assert.Single(Check(model, PartsAtTheLimit + 1));

        Assert.Equal("too-large", finding.Id);
        Assert.Contains($"{most} {what}", finding.Message, StringComparison.Ordinal);
        Assert.Equal($"x{PartsAtTheLimit + 1}", finding.Location.Text);
    }

    [Fact]
    public void Check_ThousandLugsOnTenThousandParts_TakesLessThanAGibibyte()
    {
        var model = string.Concat(Enumerable.Range(1, 1000).Select(i => $"    lugs l{i} 0,0\n"));
        var before = GC.GetAllocatedBytesForCurrentThread();

        var found = Check(model, CircuitLimits.MaxParts - 2);

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, GiB);
        Assert.Equal("too-large", Assert.Single(found).Id);
    }

    private static IEnumerable<int> Numbers(int most) => Enumerable.Range(1, most / PartsAtTheLimit);

    private static string Lines(string line, int most) => string.Concat(Numbers(most).Select(_ => $"    {line}\n"));

    private static IReadOnlyList<Finding> Check(string model, int parts) =>
        Compilation
            .Of(
                new SourceText(
                    "many.wiring",
                    $"define big b\n    body round 20\n{model}"
                        + string.Concat(Enumerable.Range(1, parts).Select(i => $"big x{i} b\n"))
                ),
                NoSources.Instance
            )
            .Findings;
}
