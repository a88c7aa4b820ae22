namespace WireText.Page.Tests;

/// <summary>Everything on a page is reached by keys alone, and what changes is said.</summary>
[Collection(BrowserTests.Name)]
public class KeyboardTests(Browser browser)
{
    private const int MostTabs = 60;

    [SkippableTheory]
    [MemberData(nameof(ExamplePages.Rows), MemberType = typeof(ExamplePages))]
    public async Task EveryPosition_IsReachedByKeys(string name)
    {
        var circuit = ExamplePages.Compile(name).Circuit!;
        var controls = circuit.Controls.Where(control => !control.IsPlug && control.Positions.Length > 1).ToList();
        await using var open = await browser.Open(ExamplePages.Page(name));
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var visited = new HashSet<string>(StringComparer.Ordinal);
        for (var tab = 0; tab < MostTabs && visited.Count < controls.Count + circuit.Dials.Length; tab++)
        {
            await open.Page.Keyboard.PressAsync("Tab");
            var focus = await open.Page.EvaluateAsync<string>(
                "(() => { const it = document.activeElement; return it.type === 'radio' || it.type === 'range' ? `${it.type} ${it.name || it.getAttribute('aria-label')}` : ''; })()"
            );
            if (focus.Length == 0 || !visited.Add(focus))
            {
                continue;
            }

            if (focus.StartsWith("radio ", StringComparison.Ordinal))
            {
                foreach (
                    var _ in controls[
                        visited.Count(one => one.StartsWith("radio ", StringComparison.Ordinal)) - 1
                    ].Positions
                )
                {
                    reached.UnionWith((await open.Heading).Split(", "));
                    await open.Page.Keyboard.PressAsync("ArrowRight");
                }
            }
            else
            {
                await open.Page.Keyboard.PressAsync("Home");
                Assert.Equal(
                    "0",
                    await open.Page.EvaluateAsync<string>(
                        "document.activeElement.ariaValueText ?? document.activeElement.getAttribute('aria-valuetext')"
                    )
                );
                await open.Page.Keyboard.PressAsync("End");
                Assert.Equal(
                    "10",
                    await open.Page.EvaluateAsync<string>("document.activeElement.getAttribute('aria-valuetext')")
                );
            }
        }

        var wanted = controls.SelectMany(control =>
            control.Positions.Select(position => $"{control.Name} {position.Name}")
        );
        Assert.Empty(wanted.Except(reached));
        Assert.Equal(circuit.Dials.Length, visited.Count(one => one.StartsWith("range ", StringComparison.Ordinal)));
        open.AssertQuiet();
    }

    /// <summary>A reader of the screen hears what moved and what it does.</summary>
    [SkippableFact]
    public async Task LiveRegion_SaysWhatChanged()
    {
        await using var open = await browser.Open(ExamplePages.Page("2-two-pickups-mute.wiring"));
        var status = open.Page.GetByRole(Microsoft.Playwright.AriaRole.Status);

        Assert.Equal("", await status.InnerTextAsync());
        await open.Choose("sel", "both");
        Assert.StartsWith(
            "sel both: neck parallel bridge; level 0.0 dB; hum cancelled",
            await status.TextContentAsync(),
            StringComparison.Ordinal
        );
        await open.Choose("mute", "down");
        Assert.Equal("mute down: silence: tip and sleeve are joined; meter 0 Ω", await status.TextContentAsync());
    }

    /// <summary>Where a focus is, is seen: an outline that the style sheet gives.</summary>
    [SkippableFact]
    public async Task Focus_OfAPosition_IsSeen()
    {
        await using var open = await browser.Open(ExamplePages.Page("2-two-pickups-mute.wiring"));
        await open.Page.Locator("input[type=radio]").First.FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");

        Assert.Equal(
            "solid 3px",
            await open.Page.EvaluateAsync<string>(
                "(() => { const it = getComputedStyle(document.activeElement.nextElementSibling); return `${it.outlineStyle} ${it.outlineWidth}`; })()"
            )
        );
    }

    /// <summary>A part of the drawing is a shortcut for who has a mouse, also where a wire lies over it.</summary>
    [SkippableFact]
    public async Task ASwitchOnTheDrawing_MovesWhenItIsClicked()
    {
        await using var open = await browser.Open(ExamplePages.Page("2-two-pickups-mute.wiring"));
        await open.Page.Locator("#part-sel").ClickAsync();

        Assert.Equal("sel both, mute up", await open.Heading);
    }
}
