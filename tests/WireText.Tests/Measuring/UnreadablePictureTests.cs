using System.Text;
using CsCheck;
using WireText.Measuring;
using WireText.Testing;

namespace WireText.Tests.Measuring;

/// <summary>Whatever text comes in, a measure comes out: with an error where there is nothing to measure.</summary>
public class UnreadablePictureTests
{
    [Theory]
    [InlineData("", "not an SVG drawing")]
    [InlineData("guitar", "not an SVG drawing")]
    [InlineData("<svg viewBox=\"0 0 9 9\">", "not an SVG drawing")]
    [InlineData("<html/>", "its root is 'html'")]
    [InlineData("<svg/>", "no viewBox")]
    [InlineData("<svg viewBox=\"0 0 9\"/>", "four numbers")]
    [InlineData("<svg viewBox=\"0 0 NaN 9\"/>", "'NaN' is not a number")]
    [InlineData("<svg viewBox=\"0 0 1e999 9\"/>", "'1e999' is not a number")]
    [InlineData("<svg viewBox=\"0 0 1e9 9\"/>", "too large")]
    public void Measure_NoDrawing_SaysWhy(string svg, string why) => AssertError(svg, why);

    [Theory]
    [InlineData("<path class='core' d='M1 1 C2 2 3 3 4 4'/>", "the command 'C'")]
    [InlineData("<path class='core' d='M1 1 l4 4'/>", "the command 'l'")]
    [InlineData("<path class='core' d='L1 1 L4 4'/>", "one M, at its start")]
    [InlineData("<path class='core' d='M1 1 L4 4 M5 5 L9 9'/>", "one M, at its start")]
    [InlineData("<path class='core' d='M1 1 L4'/>", "'' is not a number")]
    [InlineData("<path class='core' d='M1 1 L-Infinity 4'/>", "is not a number")]
    [InlineData("<path class='core' d='M1 1'/>", "fewer than two")]
    [InlineData("<path class='core' d='M1 1 A0 0 0 0 1 1 1'/>", "hop of no width")]
    [InlineData("<path class='core'/>", "a path has no d")]
    [InlineData("<path class='core' d='M1 1 L2 2'/><path class='core' d='M1 1 L2 2'/>", "more than one core")]
    public void Measure_WireThatCannotBeRead_SaysWhy(string path, string why) =>
        AssertError($"<svg viewBox='0 0 9 9'><g class='wire' data-wire='w'>{path}</g></svg>", why);

    [Theory]
    [InlineData("<g transform='scale(2)'/>", "only texts may")]
    [InlineData("<text x='1' y='1' font-size='2'>sel</text>", "no textLength")]
    [InlineData(
        "<text x='1' y='1' font-size='2' textLength='3' transform='rotate(45 1 1)'>sel</text>",
        "rotate(45 1 1)"
    )]
    [InlineData("<g data-part='p'><ellipse class='body'/></g>", "must be a rect or circle")]
    [InlineData("<rect class='body' x='1' y='1' width='2' height='2'/>", "which part")]
    [InlineData("<g data-part='p'><circle class='body' cx='1' cy='1' r='-2'/></g>", "negative r")]
    [InlineData("<g class='wire'><path class='core' d='M1 1 L2 2'/></g>", "no data-wire")]
    public void Measure_ElementThatCannotBeRead_SaysWhy(string element, string why) =>
        AssertError($"<svg viewBox='0 0 9 9'>{element}</svg>", why);

    [Fact]
    public void Measure_EntityBomb_IsRefusedUnread()
    {
        var entities = string.Concat(
            Enumerable.Range(1, 9).Select(i => $"<!ENTITY e{i} \"&e{i - 1};&e{i - 1};&e{i - 1};&e{i - 1};\">")
        );

        AssertError($"<!DOCTYPE svg [<!ENTITY e0 \"ha\">{entities}]><svg>&e9;</svg>", "not an SVG drawing");
    }

