using WireText.Drawing.Shapes;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>Pickups stand from the neck to the bridge, left to right, however they are written and whatever wire it takes.</summary>
public class PickupOrderTests
{
    /// <summary>The wires would be shorter with the pickups exchanged, whichever is written first.</summary>
    private static string Wiring(string first, string second) =>
        $"""
            circuit "order"
            pickup {first} humbucker
            pickup {second} humbucker
            switch tog toggle-3way
            pot vol 500k audio
            jack out mono
            wire {first}.hot to tog.B1 red
            wire {second}.hot to tog.A1 white
            wire tog.A0 to tog.B0 to vol.3 blue
            wire vol.2 to out.tip yellow
            wire vol.1 to vol.case bare
            wire {first}.ground to vol.case bare
            wire {second}.ground to vol.case bare
            wire tog.case to vol.case bare
            wire vol.case to out.sleeve black
            """;

    [Theory]
    [InlineData("neck", "bridge")]
    [InlineData("bridge", "neck")]
    [InlineData("front", "rear")]
    [InlineData("rear", "front")]
    [InlineData("bridge-single", "middle-single")]
    public void PickupsThatSayWhereTheySit_StandInThatOrder(string first, string second)
    {
        string[] fromTheNeck = ["neck", "front", "middle-single", "bridge", "rear", "bridge-single"];
        string[] expected = [.. fromTheNeck.Where(name => name == first || name == second)];

        var picture = Drawings.PictureOf(Wiring(first, second));

        Assert.Equal(expected, FromLeftToRight(picture, expected));
        Assert.Contains("seen from behind, neck to the left · test.wiring", Texts(picture));
    }

    [Theory]
    [InlineData("one", "two")]
    [InlineData("two", "one")]
    public void OthersStandAsTheyAreWritten_AndNoSideIsTheNeck(string first, string second)
    {
        var picture = Drawings.PictureOf(Wiring(first, second));

        Assert.Equal([first, second], FromLeftToRight(picture, [first, second]));
        Assert.DoesNotContain(Texts(picture), text => text.Contains("neck to the", StringComparison.Ordinal));
    }

    [Fact]
    public void PickupsThatTheAuthorPutTheOtherWay_StayThere_AndItIsSaid()
    {
        var placed = Wiring("neck", "bridge") + "\nplace neck at 200,30\nplace bridge at 60,30";
        var picture = Drawings.PictureOf(placed);

        Assert.Equal(["bridge", "neck"], FromLeftToRight(picture, ["neck", "bridge"]));
        Assert.Contains("seen from behind, neck to the right · test.wiring", Texts(picture));
    }

    private static IEnumerable<string> FromLeftToRight(Picture picture, IReadOnlyCollection<string> names) =>
        PictureItems
            .In(picture)
            .OfType<TextItem>()
            .Where(text => text.Class == "part-name" && names.Contains(text.Text))
            .OrderBy(text => text.Bounds.X)
            .Select(text => text.Text);

    private static IEnumerable<string> Texts(Picture picture) =>
        PictureItems.In(picture).OfType<TextItem>().Where(text => text.Class == "file").Select(text => text.Text);
}
