using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using WireText.Checks;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Pages;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests;

/// <summary>What is told of a text while somebody writes it.</summary>
public sealed partial class LiveWiringTests
{
    private const string Wired = """
        circuit "One"
        pickup  neck  single-coil  dcr=6k l=2.4H c=100p
        pot     vol   250k audio
        jack    out   mono
        wire    neck.hot     to vol.3       white
        wire    vol.2        to out.tip     red
        wire    neck.ground  to vol.case    black
        wire    vol.1        to vol.case    bare

        """;

    private const string LastWire = "wire    vol.case     to out.sleeve  black\n";

    private readonly LiveWiring wiring = new(
        NoSources.Instance,
        CheckSettings.Standard,
        LayoutEffort.Quick,
        "a.wiring"
    );

    /// <summary>A part is where its first shape is: no shape of a part that nothing was done to moves when a wire is added.</summary>
    [Fact]
    public void AddedWire_IsWhatIsNew_AndPartsStayWhereTheyWere()
    {
        var before = Show(Wired);
        var after = Show(Wired + LastWire);

        Assert.Equal(["added: vol.case to out.sleeve black"], TextsOf(after, "changes"));
        Assert.Equal(["vol.case--out.sleeve"], TextsOf(after, "newWires"));
        Assert.Empty(TextsOf(after, "newParts"));
        Assert.Equal(Every.Of(PlacesOfParts(before)), PlacesOfParts(after));
    }

    [Fact]
    public void FirstPicture_HasNothingNew()
    {
        var first = Show(Wired);

        Assert.Empty(TextsOf(first, "changes"));
        Assert.Equal(0, first.GetProperty("newParts").GetArrayLength());
    }

    [Fact]
    public void AddedPart_IsNew()
    {
        Show(Wired);
        var after = Show(Wired + "button mute momentary\n");

        Assert.Equal(["mute"], TextsOf(after, "newParts"));
        Assert.Contains("data-part=\"mute\"", after.GetProperty("drawing").GetString(), StringComparison.Ordinal);
    }

    /// <summary>What is new after a text that could not be read is new against the last picture, which is what was seen.</summary>
    [Fact]
    public void TextThatCannotBeRead_KeepsThePicture_AndTheNextIsComparedWithIt()
    {
        var before = Show(Wired);
        var broken = Show(Wired + LastWire + "wire neck.hot too\n");
        var after = Show(Wired + LastWire);

        Assert.Equal("There are lines that cannot be read.", broken.GetProperty("trouble").GetString());
        Assert.Equal(before.GetProperty("drawing").GetString(), broken.GetProperty("drawing").GetString());
        Assert.Equal(
            [10],
            broken.GetProperty("findings").EnumerateArray().Select(one => one.GetProperty("line").GetInt32())
        );
        Assert.Equal(["added: vol.case to out.sleeve black"], TextsOf(after, "changes"));
    }

    [Theory]
    [InlineData("", "There is no part to draw yet.")]
    [InlineData("pickup\n", "There are lines that cannot be read.")]
    public void TextWithoutAPicture_SaysWhy(string text, string why)
    {
        var told = Show(text);

        Assert.Equal(why, told.GetProperty("trouble").GetString());
        Assert.Equal(JsonValueKind.Null, told.GetProperty("title").ValueKind);
        Assert.False(wiring.AwaitsFigures);
    }

    [Fact]
    public void Figures_AreToldOnceForEachPicture()
    {
        Show(Wired + LastWire);
        Assert.True(wiring.AwaitsFigures);
        var figures = Read(wiring.TellFigures(CancellationToken.None));

        Assert.False(wiring.AwaitsFigures);
        Assert.Equal(
            "vol",
            Assert
                .Single(figures.GetProperty("data").GetProperty("knobs").EnumerateArray())
                .GetProperty("name")
                .GetString()
        );
        Show(Wired + "wire\n");
        Assert.False(wiring.AwaitsFigures);
        Show(Wired);
        Assert.True(wiring.AwaitsFigures);
    }

