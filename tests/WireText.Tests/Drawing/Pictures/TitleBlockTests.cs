using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>What is told in words and signs on a drawing, on the parts and under them.</summary>
public class TitleBlockTests
{
    [Theory]
    [InlineData("wind=ccw magnet=south", "wound ccw · south to the strings")]
    [InlineData("wind=cw", "wound cw")]
    [InlineData("magnet=none", "no magnet")]
    [InlineData("", null)]
    public void Pickup_OfOneCoil_SaysHowItIsWoundWhenTheTextDoes(string said, string? words)
    {
        var texts = Texts(Drawings.PictureOf($"pickup middle single-coil {said}"), "part-value");

        Assert.Equal(words is null ? [] : [words], texts);
    }

    [Fact]
    public void Coils_OfAHumbucker_SayHowEachIsWound() =>
        Assert.Equal(
            ["n · wound ccw · north to the strings", "s · wound ccw · south to the strings"],
            Texts(Drawings.PictureOf("pickup neck humbucker-4"), "coil-name")
        );

    [Fact]
    public void Coils_OfATurnedHumbucker_KeepTheirNamesOnly() =>
        Assert.Equal(
            ["n", "s"],
            Texts(Drawings.PictureOf("pickup neck humbucker-4\nplace neck turned 270"), "coil-name")
        );

    [Theory]
    [InlineData("pot vol 250k audio", "250k audio")]
    [InlineData("pot vol push-pull 250k audio", "250k audio/push-pull")]
    [InlineData("pot mix blend 500k", "500k/blend")]
    public void Pot_ThatIsNotAPlainOne_SaysWhatItIs(string text, string words) =>
        Assert.Equal(words, string.Join('/', Texts(Drawings.PictureOf(text), "part-value")));

    [Fact]
    public void Pot_OfTwoGangs_SaysWhichIsWhere()
    {
        Assert.Contains(
            Texts(Drawings.PictureOf("pot mix blend 500k"), "note"),
            note => note.StartsWith("mix: ", StringComparison.Ordinal) && note.Contains("gang a by the bushing")
        );
        Assert.Empty(Texts(Drawings.PictureOf("pot vol 500k audio"), "note"));
    }

    [Fact]
    public void About_IsTold_InTheOrderWritten() =>
        Assert.Equal(
            ["job: 31", "customer: the owner"],
            Texts(Drawings.PictureOf("about job \"31\"\nabout customer \"the owner\"\njack out mono"), "about")
        );

