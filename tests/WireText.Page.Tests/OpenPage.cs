using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace WireText.Page.Tests;

/// <summary>A page that lies open in the browser, and what it did that a page must not do.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    public const int Desktop = 1440;
    public const int Phone = 390;

    private readonly IBrowserContext context;
    private readonly string? file;
    private readonly List<string> faults = [];

    private OpenPage(IBrowserContext context, IPage page, string? file)
    {
        this.context = context;
        this.file = file;
        Page = page;
    }

    public IPage Page { get; }

    /// <summary>The words above the table of the position.</summary>
    public Task<string> Heading => Page.InnerTextAsync("[data-place=told] h2");

    public static async Task<OpenPage> Of(IBrowser browser, string html, int width)
    {
        var written = Path.Combine(Path.GetTempPath(), $"wiretext-{Path.GetRandomFileName()}.html");
        await File.WriteAllTextAsync(written, html);
        var address = new Uri(written).AbsoluteUri;
        return await At(browser, address, asked => asked == address, width, written);
    }

    /// <summary>Opens an address; what lies below it may be asked for.</summary>
    public static Task<OpenPage> At(IBrowser browser, string address, int width) =>
        At(
            browser,
            address,
            asked => asked.StartsWith(address.Split('#')[0], StringComparison.Ordinal),
            width,
            written: null
        );

    private static async Task<OpenPage> At(
        IBrowser browser,
        string address,
        Predicate<string> mayAsk,
        int width,
        string? written
    )
    {
        var window = await browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = 900 },
                ReducedMotion = ReducedMotion.Reduce,
            }
        );
        window.SetDefaultTimeout(10_000);
        var page = await window.NewPageAsync();
        var open = new OpenPage(window, page, written);
        await page.RouteAsync(
            "**/*",
            async route =>
            {
                if (mayAsk(route.Request.Url))
                {
                    await route.ContinueAsync();
                    return;
                }

                open.faults.Add($"asked for {route.Request.Url}");
                await route.AbortAsync();
            }
        );
        page.Dialog += (_, dialog) =>
        {
            open.faults.Add($"dialog: {dialog.Message}");
            _ = dialog.DismissAsync();
        };
        page.PageError += (_, error) => open.faults.Add($"error: {error}");
        page.Console += (_, message) => open.faults.Add($"console: {message.Text}");
        await page.GotoAsync(address);
        return open;
    }

    /// <summary>The page asked for nothing, said nothing to the console and opened no dialog.</summary>
    public void AssertQuiet() => Assert.Equal("", string.Join('\n', faults));

    /// <summary>What stands beside a label in the table of the position.</summary>
    public Task<string> Now(string label) => CellOf("now", label);

    /// <summary>The same before the change.</summary>
    public Task<string> Before(string label) => CellOf("was", label);

    /// <summary>Moves a control as a hand does.</summary>
    public Task Choose(string control, string position) =>
        Page.GetByRole(AriaRole.Radiogroup, new() { NameRegex = new Regex($"^{Regex.Escape(control)}") })
            .GetByRole(AriaRole.Radio, new() { Name = position, Exact = true })
            .CheckAsync(new() { Force = true });

    /// <summary>Turns a knob to the place of one of its stops.</summary>
    public Task Turn(int knob, int stop) =>
        Page.Locator("input[type=range]").Nth(knob).FillAsync(stop.ToString(CultureInfo.InvariantCulture));

    /// <summary>Moves everything at once: the positions of the controls, and the stops of the knobs that are turned.</summary>
    public Task Move(IEnumerable<int> positions, IEnumerable<(int Knob, int Stop)> turned) =>
        Page.EvaluateAsync(
            """
            ([positions, turned]) => {
              const place = document.querySelector("[data-place=controls]");
              place.querySelector("button").click();
              const groups = [...place.querySelectorAll("fieldset")];
              positions.forEach((position, i) => groups[i].querySelectorAll("input")[position].click());
              const sliders = place.querySelectorAll("input[type=range]");
              for (const [knob, stop] of turned) {
                sliders[knob].value = stop;
                sliders[knob].dispatchEvent(new Event("input"));
              }
            }
            """,
            new object[] { positions.ToArray(), turned.Select(one => new[] { one.Knob, one.Stop }).ToArray() }
        );

    /// <summary>The wires that are lit, by their names, in order.</summary>
    public async Task<IReadOnlyList<string>> LitWires() =>
        await Page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('[data-place=drawing] g.wire[id]:not(.dim)')].map(wire => wire.dataset.wire).sort()"
        );

    /// <summary>The levels of a curve in dB, read back from its path on the screen and the scale beside it.</summary>
    public async Task<double[]> Levels(string curve)
    {
        var heights = await Page.EvaluateAsync<double[]>(
            "name => (document.querySelector(`[data-place=response] .lines path.${name}`)?.getAttribute('d') ?? '').split(/[MLZ]/).filter(Boolean).map(pair => Number(pair.split(' ')[1]))",
            curve
        );
        var scale = await Page.EvaluateAsync<double[]>(
            """
            () => {
              const top = Number(document.querySelector(".lines").getAttribute("y"));
              const labels = [...document.querySelectorAll("[data-place=response] text.level")];
              const at = (text) => [Number(text.textContent.replace("−", "-")), Number(text.getAttribute("y")) - 4 - top];
              return [...at(labels[0]), ...at(labels.at(-1))];
            }
            """
        );
        return
        [
            .. heights.Select(height =>
                scale[0] + ((height - scale[1]) * (scale[2] - scale[0]) / (scale[3] - scale[1]))
            ),
        ];
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        if (file is not null)
        {
            File.Delete(file);
        }
    }

    private Task<string> CellOf(string when, string label) =>
        Page.EvaluateAsync<string>(
            "([when, label]) => [...document.querySelectorAll(`[data-place=told] td[data-${when}]`)].find(cell => cell.dataset[when] === label).firstChild.textContent",
            new[] { when, label }
        );
}
