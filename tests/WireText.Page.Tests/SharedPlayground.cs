namespace WireText.Page.Tests;

/// <summary>One playground for the tests that may write in it one after the other: its start takes longer than what they do.</summary>
public sealed class SharedPlayground(Browser browser) : IAsyncLifetime
{
    private StaticSite? site;
    private OpenPlayground? playground;

    public Task InitializeAsync() => Task.CompletedTask;

    public async Task DisposeAsync()
    {
        if (playground is not null)
        {
            await playground.DisposeAsync();
        }

        site?.Dispose();
    }

    /// <summary>The playground with that text in it, as wide and as light as at the start.</summary>
    internal async Task<OpenPlayground> With(string text)
    {
        site ??= StaticSite.Start();
        playground ??= await OpenPlayground.At(browser, site);
        await playground.Page.SetViewportSizeAsync(1920, 900);
        await playground.Write(text);
        return playground;
    }
}