    [Fact]
    public void FiguresThatWereGivenUp_AreStillAwaited()
    {
        Show(Wired + LastWire);

        Assert.ThrowsAny<OperationCanceledException>(() => wiring.TellFigures(new CancellationToken(canceled: true)));

        Assert.True(wiring.AwaitsFigures);
        Assert.Contains("\"knobs\"", wiring.TellFigures(CancellationToken.None), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pickup neck single-coil\n", "There is no output jack to listen at yet.")]
    [InlineData(
        Wired
            + "switch a spdt\nswitch b spdt\nswitch c spdt\nswitch d spdt\nswitch e spdt\nswitch f spdt\nswitch g spdt\nswitch h spdt\nswitch i spdt\nswitch j spdt\nswitch k spdt\nswitch l spdt\n",
        "All controls together have more than 2048 positions"
    )]
    public void CircuitWithoutFigures_SaysWhy(string text, string why)
    {
        Show(text);

        Assert.StartsWith(
            why,
            Read(wiring.TellFigures(CancellationToken.None)).GetProperty("why").GetString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void EveryPartLugAndWire_HasTheLinesThatNameIt()
    {
        var told = Show(Wired + LastWire);
        var lines = told.GetProperty("lines");
        string[] LinesOf(string kind, string name) =>
            [
                .. told.GetProperty(kind)
                    .EnumerateArray()
                    .Single(one => one[0].GetString() == name)
                    .EnumerateArray()
                    .Skip(1)
                    .Select(place =>
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"{lines[place.GetInt32()].GetProperty("line").GetInt32()} {lines[place.GetInt32()].GetProperty("text").GetString()}"
                        )
                    ),
            ];

        Assert.Equal(["3 pot     vol   250k audio"], LinesOf("parts", "vol"));
        Assert.Equal(["6 wire    vol.2        to out.tip     red"], LinesOf("wires", "vol.2--out.tip"));
        Assert.Equal(
            [7, 8, 9],
            LinesOf("lugs", "vol.case").Select(line => int.Parse(line.Split(' ')[0], CultureInfo.InvariantCulture))
        );
        Assert.Equal(["6 wire    vol.2        to out.tip     red"], LinesOf("lugs", "out.tip"));
    }

    [Fact]
    public void MoreFindingsThanAreListed_AreCounted()
    {
        const int Left = 7;
        var told = Show(string.Concat(Enumerable.Repeat("bogus\n", LivePage.MostFindings + Left)));

        Assert.Equal(LivePage.MostFindings, told.GetProperty("findings").GetArrayLength());
        Assert.Equal(Left, told.GetProperty("more").GetInt32());
    }

    /// <summary>At each key stroke one theme is enough; the other comes later, and the picture is the same.</summary>
    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    public void PromptPicture_IsInOneTheme_UntilBothAreAskedFor(string name)
    {
        var theme = Theme.All.First(one => one.Name == name);
        var prompt = Prompt(theme);
        var told = Read(prompt.Show(new SourceText("a.wiring", Wired + LastWire), CancellationToken.None));
        var both = Read(prompt.DrawInBoth([]));
        var usual = Show(Wired + LastWire);

        Assert.Contains($"\"{theme.Paper}\"", told.GetProperty("drawing").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("var(--c", told.GetProperty("drawing").GetString(), StringComparison.Ordinal);
        Every.Item(
            ["drawing", "colours"],
            key => Assert.Equal(usual.GetProperty(key).GetString(), both.GetProperty(key).GetString())
        );
    }

    /// <summary>The bars of the figures say which lugs they join: who draws them elsewhere draws the same.</summary>
    [Fact]
    public void BarsOfFigures_DrawTheSamePictureElsewhere()
    {
        const string Text =
            Wired + LastWire + "button mute momentary\nwire mute.1 to out.tip white\nwire mute.2 to out.sleeve black\n";
        var prompt = Prompt(Theme.Light);
        prompt.Show(new SourceText("a.wiring", Text), CancellationToken.None);
        Show(Text);
        var figures = Read(wiring.TellFigures(CancellationToken.None));
        var lugs = figures.GetProperty("bars").EnumerateArray().Select(one => one.GetInt32()).ToList();

        Assert.Equal(2, lugs.Count);
        Assert.Equal(
            figures.GetProperty("drawing").GetString(),
            Read(prompt.DrawInBoth([new ContactBar(lugs[0], lugs[1])])).GetProperty("drawing").GetString()
        );
    }

    /// <summary>The edit that mends a refuted claim is searched for; at each key stroke the finding comes without.</summary>
    [Fact]
    public void PromptFindings_AreTheSame_WithoutTheEditsThatAreSearchedFor()
    {
        const string Text = Wired + LastWire + "expect vol=0: neck\nexpect rest: silence\n";
        var prompt = Prompt(Theme.Light);
        var told = Read(prompt.Show(new SourceText("a.wiring", Text), CancellationToken.None));
        var usual = Show(Text);

        Assert.Equal(
            Every.Of(usual.GetProperty("findings").EnumerateArray()).Select(one => one.GetProperty("id").GetString()),
            told.GetProperty("findings").EnumerateArray().Select(one => one.GetProperty("id").GetString())
        );
        Assert.NotNull(prompt.Latest!.Repairs);
    }

    private static LiveWiring Prompt(Theme theme) =>
        new(NoSources.Instance, CheckSettings.Standard, LayoutEffort.Quick, "a.wiring") { PromptTheme = theme };

    /// <summary>One line and plain letters: an event has no more, whatever the text has.</summary>
    [Fact]
    public void WhatIsTold_IsOneLineOfPlainLetters()
    {
        var told = wiring.Show(
            new SourceText("a.wiring", "circuit \"a\u2028b é 𝄞 </script>\"\nwire \u202E\r\n\u0001\n" + Wired),
            CancellationToken.None
        );

        Every.Item(told, letter => Assert.InRange(letter, ' ', '~'));
    }

    private JsonElement Show(string text) =>
        Read(wiring.Show(new SourceText("a.wiring", text), CancellationToken.None));

    private static JsonElement Read(string told)
    {
        using var document = JsonDocument.Parse(told);
        return document.RootElement.Clone();
    }

    private static IEnumerable<string?> TextsOf(JsonElement told, string key) =>
        told.GetProperty(key).EnumerateArray().Select(one => one.GetString());

    private static IEnumerable<string> PlacesOfParts(JsonElement told) =>
        PartGroup().Matches(told.GetProperty("drawing").GetString()!).Select(part => part.Value);

    [GeneratedRegex("<g class=\"part\".*?\n</g>", RegexOptions.Singleline, 2000)]
    private static partial Regex PartGroup();
}
