namespace WireText.Page.Tests;

/// <summary>What strangers write into a wiring stays words on the page, and runs nothing.</summary>
[Collection(BrowserTests.Name)]
public class HostilePageTests(Browser browser)
{
    private const string Payload = "</script><script>window.ran=1;alert(1)</script><img src=x onerror=window.ran=1>";

    private static readonly string Wiring = $"""
        circuit "{Payload} javascript:alert(1)"
        remark  "\u2028 '+alert(1)+' {Payload} </style></title><svg onload=alert(1)> <!-- ]]> &lt;"
        about   customer "{Payload}"
        pickup  neck    single-coil dcr=6k l=2.4H c=100p
        pickup  bridge  single-coil
        switch  sel     spdt
        pot     vol     250k audio "javascript:alert(1) {Payload}"
        jack    out     mono
        positions sel  <img/src/onerror> <script>x</script>
        wire neck.hot   to sel.A1 white
        wire bridge.hot to sel.A2 yellow
        wire sel.A0     to vol.3  red
        wire vol.2      to out.tip blue
        wire vol.1      to vol.case bare
        wire neck.ground to vol.case black
        wire bridge.ground to vol.case black
        wire vol.case to out.sleeve black

        """.Replace("\\u2028", "\u2028", StringComparison.Ordinal);

    [SkippableFact]
    public async Task HostileNamesAndRemarks_RunNothing()
    {
        await using var open = await browser.Open(ExamplePages.PageOf(Wiring));
        foreach (var input in await open.Page.Locator("[data-place=controls] input").AllAsync())
        {
            await input.PressAsync(await input.GetAttributeAsync("type") == "range" ? "ArrowLeft" : "Space");
        }

        Assert.True(await open.Page.EvaluateAsync<bool>("window.ran === undefined"));
        Assert.Equal(0, await open.Page.Locator("img, iframe, object, a").CountAsync());
        Assert.Equal(2, await open.Page.Locator("script").CountAsync());
        Assert.Equal("customer", await open.Page.InnerTextAsync("header dt"));
        Assert.Equal(Payload, await open.Page.InnerTextAsync("header dd"));
        Assert.Contains("<script>x</script>", await open.Heading, StringComparison.Ordinal);
        open.AssertQuiet();
    }

    /// <summary>A guard that never bites is none: what is put into a page by hand is refused by its own policy.</summary>
    [SkippableFact]
    public async Task AScriptThatIsNotThePagesOwn_IsRefused()
    {
        var page = ExamplePages
            .PageOf(Wiring)
            .Replace(
                "<main>",
                "<main><script>window.ran=1</script><img src=\"https://wiring.example/x.png\" onerror=\"window.ran=1\">",
                StringComparison.Ordinal
            );
        await using var open = await browser.Open(page);

        Assert.True(await open.Page.EvaluateAsync<bool>("window.ran === undefined"));
        Assert.Throws<Xunit.Sdk.EqualException>(open.AssertQuiet);
    }
}
