using System.Globalization;
using Microsoft.Playwright;

namespace WireText.Page.Tests;

/// <summary>A playground that lies open in the browser.</summary>
internal sealed class OpenPlayground : IAsyncDisposable
{
    /// <summary>The core starts, on a machine that does much else.</summary>
    private const int Longest = 60_000;

    private readonly OpenPage open;

    private OpenPlayground(OpenPage open) => this.open = open;

    public IPage Page => open.Page;

    public ILocator Text => Page.Locator(".cm-content");

    public ILocator Findings => Page.Locator("[data-live=findings] > ol > li");

    public ILocator Guide => Page.Locator("#guide");

    /// <param name="link">The end of the address.</param>
    public static async Task<OpenPlayground> At(Browser browser, StaticSite site, string link = "", int width = 1920)
    {
        var page = await browser.OpenAddress(site.Address + link, width);
        var playground = new OpenPlayground(page);
        await playground.WaitForNewer("shown", -1);
        return playground;
    }

    /// <summary>Puts a text in the place of what is there, by a paste, and waits until it is shown.</summary>
    public async Task Write(string text)
    {
        var before = await Shown();
        await Text.FocusAsync();
        await Page.Keyboard.PressAsync("Control+A");
        await Text.EvaluateAsync(
            """
            (content, text) => {
              const data = new DataTransfer();
              data.setData("text/plain", text);
              content.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
            }
            """,
            text
        );
        await WaitForNewer("shown", before);
    }

    /// <summary>Chooses an example by its title and waits for its picture and its figures.</summary>
    public async Task Choose(string title)
    {
        var before = await Number("explored");
        await Page.SelectOptionAsync("#example", new SelectOptionValue { Label = title });
        await WaitForNewer("explored", before);
    }

    /// <summary>When the page showed a picture last, in milliseconds since it was opened; -1 before.</summary>
    public Task<double> Shown() => Number("shown");

    /// <summary>Waits until there is a newer picture than that one. The policy of the page forbids what a driver waits with.</summary>
    public async Task WaitForNewer(string what, double before)
    {
        var isNewer = await Page.EvaluateAsync<bool>(
            """
            async ([what, before, longest]) => {
              const end = performance.now() + longest;
              const isNewer = () => Number(document.body.dataset[what] ?? -1) > before;
              while (!isNewer() && performance.now() < end) {
                await new Promise((resolve) => setTimeout(resolve, 5));
              }
              return isNewer();
            }
            """,
            new object[] { what, before, Longest }
        );
        Assert.True(isNewer, $"the page has not {what} anything new: {await Page.InnerTextAsync("[data-live=state]")}");
    }

    /// <summary>What stands in the editor.</summary>
    public async Task<string> Written() => string.Join('\n', await Page.Locator(".cm-line").AllTextContentsAsync());

    /// <summary>The file that a button of the menu saves.</summary>
    public async Task<(string Name, byte[] Content)> Save(string kind)
    {
        await Page.ClickAsync(".save summary");
        var saved = await Page.RunAndWaitForDownloadAsync(
            () => Page.ClickAsync($"[data-save={kind}]"),
            new() { Timeout = Longest }
        );
        return (saved.SuggestedFilename, await File.ReadAllBytesAsync(await saved.PathAsync()));
    }

    public void AssertQuiet() => open.AssertQuiet();

    public ValueTask DisposeAsync() => open.DisposeAsync();

    public async Task<double> Number(string name) =>
        double.Parse(
            await Page.EvaluateAsync<string?>("name => document.body.dataset[name] ?? null", name) ?? "-1",
            CultureInfo.InvariantCulture
        );
}
