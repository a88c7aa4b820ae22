using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace WireText.Page.Tests;

/// <summary>The rules of axe-core, put into an open page once and asked again and again.</summary>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    public static Task PutInto(IPage page) => page.EvaluateAsync(Script);

    /// <summary>What breaks a rule, each with its first place; texts of the drawing are shapes to it and are left out.</summary>
    public static Task<string[]> ViolationsOf(IPage page) =>
        page.EvaluateAsync<string[]>(
            """
            async () => {
              const found = await axe.run({ exclude: [[".sheet > svg > g"]] }, { resultTypes: ["violations"] });
              return found.violations.map((one) => `${one.id}: ${one.help} ${one.nodes[0].html}`);
            }
            """
        );
}
