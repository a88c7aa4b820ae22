using System.Globalization;

namespace WireText.Cli.Tests;

/// <summary>Whatever way an editor saves, the last text is shown; and what a circuit stands on is followed as it is.</summary>
public sealed class WatchFollowTests : IDisposable
{
    private readonly TestFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Save_OverTheFile_IsShown()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Titled("one")));
        using var reader = new EventReader(watching);
        reader.PictureWith(">one<");

        folder.Put("a.wiring", Titled("two"));

        reader.PictureWith(">two<");
    }

    [Fact]
    public void Save_ByRename_IsShownEachTime()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Titled("one")));
        using var reader = new EventReader(watching);
        foreach (var title in new[] { "two", "three", "four" })
        {
            File.Move(folder.Put("a.wiring~", Titled(title)), folder["a.wiring"], overwrite: true);

            reader.PictureWith($">{title}<");
        }
    }

    [Fact]
    public void File_ThatIsGone_LeavesThePictureUntilItIsBack()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Titled("one")));
        using var reader = new EventReader(watching);
        reader.PictureWith(">one<");

        File.Delete(folder["a.wiring"]);
        var gone = reader.Next("picture", picture => picture.GetProperty("trouble").GetString() is not null);

        Assert.Contains("there is no such file", gone.GetProperty("trouble").GetString(), StringComparison.Ordinal);
        Assert.True(EventReader.Draws(gone, ">one<"));
        folder.Put("a.wiring", Titled("two"));
        var back = reader.PictureWith(">two<");
        Assert.Null(back.GetProperty("trouble").GetString());
    }

    [Fact]
    public void Folder_ThatIsReplaced_IsFollowedStill()
    {
        using var watching = Watching.Of(folder.Put("job/a.wiring", Titled("one")));
        using var reader = new EventReader(watching);
        reader.PictureWith(">one<");

        Directory.Move(folder["job"], folder["old"]);
        folder.Put("job/a.wiring", Titled("two"));
        reader.PictureWith(">two<");
        folder.Put("job/a.wiring", Titled("three"));

        reader.PictureWith(">three<");
    }

    [Fact]
    public void Burst_OfSaves_EndsWithTheLastText()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Titled("one")));
        using var reader = new EventReader(watching);
        reader.PictureWith(">one<");
        for (var i = 0; i < 100; i++)
        {
            folder.Put("a.wiring", Titled(string.Create(CultureInfo.InvariantCulture, $"save {i}")));
        }

        reader.PictureWith(">save 99<");
        reader.Next("figures", _ => true);
    }

    [Fact]
    public void IncludedFile_IsFollowed_FromBeforeItIsThere()
    {
        using var watching = Watching.Of(
            folder.Put("a.wiring", "include \"parts/own.wiring\"\n" + Sample.Right + "button x own\n")
        );
        using var reader = new EventReader(watching);
        var missing = reader.Next("picture", _ => true);
        Assert.Contains("own.wiring", missing.GetRawText(), StringComparison.Ordinal);

        folder.Put("parts/own.wiring", Part("1", "2"));
        reader.PictureWith("x.2");
        folder.Put("parts/own.wiring", Part("1", "other"));

        reader.PictureWith("x.other");
    }

    [Fact]
    public void FileThatAModStandsOn_IsFollowed()
    {
        folder.Put("stock.wiring", Titled("stock"));
        using var watching = Watching.Of(
            folder.Put("mod.wiring", "base \"stock.wiring\"\ncircuit \"mod\"\nbutton mute momentary\n")
        );
        using var reader = new EventReader(watching);
        reader.PictureWith("data-part=\"mute\"");

        folder.Put("stock.wiring", Titled("stock") + "pot vol 250k audio\n");

        reader.PictureWith("data-part=\"vol\"");
    }

    [SkippableFact]
    public void FileThatALinkLeadsTo_IsFollowed()
    {
        Skip.If(OperatingSystem.IsWindows(), "a link needs a right there");
        folder.Put("elsewhere/real.wiring", Titled("one"));
        File.CreateSymbolicLink(folder["a.wiring"], folder["elsewhere/real.wiring"]);
        using var watching = Watching.Of(folder["a.wiring"]);
        using var reader = new EventReader(watching);
        reader.PictureWith(">one<");

        folder.Put("elsewhere/real.wiring", Titled("two"));

        reader.PictureWith(">two<");
    }

    [Fact]
    public void TextThatCannotBeRead_LeavesThePicture_AndItsFindingsAreTold()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Titled("one")));
        using var reader = new EventReader(watching);
        reader.PictureWith(">one<");

        folder.Put("a.wiring", Titled("two") + "wire neck.hot too out.tip\n");
        var broken = reader.Next("picture", picture => picture.GetProperty("trouble").GetString() is not null);

        Assert.True(EventReader.Draws(broken, ">one<"));
        var finding = Assert.Single(broken.GetProperty("findings").EnumerateArray());
        Assert.Equal(
            (6, "wire neck.hot too out.tip"),
            (finding.GetProperty("line").GetInt32(), finding.GetProperty("text").GetString())
        );
        Assert.NotNull(finding.GetProperty("help").GetString());
    }

    /// <summary>As after a sleep: the connection is gone, and meanwhile the text was saved, and broken.</summary>
    [Fact]
    public void Reader_WhoComesBack_IsToldHowItStands()
    {
        using var watching = Watching.Of(folder.Put("a.wiring", Titled("one")));
        using (var before = new EventReader(watching))
        {
            before.PictureWith(">one<");
            folder.Put("a.wiring", Titled("two"));
            before.PictureWith(">two<");
            before.Next("figures", _ => true);
            folder.Put("a.wiring", "nothing of this can be read\n");
            before.Next("picture", picture => picture.GetProperty("trouble").GetString() is not null);
        }

        using var after = new EventReader(watching);
        var (first, second) = (after.Next(), after.Next());

        Assert.Equal(("picture", "figures"), (first.Kind, second.Kind));
        Assert.True(EventReader.Draws(first.Told, ">two<"));
        Assert.NotEmpty(first.Told.GetProperty("findings").EnumerateArray());
    }

    private static string Titled(string title) => $"circuit \"{title}\"\n" + Sample.Right;

    private static string Part(string one, string other) =>
        $"define button own\n    body round 14\n    lugs {one} -3,0  {other} 3,0\n    position up\n    position down {one}+{other}\n";
}