    // Common practice: flux spatter marks nitrocellulose, a towel masks it.
    [Theory]
    [InlineData("nitrocellulose", true)]
    [InlineData("polyester", false)]
    public void Finish_IsTold_AndMaskedWhereFluxMarksIt(string finish, bool isMasked)
    {
        var note = string.Join(' ', Texts(Drawings.PictureOf($"finish {finish}\njack out mono"), "note"));

        Assert.StartsWith($"Body finish: {finish}", note, StringComparison.Ordinal);
        Assert.Equal(isMasked, note.Contains("towel", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(
        "switch sel lever-3way\npositions sel neck both bridge",
        "sel: neck A0+A1, B0+B1 · both A0+A2, B0+B2 · bridge A0+A3, B0+B3"
    )]
    [InlineData("button mute momentary", "mute: up nothing · down 1+2")]
    [InlineData("jack out stereo", "out: mono-plug ring+sleeve · stereo-plug nothing · no-plug nothing")]
    [InlineData("pot vol 250k audio", null)]
    public void Contacts_OfEachPosition_AreTold(string text, string? line) =>
        Assert.Equal(line is null ? [] : [line], Texts(Drawings.PictureOf(text), "contacts"));

    [Fact]
    public void Contacts_WithoutRoomOnOneLine_HaveALineForEachPosition() =>
        Assert.Equal(
            [
                "sel: 1 A0+A1, B0+B1",
                "sel: 2 A0+A1+A2, B0+B1+B2",
                "sel: 3 A0+A2, B0+B2",
                "sel: 4 A0+A2+A3, B0+B2+B3",
                "sel: 5 A0+A3, B0+B3",
            ],
            Texts(Drawings.PictureOf("switch sel lever-5way"), "contacts")
        );

    [Theory]
    [InlineData("wind=cw magnet=north", true)]
    [InlineData("", false)]
    public void Legend_WhereAWindingIsSaid_SaysFromWhereItIsSeen(string said, bool isTold) =>
        Assert.Equal(
            isTold,
            Texts(Drawings.PictureOf($"pickup middle single-coil {said}"), "legend-text")
                .Any(words => words.Contains("as seen from the strings", StringComparison.Ordinal))
        );

    [Theory]
    [InlineData("pickup neck humbucker-4\nsplice link neck.n-finish neck.s-finish sleeved", true)]
    [InlineData("pickup neck humbucker-4", false)]
    public void Legend_OfACircuitWithASplice_ExplainsIt(string text, bool isTold) =>
        Assert.Equal(
            isTold,
            Texts(Drawings.PictureOf(text), "legend-text")
                .Any(words => words.StartsWith("splice", StringComparison.Ordinal))
        );

    [Fact]
    public void Legend_OfSeveralRows_HasNoRowMuchShorterThanTheOthers()
    {
        var colours = new[] { "black", "red", "orange", "yellow", "green", "blue", "violet", "white", "pink", "grey" };
        var lines = colours.Select((colour, i) => $"metal plate{i}\nwire plate{i} to far{i} {colour}\nmetal far{i}");
        var rows = PictureItems
            .In(Drawings.PictureOf(string.Join('\n', lines)).Items)
            .OfType<TextItem>()
            .Where(text => text.Class == "legend-text")
            .GroupBy(text => text.At.Y)
            .Select(row => row.Count())
            .ToList();

        Assert.True(rows.Count > 1, "the legend has one row: the test says nothing");
        Assert.True(rows.Max() <= 2 * rows.Min(), string.Join(", ", rows));
    }

    [Theory]
    [InlineData("A short one")]
    [InlineData("Two pickups with coils in series, a mute, and a bleed that the customer brought")]
    public void Title_OfAnyLength_HasTwoLinesAtMostAndLosesNoWord(string title)
    {
        var lines = Texts(Drawings.PictureOf($"circuit \"{title}\"\npot vol 250k audio"), "title");

        Assert.InRange(lines.Length, 1, 2);
        Assert.Equal(title, string.Join(' ', lines));
    }

    [Fact]
    public void Title_ThatFitsBesideTheScale_StandsOnOneLineAndOnNothing()
    {
        const string Title = "Three pickups, two tones";
        var circuit = Drawings.CircuitOf($"circuit \"{Title}\"\npot vol 250k audio");
        var layout = LayoutEngine.Lay(FaceBuilder.BuildProblem(circuit), LayoutEffort.Quick);

        var picture = PictureBuilder.Build(circuit, layout, new PictureOptions { FileName = "a-long-name.wiring" });

        TextItem[] texts = [.. PictureItems.In(picture.Items).OfType<TextItem>()];
        var title = texts.Single(text => text.Class == "title");
        var file = texts.First(text => text.Class == "file");
        Assert.Equal(Title, title.Text);
        Assert.True(title.Bounds.Right > file.Bounds.X, "it ends before the file name begins: the test says nothing");
        Assert.DoesNotContain(texts, text => text != title && text.Bounds.Overlaps(title.Bounds));
    }

    [Fact]
    public void Title_LongerThanAny_IsCutAndSaysSo() =>
        Assert.EndsWith(
            "…",
            Texts(
                Drawings.PictureOf($"circuit \"{string.Join(' ', Enumerable.Repeat("word", 90))}\"\npot vol 250k"),
                "title"
            )[^1],
            StringComparison.Ordinal
        );

    [Fact]
    public void FileName_OfAnyLength_IsNeverCut()
    {
        var name = $"{string.Join('-', Enumerable.Repeat("a-name-that-goes-on", 9))}.wiring";
        var circuit = Drawings.CircuitOf("pot vol 250k audio");
        var layout = LayoutEngine.Lay(FaceBuilder.BuildProblem(circuit), LayoutEffort.Quick);

        var picture = PictureBuilder.Build(circuit, layout, new PictureOptions { FileName = name });

        var lines = Texts(picture, "file");
        Assert.Equal(["seen from behind"], lines.Take(1));
        Assert.Equal(name, string.Concat(lines.Skip(1)));
        Testing.Every.Item(
            PictureItems.In(picture).OfType<TextItem>(),
            text => Assert.InRange(text.Bounds.Right, 0, picture.Page.Width)
        );
    }

    private static string[] Texts(Picture picture, string name) =>
        [
            .. PictureItems
                .In(picture.Items)
                .OfType<TextItem>()
                .Where(text => text.Class == name)
                .Select(text => text.Text),
        ];
}
