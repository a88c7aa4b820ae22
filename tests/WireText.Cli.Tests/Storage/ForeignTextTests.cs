using System.Text;

namespace WireText.Cli.Tests.Storage;

/// <summary>A file that an editor saved in another encoding is told as that, with the line where it shows.</summary>
public sealed class ForeignTextTests : IDisposable
{
    private const string Text = "circuit \"One\"\r\ncap dark 10µF\r\nnote \"é\"\r\n";

    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    // The codes are those of ISO/IEC 8859-1: B5 is the micro sign, E9 e acute.
    [Theory]
    [InlineData(Text, "line 2 has the byte B5, which is 'µ' in Latin-1; save it as UTF-8")]
    [InlineData("# a\rnote \"é\"", "line 2 has the byte E9, which is 'é' in Latin-1; save it as UTF-8")]
    [InlineData("é", "line 1 has the byte E9, which is 'é' in Latin-1; save it as UTF-8")]
    [InlineData("note \"\u0093One\u0094\"", "line 1 has the byte 93; save it as UTF-8")]
    public void Check_FileInLatin1_SaysItWithTheLine(string text, string words) =>
        AssertRefused(Encoding.Latin1.GetBytes(text), $"it is not text in UTF-8: {words}");

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public void Check_FileInUtf16_SaysIt(bool isBigEndian, bool hasMark)
    {
        var encoding = new UnicodeEncoding(isBigEndian, hasMark);

        AssertRefused(
            [.. encoding.Preamble, .. encoding.GetBytes(Text)],
            "it is not text in UTF-8 but in UTF-16; save it as UTF-8"
        );
    }

    [Fact]
    public void Check_IncludedFileInLatin1_SaysItWhereItIsIncluded()
    {
        folder.Put("parts.wiring", Encoding.Latin1.GetBytes("# Stück"));

        var ran = Ran.Of("check", folder.Put("a.wiring", "include \"parts.wiring\"\n"));

        Assert.Equal(1, ran.Code);
        Assert.Contains("line 1 has the byte FC, which is 'ü' in Latin-1", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_FileInUtf8WithLettersOfOtherTongues_IsRead() =>
        Assert.NotEqual(2, Ran.Of("check", folder.Put("a.wiring", Text)).Code);

    private void AssertRefused(byte[] content, string words)
    {
        var file = folder.Put("a.wiring", content);

        var ran = Ran.Of("check", file);

        Assert.Equal(2, ran.Code);
        Assert.Equal($"wiretext: cannot read '{file}': {words}\n", ran.Error);
    }
}
