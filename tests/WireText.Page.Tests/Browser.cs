using Microsoft.Playwright;
using WireText.Testing;

namespace WireText.Page.Tests;

/// <summary>One browser for all tests: the Chromium that the machine has; nothing is fetched.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async Task InitializeAsync()
    {
        if (Programs.Find(Names) is { } path)
        {
            playwright = await Playwright.CreateAsync();
            browser = await playwright.Chromium.LaunchAsync(
                // A root user, as on a build server, has no sandbox to run in.
                new() { ExecutablePath = path, Args = ["--no-sandbox"] }
            );
        }
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    /// <summary>Opens a page of HTML from a file, in a window of its own. The test is skipped where no browser is installed.</summary>
    internal Task<OpenPage> Open(string html, int width = OpenPage.Desktop) => OpenPage.Of(Found(), html, width);

    /// <summary>The same of a page that is served.</summary>
    internal Task<OpenPage> OpenAddress(string address, int width = OpenPage.Desktop) =>
        OpenPage.At(Found(), address, width);

    private IBrowser Found()
    {
        Skip.If(browser is null, "chromium is not installed: install it to have pages looked at in it");
        return browser!;
    }
}

/// <summary>The tests that share one browser.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<Browser>
{
    public const string Name = "in a browser";
}
