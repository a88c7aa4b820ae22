using WireText.Checks;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

public class ExampleTests
{
    public static TheoryData<string> RightExamples => Rows.Of(Repository.Examples);

    public static TheoryData<string> Mistakes => Rows.Of(Repository.Mistakes);

    [Theory]
    [MemberData(nameof(RightExamples))]
    public void Check_RightExample_FindsNothing(string path)
    {
        var result = Compilation.Of(Read(path), NoSources.Instance);

        Assert.Empty(result.Findings.Where(f => f.Severity > Severity.Right).Select(f => (f.Id, f.Message)));
    }

    [Theory]
    [MemberData(nameof(RightExamples))]
    public void Check_RightExampleWithWhatIsHarmless_FindsNothingButNotes(string path)
    {
        var result = Compilation.Of(Read(path), NoSources.Instance, withHarmless: true);

        Assert.DoesNotContain(
            result.Findings,
            f => f.Severity > Severity.Right && !FindingCatalogue.Find(f.Id)!.OnlyWhenAsked
        );
    }

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void Check_Mistake_GivesTheOneFindingItsFirstLineNames(string path)
    {
        var source = Read(path);
        var expected = source.Slice(source.LineSpan(1)).Replace("# finds: ", "", StringComparison.Ordinal);

        var result = Compilation.Of(source, NoSources.Instance);

        Assert.Equal([expected], result.Findings.Where(f => f.Severity > Severity.Right).Select(f => f.Id));
    }

    private static SourceText Read(string path) => new(Path.GetFileName(path), File.ReadAllText(path));
}
