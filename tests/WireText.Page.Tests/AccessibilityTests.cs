using Microsoft.Playwright;
using WireText.Testing;

namespace WireText.Page.Tests;

/// <summary>What axe-core can tell of a page, and what no eye must see: nothing is cut off on a phone, nothing leaves the file.</summary>
[Collection(BrowserTests.Name)]
public class AccessibilityTests(Browser browser)
{
    [SkippableTheory]
    [MemberData(nameof(ExamplePages.Rows), MemberType = typeof(ExamplePages))]
    public async Task Page_AtBothWidthsLightAndDark_FitsAndHasNoViolation(string name)
    {
        await using var open = await browser.Open(ExamplePages.Page(name));
        await Compare(open);
        await Axe.PutInto(open.Page);
        var told = new List<string>();
        foreach (var width in new[] { OpenPage.Desktop, OpenPage.Phone })
        {
            await open.Page.SetViewportSizeAsync(width, 900);
            Assert.Equal(width, await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
            foreach (var colours in new[] { ColorScheme.Light, ColorScheme.Dark })
            {
                await open.Page.EmulateMediaAsync(new() { ColorScheme = colours });
                var found = await Axe.ViolationsOf(open.Page);
                told.AddRange(found.Select(one => $"{width} {colours} {one}"));
            }
        }

        Assert.Empty(told);
        open.AssertQuiet();
    }

    /// <summary>Rules that find nothing anywhere would hold nothing: a control without a name is told.</summary>
    [SkippableFact]
    public async Task AControlWithoutAName_IsAViolation()
    {
        var page = ExamplePages
            .Page(ExamplePages.Names[0])
            .Replace("<main>", "<main><input type=\"text\">", StringComparison.Ordinal);
        await using var open = await browser.Open(page);
        await Axe.PutInto(open.Page);

        Assert.Contains("label: ", string.Join('\n', await Axe.ViolationsOf(open.Page)), StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Colours_FollowTheSystemUntilTheSwitchSaysOtherwise()
    {
        await using var open = await browser.Open(ExamplePages.Page(ExamplePages.Names[1]));
        async Task<string> Paper() =>
            await open.Page.EvaluateAsync<string>(
                "getComputedStyle(document.body).backgroundColor + ' ' + getComputedStyle(document.querySelector('.paper')).fill"
            );
        const string Light = "rgb(252, 251, 248) rgb(252, 251, 248)";
        const string Dark = "rgb(21, 24, 28) rgb(21, 24, 28)";

        Assert.Equal(Light, await Paper());
        await open.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        Assert.Equal(Dark, await Paper());
        await open.Page.SelectOptionAsync("select", "light");
        Assert.Equal(Light, await Paper());
        await open.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await open.Page.SelectOptionAsync("select", "dark");
        Assert.Equal(Dark, await Paper());
    }

    [SkippableFact]
    public async Task Print_IsBlackOnWhiteWithoutControls()
    {
        await using var open = await browser.Open(ExamplePages.Page(ExamplePages.Names[1]));
        await open.Page.SelectOptionAsync("select", "dark");
        await open.Page.EmulateMediaAsync(new() { Media = Media.Print, ColorScheme = ColorScheme.Dark });

        Assert.Equal(
            "rgb(255, 255, 255) rgb(255, 255, 255)",
            await open.Page.EvaluateAsync<string>(
                "getComputedStyle(document.body).backgroundColor + ' ' + getComputedStyle(document.querySelector('.paper')).fill"
            )
        );
        Assert.False(await open.Page.IsVisibleAsync("[data-place=controls]"));
        Assert.True(await open.Page.IsVisibleAsync("#positions"));
        Assert.Equal(
            "1",
            await open.Page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.dim')).opacity")
        );
    }

    /// <summary>With scripts switched off the drawing and the tables are there.</summary>
    [Fact]
    public void Page_WithoutScript_HasTheDrawingAndEveryPosition()
    {
        var page = ExamplePages.Page("2-two-pickups-mute.wiring");

        Assert.Contains("<td>neck parallel bridge</td>", page, StringComparison.Ordinal);
        Assert.Contains("<noscript>", page, StringComparison.Ordinal);
        Assert.Equal(1, page.Split("<svg role=\"img\"").Length - 1);
    }

    [Fact]
    public void Page_OfEachExample_IsTheSameEachTimeAndUnderTwoMegabytes() =>
        Every.Item(
            ExamplePages.Names,
            name =>
            {
                var page = ExamplePages.Page(name);
                Assert.InRange(page.Length, 10_000, 2_000_000);
                var again = ExamplePages.Compile(name);
                Assert.Equal(
                    page,
                    again.WritePage(again.TellStates()!, Drawing.Layout.LayoutEffort.Quick, "guitar.wiring")
                );
            }
        );

    private static async Task Compare(OpenPage open)
    {
        var box = open.Page.GetByText("Compare with before the change");
        if (await box.CountAsync() > 0)
        {
            await box.ClickAsync();
        }
    }
}
