using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

public class ExampleTests
{
    public static TheoryData<string> RightExamples => [.. Repository.Examples];

    [Theory]
    [MemberData(nameof(RightExamples))]
    public void Check_RightExample_FindsNothing(string path)
    {
        var result = WiringCompiler.Check(Read(path), NoSources.Instance);

        Assert.Empty(result.Findings.Where(f => f.Severity > Severity.Info).Select(f => (f.Id, f.Message)));
    }

    private static SourceText Read(string path) => new(Path.GetFileName(path), File.ReadAllText(path));
}
