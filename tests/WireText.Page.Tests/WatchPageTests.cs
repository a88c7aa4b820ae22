using Microsoft.Playwright;
using WireText.Cli.Tests;
using WireText.Testing;
using Xunit.Abstractions;

namespace WireText.Page.Tests;

/// <summary>The page beside a text, in a browser, while the text is saved.</summary>
[Collection(BrowserTests.Name)]
public sealed class WatchPageTests(Browser browser, ITestOutputHelper output) : IDisposable
{
    private const string Payload = "</script><script>window.ran=1</script><img src=x onerror=window.ran=1>";

    private static readonly string Example = File.ReadAllText(
        Repository.PathOf("examples", "2-two-pickups-mute.wiring")
    );

    private readonly string file = Path.Combine(
        Directory.CreateTempSubdirectory("wiretext-").FullName,
        "guitar.wiring"
    );

    public void Dispose() => Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);

    /// <summary>How long it takes is written down, and not judged: what else the machine does is in it.</summary>
    [SkippableFact]
    public async Task ASave_ChangesThePicture_AndMarksWhatIsNew()
    {
        using var watching = Watch(Example);
        await using var open = await browser.OpenAddress(watching.Address);
        await Ready(open);
        var places = await PlacesOfParts(open);

        var times = new List<double>();
        for (var i = 0; i < 10; i++)
        {
            var colour = i % 2 == 0 ? "green" : "blue";
            await open.Page.EvaluateAsync(
                """
                text => {
                  window.seen = new Promise((seen) => {
                    const look = () => document.querySelector("[data-live=changes]").textContent.endsWith(text)
                      ? requestAnimationFrame(() => seen(performance.timeOrigin + performance.now()))
                      : setTimeout(look, 1);
                    look();
                  });
                }
                """,
                $"out.tip {colour}"
            );
            await File.WriteAllTextAsync(file, Example.Replace("blue\n", colour + "\n", StringComparison.Ordinal));
            var saved = DateTimeOffset.FromFileTime(File.GetLastWriteTimeUtc(file).ToFileTimeUtc());
            var seen = await open.Page.EvaluateAsync<double>("window.seen");
            times.Add(seen - (saved.ToUnixTimeMilliseconds() + (saved.Ticks % 10_000 / 10_000.0)));
            await Task.Delay(300);
        }

        output.WriteLine(
            $"save to picture, ms: {string.Join(", ", times.Select(time => time.ToString("0", System.Globalization.CultureInfo.InvariantCulture)))}"
        );
        Assert.Equal(places, await PlacesOfParts(open));
        Assert.Equal(["vol.2--out.tip"], await Lit(open));
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task ABrokenText_KeepsThePicture_AndShowsWhereItIsBroken()
    {
        using var watching = Watch(Example);
        await using var open = await browser.OpenAddress(watching.Address);
        await Ready(open);
        var picture = await open.Page.InnerHTMLAsync(".sheet");

        await Save(open, Example + "wire vol.2 too out.tip\n", "body.kept");

        Assert.Equal(picture, await open.Page.InnerHTMLAsync(".sheet"));
        var line = Example.Split('\n').Length;
        Assert.Equal(
            $"guitar.wiring:{line} wire vol.2 too out.tip",
            await Words(open, "[data-live=findings] .error .source")
        );
        Assert.Contains(
            "help: ",
            await open.Page.InnerTextAsync("[data-live=findings] .error"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "The picture is that of the last text that could be read",
            await State(open),
            StringComparison.Ordinal
        );

        await Save(open, Example.Replace("250k", "500k", StringComparison.Ordinal), "body:not(.kept)");
        Assert.DoesNotContain(
            "too out.tip",
            await open.Page.InnerTextAsync("[data-live=findings]"),
            StringComparison.Ordinal
        );
        Assert.Contains("500k audio", await open.Page.InnerTextAsync("[data-live=changes]"), StringComparison.Ordinal);
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task ControlsStandAsTheyStood_WhenTheTextIsSaved()
    {
        using var watching = Watch(Example);
        await using var open = await browser.OpenAddress(watching.Address);
        await Ready(open);
        await open.Choose("sel", "neck");
        await open.Turn(0, 5);
        Assert.Equal("sel neck, mute up, vol 5", await open.Heading);
        var before = await open.Now("level");

        await Save(
            open,
            Example.Replace("tone    250k", "tone    500k", StringComparison.Ordinal),
            "text=tone: 250k audio → 500k audio"
        );
        await open.Page.WaitForSelectorAsync(".desk:not([aria-busy])");

        Assert.Equal("sel neck, mute up, vol 5", await open.Heading);
        Assert.NotEqual("-", before);
        await open.Choose("sel", "both");
        Assert.Contains("parallel", await open.Now("heard"), StringComparison.Ordinal);
        Assert.NotEmpty(await open.Levels("now"));
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task AClick_ShowsTheLineOfAPart_ALugAndAWire()
    {
        using var watching = Watch(Example);
        await using var open = await browser.OpenAddress(watching.Address);
        await Ready(open);
        async Task<string> Clicked(string what)
        {
            await open.Page.Locator($".sheet {what}").First.DispatchEventAsync("click");
            return await Words(open, "[data-live=lines]");
        }

        var lines = Example.Split('\n');
        string At(string start)
        {
            var line = Array.FindIndex(lines, one => one.StartsWith(start, StringComparison.Ordinal));
            return $"guitar.wiring:{line + 1} {lines[line]}";
        }

        Assert.Contains(
            At("pot     tone"),
            await Clicked("g.part[data-part=tone] .part-name"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            At("wire    vol.2"),
            await Clicked("g.wire[data-wire='vol.2--out.tip'] path"),
            StringComparison.Ordinal
        );
        var lug = await Clicked("g.lug[data-lug='out.tip']");
        Assert.Contains(At("wire    vol.2"), lug, StringComparison.Ordinal);
        Assert.Contains(At("wire    mute.1"), lug, StringComparison.Ordinal);
        Assert.DoesNotContain("neck", lug, StringComparison.Ordinal);
        await open.Page.ClickAsync("[data-live=line] button");
        Assert.False(await open.Page.IsVisibleAsync("[data-live=line]"));
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task ThePage_IsTheViewerOfThePageForACustomer()
    {
        using var watching = Watch(Example);
        await using var open = await browser.OpenAddress(watching.Address);
        await Ready(open);
        await using var sent = await browser.Open(ExamplePages.PageOf(Example));
        await open.Page.GetByLabel("Follow the signal").CheckAsync();
        foreach (var page in new[] { open, sent })
        {
            await page.Choose("sel", "both");
            await page.Turn(1, 3);
        }

        Assert.Equal(await sent.Heading, await open.Heading);
        Assert.Equal(await sent.LitWires(), await open.LitWires());
        Assert.Equal(await sent.Levels("now"), await open.Levels("now"));
        Assert.Equal(
            await sent.Page.InnerTextAsync("[data-place=told]"),
            await open.Page.InnerTextAsync("[data-place=told]")
        );
        Assert.Equal(
            await sent.Page.InnerTextAsync(".wide >> nth=0"),
            await open.Page.InnerTextAsync(".wide >> nth=0")
        );
    }

    [SkippableFact]
    public async Task HostileNames_RunNothing()
    {
        var hostile = $"""
            circuit "{Payload}"
            remark  "{Payload} </style></title><svg onload=window.ran=1> <!-- ]]>"
            about   customer "{Payload}"
            pickup  neck  single-coil
            switch  sel   spdt
            jack    out   mono
            positions sel  <img/src/onerror> <script>x</script>
            wire neck.hot to sel.A1 white
            wire sel.A0 to out.tip "{Payload}"
            wire neck.ground to <img/src=x/onerror=window.ran=1> black

            """;
        using var watching = Watch(hostile);
        await using var open = await browser.OpenAddress(watching.Address);
        await open.Page.WaitForSelectorAsync("[data-live=findings] li");
        await Save(
            open,
            hostile
                .Replace("\nwire sel.A0", "\n#", StringComparison.Ordinal)
                .Replace("\nwire neck.ground", "\n#", StringComparison.Ordinal),
            ".sheet svg"
        );
        await Ready(open);
        await open.Page.Locator(".sheet g.part").First.DispatchEventAsync("click");

        Assert.Equal(Payload, await open.Page.InnerTextAsync("header dd"));
        Assert.True(await open.Page.EvaluateAsync<bool>("window.ran === undefined"));
        Assert.Equal(0, await open.Page.Locator("img, iframe, object, a").CountAsync());
        Assert.Equal(1, await open.Page.Locator("script").CountAsync());
        open.AssertQuiet();
    }

    /// <summary>Every state of the page: right, with findings, broken, with a line shown.</summary>
    [SkippableFact]
    public async Task Page_AtBothWidthsLightAndDark_FitsAndHasNoViolation()
    {
        using var watching = Watch(Example);
        await using var open = await browser.OpenAddress(watching.Address);
        await Ready(open);
        await Axe.PutInto(open.Page);
        await open.Page.Locator(".sheet g.part").First.DispatchEventAsync("click");
        var told = new List<string>();
        await Look("right");
        await Save(open, Example.Replace("wire    vol.2", "#", StringComparison.Ordinal), "text=Since the last save");
        await open.Page.WaitForSelectorAsync("[data-live=findings] li");
        await Look("with findings");
        await Save(open, Example + "wire\n", "body.kept");
        await Look("broken");

        Assert.Empty(told);
        open.AssertQuiet();

        async Task Look(string state)
        {
            foreach (var width in new[] { OpenPage.Desktop, OpenPage.Phone })
            {
                await open.Page.SetViewportSizeAsync(width, 900);
                Assert.Equal(width, await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
                foreach (var colours in new[] { ColorScheme.Light, ColorScheme.Dark })
                {
                    await open.Page.EmulateMediaAsync(new() { ColorScheme = colours });
                    told.AddRange(
                        (await Axe.ViolationsOf(open.Page)).Select(one => $"{state} {width} {colours} {one}")
                    );
                }
            }
        }
    }

    [SkippableFact]
    public async Task WhenTheProgramEnds_ThePageSaysSo()
    {
        using var watching = Watch(Example);
        await using var open = await browser.OpenAddress(watching.Address);
        await Ready(open);

        watching.End();

        await open.Page.WaitForSelectorAsync("text=Not connected");
        Assert.Equal(1, await open.Page.Locator(".sheet svg").CountAsync());
    }

    private Watching Watch(string text)
    {
        File.WriteAllText(file, text);
        return Watching.In(Path.GetDirectoryName(file)!, Path.GetFileName(file));
    }

    /// <summary>Saves as many editors do: a new file in the place of the old one.</summary>
    private async Task Save(OpenPage open, string text, string shown)
    {
        await File.WriteAllTextAsync(file + "~", text);
        File.Move(file + "~", file, overwrite: true);
        await open.Page.WaitForSelectorAsync(shown);
    }

    private static async Task Ready(OpenPage open)
    {
        await open.Page.WaitForSelectorAsync("[data-place=told] h2");
        await open.Page.WaitForSelectorAsync(".desk:not([aria-busy])");
    }

    /// <summary>The text of an element in one line; the blanks in its lines stay.</summary>
    private static async Task<string> Words(OpenPage open, string what) =>
        (await open.Page.InnerTextAsync(what)).ReplaceLineEndings(" ");

    private static Task<string> State(OpenPage open) => open.Page.InnerTextAsync("[data-live=state]");

    private static Task<string[]> PlacesOfParts(OpenPage open) =>
        open.Page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('.sheet g.part')].map(part => { const box = part.getBBox(); return `${part.id} ${box.x} ${box.y}`; })"
        );

    private static Task<string[]> Lit(OpenPage open) =>
        open.Page.EvaluateAsync<string[]>(
            "[...new Set([...document.querySelectorAll('.sheet .fresh')].map(one => one.dataset.wire ?? one.dataset.part))]"
        );
}
