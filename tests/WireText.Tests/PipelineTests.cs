using System.Globalization;
using System.Text;
using CsCheck;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Syntax;
using WireText.Syntax.Parsing;
using WireText.Testing;
using WireText.Tests.Drawing.Random;
using WireText.Text;

namespace WireText.Tests;

/// <summary>No input crashes any stage, and the same input gives the same bytes.</summary>
public class PipelineTests
{
    private static readonly string[] Sources = [.. Repository.RightAndWrongExamples.Select(File.ReadAllText)];

    /// <summary>An example with one stretch taken out, doubled, or replaced by odd characters.</summary>
    private static readonly Gen<string> Mutated =
        from source in OneOf(Sources)
        from start in Gen.Int[0, source.Length - 1]
        from length in Gen.Int[0, 40]
        from manner in Gen.Int[0, 3]
        from odd in Gen.String[Gen.OneOf(Gen.Char[" \t\n\r\"#=+.,:()"], Gen.Char['!', '~'], Gen.Char), 0, 6]
        let end = Math.Min(source.Length, start + length)
        select manner switch
        {
            0 => source.Remove(start, end - start),
            1 => source.Insert(start, source[start..end]),
            2 => source.Remove(start, end - start).Insert(start, odd),
            _ => source.Insert(start, odd),
        };

    private static readonly Gen<string> Random = RandomWirings.Text(mostParts: 9, mostRuns: 16);

    [Fact]
    public void Compile_RandomText_EndsWithFindings() =>
        Samples.Each(
            Gen.String[Gen.OneOf(Gen.Char, Gen.Char[" \n\t\"#=.:"], Gen.Char['a', 'z']), 0, 300],
            2_000,
            Check
        );

    [Fact]
    public void Compile_RandomBytesAsText_EndsWithFindings() =>
        Samples.Each(Gen.Byte.Array[0, 300], 1_000, bytes => Check(Encoding.Latin1.GetString(bytes)));

    [Fact]
    public void Compile_MutatedExample_EndsWithFindings() => Samples.Each(Mutated, 1_500, Check);

    [Fact]
    public void Draw_MutatedExample_IsTheSameTwice() =>
        Samples.Each(Mutated, 15, text => Assert.Equal(Draw(text), Draw(text)));

    [Fact]
    public void Draw_RandomCircuit_IsTheSameTwice() =>
        Samples.Each(Random, 25, text => Assert.Equal(Draw(text), Draw(text)));

    [Fact]
    public void Compile_RandomCircuit_HasNoTextFinding() =>
        Samples.Each(
            Random,
            300,
            text =>
                Assert.DoesNotContain(
                    Compilation.Of(new SourceText("random.wiring", text), NoSources.Instance).Findings,
                    f => f.Id is "expected" or "unknown-lug" or "unknown-part"
                )
        );

    [Theory]
    [InlineData(2_000, true)]
    [InlineData(2_001, false)]
    public void Draw_WiresUpToTheLimit_AreNotRefusedForTheirNumber(int wires, bool isAllowed)
    {
        // Every wire ends where it starts: nothing has to be routed, only counted.
        var text = new StringBuilder("pot vol 250k audio\n").Insert(0, "jack out\n");
        for (var i = 0; i < wires; i++)
        {
            text.Append("wire out.tip to out.tip red\n");
        }

        var drawn = Drawn.Of(
            new SourceText("many.wiring", text.ToString()),
            new DrawOptions(LayoutEffort.Quick, Theme.Light, null)
        );

        Assert.Equal(isAllowed, drawn.Svg is not null);
        Assert.Equal(!isAllowed, drawn.Compiled.DrawingFindings.Any(f => f.Id == "too-large-to-draw"));
    }

    /// <summary>Far more wires than the lanes hold: the search stops by its count, and the sheet lists what is not drawn.</summary>
    [Fact]
    public void Draw_MoreWiresThanThereIsRoomFor_EndsAndSaysWhatIsNotDrawn()
    {
        const int pots = 60;
        var text = new StringBuilder("jack out\n");
        for (var i = 0; i < pots; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"pot p{i} 250k audio\n");
        }

        for (var i = 0; i < 240; i++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"wire p{i * 7 % pots}.{(i % 3) + 1} to p{i * 31 % pots}.{(i * 5 % 3) + 1} red\n"
            );
        }

        var svg = Draw(text.ToString())!;

        Assert.Contains("Not drawn: no free way was found for these wires", svg, StringComparison.Ordinal);
    }

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static void Check(string text)
    {
        var source = new SourceText("any.wiring", text);
        var result = Compilation.Of(source, NoSources.Instance);

        Assert.Equal(text, result.Tree.ToText());
        var formatted = Formatter.Format(result.Tree);
        Assert.Equal(formatted, Formatter.Format(WiringParser.Parse(new SourceText("any.wiring", formatted))));
    }

    private static string? Draw(string text) =>
        Drawn.Of(new SourceText("any.wiring", text), new DrawOptions(LayoutEffort.Quick, Theme.Light, null)).Svg;
}