    [Fact]
    public void Measure_OutsideEntity_IsRefusedUnread() =>
        AssertError("<!DOCTYPE svg SYSTEM \"file:///etc/hostname\"><svg/>", "not an SVG drawing");

    [Fact]
    public void Measure_OneElementMoreThanAreRead_IsRefused()
    {
        var most = MostOf("elements of an SVG");

        Assert.Null(PictureMeasurer.Measure(Elements(most), source: null).Error);
        AssertError(Elements(most + 1), "more than 200000 elements");

        static string Elements(int count) =>
            "<svg viewBox='0 0 9 9'>" + string.Concat(Enumerable.Repeat("<g/>", count - 1)) + "</svg>";
    }

    [Fact]
    public void Measure_MoreCharactersThanAreRead_IsRefused() =>
        AssertError(
            "<svg viewBox='0 0 9 9'>" + new string(' ', MostOf("characters of an SVG")) + "</svg>",
            "not an SVG drawing"
        );

    [Fact]
    public void Measure_DeepNesting_IsRefused() =>
        AssertError(
            "<svg viewBox='0 0 9 9'>" + string.Concat(Enumerable.Repeat("<g>", 100_000)),
            "deep in one another"
        );

    [Fact]
    public void Measure_EndlessPath_IsRefused()
    {
        var path = new StringBuilder("M0 0");
        for (var i = 1; i < 3_000; i++)
        {
            path.Append(" L").Append(i % 7).Append(' ').Append(i);
        }

        AssertError(
            $"<svg viewBox='0 0 9 9'><g class='wire' data-wire='w'><path class='core' d='{path}'/></g></svg>",
            "more than 2000 points"
        );
    }

    [Fact]
    public void Measure_EverythingInOnePlace_EndsInAnError()
    {
        var wire = "<g class='wire' data-wire='{0}'><path class='core' d='M0 0 L5 5'/></g>";
        var wires = string.Concat(
            Enumerable.Range(0, 30_000).Select(i => wire.Replace("{0}", $"w{i}", StringComparison.Ordinal))
        );

        AssertError($"<svg viewBox='0 0 9 9'>{wires}</svg>", "too crowded");
    }

    [Fact]
    public void Measure_BodiesAsLargeAsAHouse_EndInAnError()
    {
        var body = "<rect class='body' x='-9000' y='-9000' width='9999' height='9999'/>";
        var bodies = string.Concat(Enumerable.Repeat(body, 1_000));

        AssertError($"<svg viewBox='0 0 9 9'><g data-part='p'>{bodies}</g></svg>", "to measure");
    }

    [Fact]
    public void ToJson_OfAnError_HoldsIt()
    {
        var json = PictureMeasurer.Measure("<html/>", source: null).ToJson();

        Assert.Contains("\"error\": \"not an SVG drawing: its root is 'html'\"", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Measure_AnyDamage_NeverThrows()
    {
        var length = SmallPicture.Svg.Length;
        var damage = Gen.Select(Gen.Int[0, length - 1], Gen.Int[0, 40], Gen.String[0, 6]);

        Samples.Each(
            damage,
            2_000,
            hit =>
            {
                var (at, gone, put) = hit;
                var svg = string.Concat(
                    SmallPicture.Svg.AsSpan(0, at),
                    put,
                    SmallPicture.Svg.AsSpan(Math.Min(length, at + gone))
                );
                _ = PictureMeasurer.Measure(svg, SmallPicture.Source).ToJson();
            }
        );
    }

    private static int MostOf(string counted) => (int)Bounds.All.Single(bound => bound.Counted == counted).Most;

    private static void AssertError(string svg, string why)
    {
        var measure = PictureMeasurer.Measure(svg, source: null);

        Assert.Contains(why, measure.Error, StringComparison.Ordinal);
        Assert.False(measure.IsClean);
    }
}
