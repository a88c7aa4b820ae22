using System.Text;
using WireText.Matching;
using WireText.Tests.Electrical;

namespace WireText.Tests.Matching;

public class BinReaderTests
{
    private static readonly WireText.Circuits.Circuit Circuit = Bench.CompileText(
        "pickup neck single-coil\npot vol 250k audio\njack out mono\nswitch sel spdt"
    );

    [Fact]
    public void Read_QuotesMarksAndLineEnds_AreThoseOfRfc4180()
    {
        var bin = BinReader.Read(
            Circuit,
            "\uFEFFname,kind,value,l,c\r\n\"N-1, the \"\"dark\"\" one\",neck,6.05k,2.2H,110p\r\n\r\n\"two\nlines\",POT,243k,,\r\n"
        );

        Assert.Null(bin.Problem);
        Assert.Equal(
            [
                new BinPart("N-1, the \"dark\" one", "neck", 6050, 2.2, 110e-12, 2),
                new BinPart("two\nlines", "pot", 243e3, null, null, 4),
            ],
            bin.Value!.Parts.Select(part => part with { Farads = part.Farads is { } c ? Math.Round(c, 15) : null })
        );
    }

    [Theory]
    [InlineData("", "line 1: the bin is empty; begin with a row of names: name,kind,value")]
    [InlineData("name,kind\nx,pot\n", "line 1: there is no column 'value'; ")]
    [InlineData(
        "name,kind,value,colour\n",
        "line 1: column 'colour' is not known; the columns are name, kind, value, l, c"
    )]
    [InlineData("name,kind,value,kind\n", "line 1: column 'kind' is there twice; ")]
    [InlineData("name,kind,value\na,pot\n", "line 2: there are 2 cells where the first row has 3; ")]
    [InlineData("name,kind,value\n,pot,250k\n", "line 2: a part has no name; write what stands on it")]
    [InlineData(
        "name,kind,value\na,valve,250k\n",
        "line 2: 'valve' is no kind of part that can be matched; write pickup, pot, "
    )]
    [InlineData("name,kind,value\na,sel,250k\n", "line 2: 'sel' is no kind of part that can be matched; ")]
    [InlineData("name,kind,value\na,pot,\n", "line 2: 'a' has no value; write what the meter read, such as 250k")]
    [InlineData(
        "name,kind,value\na,pot,250k\n\na,pot,251k\n",
        "line 4: 'a' is in line 2 already; give each part a name of its own"
    )]
    [InlineData("name,kind,value\na,pot,lots\n", "line 2: 'lots': ")]
    [InlineData("name,kind,value,l\na,pot,250k,2H\n", "line 2: 'a' is no pickup and has no 'l'; leave the cell empty")]
    [InlineData("name,kind,value\n\"a,pot,250k\n", "line 2: a quote is not closed; put one behind the cell")]
    [InlineData("name,kind,value\n\"a\"b,pot,250k\n", "line 2: something follows a quote that is closed; ")]
    public void Read_WrongTable_SaysWhereWhatAndHowToMend(string text, string problem) =>
        Assert.StartsWith(problem, BinReader.Read(Circuit, text).Problem, StringComparison.Ordinal);

    [Fact]
    public void Read_MoreThanABinMayHave_IsRefused()
    {
        var many = new StringBuilder("name,kind,value\n");
        for (var i = 0; i <= BinReader.MostParts; i++)
        {
            many.Append(System.Globalization.CultureInfo.InvariantCulture, $"p{i},pot,250k\n");
        }

        Assert.StartsWith(
            "line 2002: a bin may have 2,000 parts; divide it",
            BinReader.Read(Circuit, many.ToString()).Problem,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "line 1: a bin may have 1,000,000 letters; divide it",
            BinReader.Read(Circuit, new string('x', BinReader.MostLetters + 1)).Problem,
            StringComparison.Ordinal
        );
    }
}
