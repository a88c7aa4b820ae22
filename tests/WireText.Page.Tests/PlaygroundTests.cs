using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using Microsoft.Playwright;
using WireText.Testing;
using WireText.Text;
using Xunit.Abstractions;

namespace WireText.Page.Tests;

/// <summary>The playground as it is published, in a browser: written in, mended, saved, sent and kept.</summary>
[Collection(BrowserTests.Name)]
public sealed class PlaygroundTests(Browser browser, SharedPlayground shared, ITestOutputHelper output)
    : IClassFixture<SharedPlayground>
{
    private const string Payload = "</script><script>window.ran=1</script><img src=x onerror=window.ran=1>";

    /// <summary>The most that the published site may come to, each file compressed with brotli.</summary>
    private const int MostBytes = 2_500_000;

    private const string Packed = ".br";

    private static readonly string Example = File.ReadAllText(
        Repository.PathOf("examples", "2-two-pickups-mute.wiring")
    );

    /// <summary>How long is written down and not judged: what else the machine does is in it.</summary>
    [SkippableFact]
    public async Task FirstVisit_OpensTheGuide_WithAnEmptyText()
    {
        using var site = StaticSite.Start();
        await using var open = await OpenPlayground.At(browser, site);
        output.WriteLine(Invariant($"cold cache to the first answer: {await open.Shown():0} ms"));
        var before = await open.Shown();
        await open.Write("pickup bridge single-coil\n");
        output.WriteLine(Invariant($"the first picture after that: {await open.Shown() - before:0} ms"));

        Assert.True(await open.Guide.IsVisibleAsync());
        Assert.Equal(
            "Write a pickup: done. 2 of 8: Write a pot",
            await open.Guide.Locator("[role=status]").TextContentAsync()
        );
        Assert.Equal(1, await open.Page.Locator(".sheet g.part[data-part=bridge]").CountAsync());
        Assert.Empty(site.Missing);
        open.AssertQuiet();
    }

    /// <summary>Each step as a reader does it: typed by hand what it shows, broken by hand, mended by the button under the finding.</summary>
    [SkippableFact]
    public async Task Guide_TypedByHand_ComesToItsEnd()
    {
        using var site = StaticSite.Start();
        await using var open = await OpenPlayground.At(browser, site);
        await open.Text.ClickAsync();
        for (var step = 1; step <= 5; step++)
        {
            await AssertStep(open, step);
            foreach (var line in (await open.Guide.Locator("pre").InnerTextAsync()).Split('\n'))
            {
                await open.Page.Keyboard.TypeAsync(line);
                await open.Page.Keyboard.PressAsync("Escape");
                await open.Page.Keyboard.PressAsync("Enter");
            }
        }

        await AssertStep(open, 6);
        Assert.Equal(0, await open.Findings.CountAsync());
        Assert.Equal(3, await open.Page.Locator(".sheet g.part[id]").CountAsync());
        var broken = (await open.Written()).Replace("white", "wihte", StringComparison.Ordinal);
        await open.Write(broken);

        await AssertStep(open, 7);
        Assert.Contains("wihte", await open.Findings.First.InnerTextAsync(), StringComparison.Ordinal);
        await open.Findings.First.Locator(".mend").ClickAsync();

        await AssertStep(open, 8);
        Assert.DoesNotContain("wihte", await open.Written(), StringComparison.Ordinal);
        await open.Page.Keyboard.PressAsync("Control+End");
        await open.Text.FocusAsync();
        await open.Page.Keyboard.PressAsync("Control+End");
        await open.Page.Keyboard.TypeAsync(await open.Guide.Locator("pre").InnerTextAsync());

        await Assertions.Expect(open.Guide.Locator("h2")).ToHaveTextAsync("That is a whole circuit");
        Assert.Equal(0, await open.Findings.CountAsync());
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task Guide_WrittenForTheReader_ComesToItsEnd()
    {
        var open = await shared.With("# mine\n");
        await open.Page.ClickAsync("#guide-open");
        for (var step = 1; step <= 8; step++)
        {
            await AssertStep(open, step);
            await open.Guide.Locator("button").First.ClickAsync();
        }

        await Assertions.Expect(open.Guide.Locator("h2")).ToHaveTextAsync("That is a whole circuit");
        var compiled = Compilation.Of(new SourceText("guitar.wiring", await open.Written() + "\n"), NoSources.Instance);
        Assert.Empty(compiled.Findings);
        Assert.Single(compiled.Circuit!.Expectations);
        await open.Guide.GetByText("Leave the guide").ClickAsync();
        Assert.False(await open.Guide.IsVisibleAsync());
        open.AssertQuiet();
    }

    /// <summary>What the browser works out is what the program works out.</summary>
    [SkippableTheory]
    [InlineData("2-two-pickups-mute.wiring")]
    [InlineData("7-active-buffer.wiring")]
    [InlineData("9-four-pole-lever.wiring")]
    public async Task Example_IsShownAsTheProgramTellsIt(string name)
    {
        var open = await shared.With("");
        var compiled = ExamplePages.Compile(name);
        await open.Choose(compiled.Circuit!.Title!);
        await using var sent = await browser.Open(ExamplePages.Page(name));

        Assert.Equal(
            await sent.Page.InnerTextAsync(".wide >> nth=0"),
            await open.Page.InnerTextAsync(".wide >> nth=0")
        );
        Assert.Equal(
            await sent.Page.InnerTextAsync("[data-place=told]"),
            await open.Page.InnerTextAsync("[data-place=told]")
        );
        Assert.Equal(await WiresOf(sent.Page), await WiresOf(open.Page));
        Assert.Equal(compiled.Findings.Length, await open.Findings.CountAsync());
        open.AssertQuiet();

        static Task<string> WiresOf(IPage page) =>
            page.EvaluateAsync<string>(
                "[...document.querySelectorAll('.sheet g.wire[id]')].map(wire => wire.dataset.wire).sort().join(' ')"
            );
    }

    [SkippableFact]
    public async Task AnEdit_ChangesThePicture_WithoutWaitingForFigures()
    {
        var open = await shared.With("");
        foreach (var name in new[] { "1-one-pickup.wiring", "2-two-pickups-mute.wiring", "9-four-pole-lever.wiring" })
        {
            var text = await File.ReadAllTextAsync(Repository.PathOf("examples", name));
            await open.Write(text);
            var times = new List<double>();
            foreach (var colour in new[] { "green", "violet", "orange", "brown", "grey", "pink", "white" })
            {
                var changed = text.Replace(" red\n", $" {colour}\n", StringComparison.Ordinal);
                var edited = await open.Page.EvaluateAsync<double>("performance.now()");
                await open.Write(changed);
                times.Add(await open.Shown() - edited);
            }

            var ordered = times.Skip(2).Order().ToList();
            output.WriteLine(
                Invariant(
                    $"{name}: an edit to its picture, median of {ordered.Count}: {ordered[ordered.Count / 2]:0} ms"
                )
            );
        }

        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task Words_AreOffered_AndTakenByKeys()
    {
        var open = await shared.With("pickup bridge single-coil\njack out mono\n");
        await open.Text.FocusAsync();
        await open.Page.Keyboard.PressAsync("Control+End");

        await open.Page.Keyboard.TypeAsync("wire bridge.h");
        await Assertions.Expect(open.Page.Locator(".cm-tooltip-autocomplete li").First).ToContainTextAsync("hot");
        await Task.Delay(100);
        await open.Page.Keyboard.PressAsync("Enter");
        await open.Page.Keyboard.TypeAsync(" to out.t");
        await Assertions.Expect(open.Page.Locator(".cm-tooltip-autocomplete li").First).ToContainTextAsync("tip");
        await Task.Delay(100);
        await open.Page.Keyboard.PressAsync("Tab");

        Assert.EndsWith("wire bridge.hot to out.tip", await open.Written(), StringComparison.Ordinal);
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task AWord_IsExplained_WhereThePointerRests()
    {
        var open = await shared.With(Example);

        await open.Page.Locator(".word-model", new() { HasText = "lever-3way" }).HoverAsync();

        await Assertions.Expect(open.Page.Locator(".cm-said")).ToContainTextAsync("define switch lever-3way");
        open.AssertQuiet();
    }

    /// <summary>In the text, where the wave is, and by keys alone.</summary>
    [SkippableFact]
    public async Task AFinding_IsMendedInTheText_ByPointerAndByKeys()
    {
        var open = await shared.With("");
        var broken = Example.Replace("vol.2       to out.tip", "vol.2       to out.tipp", StringComparison.Ordinal);
        await open.Write(broken);
        await open.Page.Locator(".cm-lintRange-error").First.HoverAsync();
        var before = await open.Shown();
        await open.Page.Locator(".cm-tooltip-lint .cm-diagnosticAction").First.ClickAsync();
        await open.WaitForNewer("shown", before);
        Assert.Equal(0, await open.Page.Locator(".cm-lintRange-error").CountAsync());
        Assert.DoesNotContain("out.tipp", await open.Written(), StringComparison.Ordinal);

        await open.Write(broken);
        await open.Text.FocusAsync();
        await open.Page.Keyboard.PressAsync("Control+Shift+M");
        await open.Page.WaitForSelectorAsync(".cm-panel-lint");
        before = await open.Shown();
        await open.Page.Keyboard.PressAsync("w");
        await open.WaitForNewer("shown", before);
        Assert.Equal(0, await open.Page.Locator(".cm-lintRange-error").CountAsync());
        open.AssertQuiet();
    }

    /// <summary>The edit that mends a refuted claim is searched for beside, and comes when it is found.</summary>
    [SkippableFact]
    public async Task ARefutedClaim_GetsItsMend()
    {
        var open = await shared.With("");
        await open.Write(
            Example.Replace(
                "wire    vol.2       to out.tip",
                "wire    vol.1       to out.tip",
                StringComparison.Ordinal
            )
        );
        var mend = open.Page.Locator(".mend").First;
        await mend.WaitForAsync(new() { Timeout = 60_000 });
        var before = await open.Shown();
        await mend.ClickAsync();
        await open.WaitForNewer("shown", before);

        Assert.Equal(0, await open.Page.Locator("[data-live=findings] > ol > .error").CountAsync());
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task Saved_AreThePictureTheTextAndThePageForTheCustomer()
    {
        var open = await shared.With("");
        await open.Choose("Two pickups, 3-way lever, mute button");

        var svg = await open.Save("svg");
        var png = await open.Save("png");
        var text = await open.Save("text");
        var page = await open.Save("page");

        const string Name = "two-pickups-3-way-lever-mute-button";
        Assert.Equal(
            [$"{Name}.svg", $"{Name}.png", $"{Name}.wiring", $"{Name}.html"],
            new[] { svg.Name, png.Name, text.Name, page.Name }
        );
        var drawn = XDocument.Parse(Encoding.UTF8.GetString(svg.Content));
        Assert.Equal("svg", drawn.Root!.Name.LocalName);
        Assert.Equal(Example, Encoding.UTF8.GetString(text.Content));
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], png.Content[..4]);
        Assert.Equal(2480, (png.Content[18] << 8) | png.Content[19]);
        Assert.True(png.Content.Length > 50_000);
        await using var sent = await browser.Open(Encoding.UTF8.GetString(page.Content));
        Assert.Equal("Two pickups, 3-way lever, mute button", await sent.Page.InnerTextAsync("h1"));
        Assert.Equal("sel bridge, mute up", await sent.Heading);
        sent.AssertQuiet();
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task APageWithErrors_IsNotSaved()
    {
        var open = await shared.With("pickup neck single-coil\n");
        await open.Page.ClickAsync(".save summary");
        await open.Page.ClickAsync("[data-save=page]");

        await Assertions
            .Expect(open.Page.Locator("#said"))
            .ToContainTextAsync("mend what is found first", new() { Timeout = 60_000 });
    }

    [SkippableFact]
    public async Task ALink_CarriesTheText_AndRunsNothing()
    {
        using var site = StaticSite.Start();
        var hostile =
            $"circuit \"{Payload}\"\nremark \"javascript:alert(1) </style><svg onload=window.ran=1>\"\n{Payload}\npickup neck single-coil\n";
        string link;
        await using (var open = await OpenPlayground.At(browser, site))
        {
            await open.Write(hostile);
            await open.Page.ClickAsync("#link");
            await Assertions.Expect(open.Page.Locator("#said")).ToContainTextAsync("carries the text itself");
            link = new Uri(open.Page.Url).Fragment;
        }

        await using var other = await OpenPlayground.At(browser, site, link);

        Assert.Equal(hostile, await other.Written());
        Assert.False(await other.Guide.IsVisibleAsync());
        Assert.True(await other.Page.EvaluateAsync<bool>("window.ran === undefined"));
        Assert.Equal(0, await other.Page.Locator("img, iframe, object").CountAsync());
        other.AssertQuiet();
    }

    [SkippableFact]
    public async Task ATextTooLongForALink_IsSaidSo_AndALinkThatIsNone_IsPassedOver()
    {
        using var site = StaticSite.Start();
        await using var open = await OpenPlayground.At(browser, site, "#text=%%%");
        Assert.True(await open.Guide.IsVisibleAsync());

        await open.Write(string.Concat(Enumerable.Repeat("# " + new string('x', 200) + "\n", 100)));
        await open.Page.ClickAsync("#link");

        await Assertions.Expect(open.Page.Locator("#said")).ToContainTextAsync("too long for a link");
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task AfterTheFirstVisit_NoNetworkIsNeeded_AndTheTextIsStillThere()
    {
        string address;
        var site = StaticSite.Start();
        try
        {
            await using var open = await OpenPlayground.At(browser, site);
            await open.Write("pickup bridge single-coil\n");
            address = site.Address;
            await open.Page.EvaluateAsync(
                "navigator.serviceWorker.ready.then(() => new Promise(resolve => { const look = () => navigator.serviceWorker.controller ? resolve() : setTimeout(look, 50); look(); }))"
            );
            site.Dispose();
            await open.Page.ReloadAsync();
            await open.Page.WaitForSelectorAsync(".sheet g.part[data-part=bridge]", new() { Timeout = 60_000 });

            Assert.Equal("pickup bridge single-coil\n", await open.Written());
            await open.Choose("Two pickups, 3-way lever, mute button");
            Assert.Equal("sel bridge, mute up", await open.Page.InnerTextAsync("[data-place=told] h2"));
        }
        finally
        {
            site.Dispose();
        }

        Assert.NotEmpty(address);
    }

    /// <summary>A guard that never bites is none: what is put into the page by hand is refused by its own policy.</summary>
    [SkippableFact]
    public async Task APolicy_RefusesWhatIsNotThePagesOwn()
    {
        using var site = StaticSite.Start();
        await using var open = await OpenPlayground.At(browser, site);
        var refused = await open.Page.EvaluateAsync<string[]>(
            """
            async () => {
              const refused = [];
              addEventListener("securitypolicyviolation", (event) => refused.push(event.effectiveDirective));
              document.body.append(Object.assign(document.createElement("script"), { textContent: "window.ran = 1" }));
              const style = document.createElement("p");
              style.setAttribute("style", "color: red");
              document.body.append(style, Object.assign(new Image(), { src: "https://wiring.example/x.png" }));
              await fetch("https://wiring.example/x").catch(() => {});
              await new Promise((resolve) => setTimeout(resolve, 300));
              try { Function("window.ran = 1")(); } catch { refused.push("eval"); }
              return refused;
            }
            """
        );

        Assert.True(await open.Page.EvaluateAsync<bool>("window.ran === undefined"));
        foreach (var directive in new[] { "script-src-elem", "style-src-attr", "img-src", "connect-src", "eval" })
        {
            Assert.Contains(directive, refused);
        }
    }

    [SkippableFact]
    public async Task EveryWidth_LightAndDark_FitsAndHasNoViolation()
    {
        using var site = StaticSite.Start();
        await using var open = await OpenPlayground.At(browser, site);
        await Axe.PutInto(open.Page);
        var told = new List<string>();
        foreach (
            var text in new[]
            {
                "",
                Example.Replace("vol.2       to out.tip", "vol.2       to out.tipp", StringComparison.Ordinal)
                    + "pot spare 250k audio\n",
            }
        )
        {
            if (text.Length > 0)
            {
                await open.Write(text);
            }

            foreach (var width in new[] { 1920, 1024, 390 })
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
        }

        output.WriteLine(string.Join('\n', told));
        Assert.Empty(told);
        open.AssertQuiet();
    }

    [SkippableFact]
    public async Task Colours_OfThePictureFollowTheSwitch_BeforeAndAfterTheFigures()
    {
        var open = await shared.With(Example);
        await open.WaitForNewer("explored", await open.Shown());
        const string Paper =
            "getComputedStyle(document.body).backgroundColor + ' ' + getComputedStyle(document.querySelector('.paper')).fill";
        Assert.Equal("rgb(252, 251, 248) rgb(252, 251, 248)", await open.Page.EvaluateAsync<string>(Paper));

        var before = await open.Shown();
        await open.Page.GetByLabel("Colours of the page").SelectOptionAsync("dark");
        await open.WaitForNewer("shown", before);

        Assert.Equal("rgb(21, 24, 28) rgb(21, 24, 28)", await open.Page.EvaluateAsync<string>(Paper));
        await open.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Equal(
            "rgb(255, 255, 255)",
            (await open.Page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"))
        );
        Assert.False(await open.Page.IsVisibleAsync("#editor"));
        Assert.False(await open.Page.IsVisibleAsync(".bar"));
        Assert.True(await open.Page.IsVisibleAsync(".sheet"));
        Assert.True(await open.Page.IsVisibleAsync("#positions"));
        await open.Page.EmulateMediaAsync(new() { Media = Media.Screen });
        await open.Page.GetByLabel("Colours of the page").SelectOptionAsync("");
    }

    /// <summary>Everything is reached by keys: out of the text by Escape and Tab, the menu by Enter.</summary>
    [SkippableFact]
    public async Task Everything_IsReachedByKeys()
    {
        var open = await shared.With(Example);
        await open.WaitForNewer("explored", await open.Shown());
        await open.Page.FocusAsync("#example");
        var reached = new List<string> { "example" };
        for (var tab = 0; tab < 60; tab++)
        {
            await open.Page.Keyboard.PressAsync("Tab");
            var at = await open.Page.EvaluateAsync<string>(
                "(() => { const it = document.activeElement; return it.id || it.textContent.slice(0, 20) || it.getAttribute('aria-label') || it.type || ''; })()"
            );
            reached.Add(at);
            if (at == "editor")
            {
                await open.Page.Keyboard.PressAsync("Escape");
            }
        }

        foreach (
            var one in new[]
            {
                "example",
                "guide-open",
                "format",
                "link",
                "Save",
                "print",
                "editor",
                "radio",
                "vol, 250k audio",
                "Licences",
            }
        )
        {
            Assert.Contains(
                reached,
                at => at.Contains(one, StringComparison.Ordinal) || at.StartsWith(one, StringComparison.Ordinal)
            );
        }
    }

    /// <summary>Beside each file stands the same, compressed with brotli, for hosts that hand such files out.</summary>
    [SkippableFact]
    public void PublishedSize_StaysWithinItsBudget()
    {
        var files = StaticSite.Files.Where(file => !file.EndsWith(Packed, StringComparison.Ordinal)).ToList();
        Every.Item(files, file => Assert.Equal(File.ReadAllBytes(file), Unpacked(file + Packed)));
        var bytes = files.Sum(file => new FileInfo(file + Packed).Length);
        output.WriteLine(Invariant($"published, compressed: {bytes} of {MostBytes} bytes"));

        Assert.InRange(bytes, 500_000, MostBytes);
    }

    private static async Task AssertStep(OpenPlayground open, int step) =>
        await Assertions
            .Expect(open.Guide.Locator("h2"))
            .ToHaveTextAsync(
                new System.Text.RegularExpressions.Regex(
                    Invariant($"^{step} of 8: "),
                    System.Text.RegularExpressions.RegexOptions.None,
                    TimeSpan.FromSeconds(1)
                ),
                new() { Timeout = 30_000 }
            );

    private static byte[] Unpacked(string file)
    {
        using var packed = new BrotliStream(File.OpenRead(file), CompressionMode.Decompress);
        using var unpacked = new MemoryStream();
        packed.CopyTo(unpacked);
        return unpacked.ToArray();
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
