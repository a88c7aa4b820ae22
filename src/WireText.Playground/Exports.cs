using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using WireText.Checks;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Editing;
using WireText.Output;
using WireText.Syntax;
using WireText.Text;

namespace WireText.Playground;

/// <summary>
/// What the page asks of the core: texts go in, JSON and markup come out. The page runs two of these side by side: one is prompt, and
/// shows and completes at each key stroke; the other is thorough, and tells what takes longer.
/// </summary>
[SupportedOSPlatform("browser")]
internal static partial class Exports
{
    private const string File = "guitar.wiring";

    private static readonly LiveWiring Live = new(NoSources.Instance, CheckSettings.Standard, LayoutEffort.Quick, File);

    /// <summary>The picture in one theme, what is found, the edits that mend it, and what each word is.</summary>
    /// <param name="theme">Its name.</param>
    [JSExport]
    public static string Show(string text, string theme)
    {
        Live.PromptTheme = theme == Theme.Dark.Name ? Theme.Dark : Theme.Light;
        var picture = Live.Show(SourceOf(text), CancellationToken.None);
        var tokens = EditingJson.Tokens(Live.Latest!);
        return $"{{\"picture\":{picture},\"mends\":{EditingJson.Mends(Live)},\"tokens\":{tokens}}}";
    }

    /// <summary>The picture that was shown last, in both themes.</summary>
    /// <param name="bars">Two lugs for each contact.</param>
    [JSExport]
    public static string Draw(int[] bars) =>
        Live.DrawInBoth([.. bars.Chunk(2).Select(bar => new ContactBar(bar[0], bar[1]))]);

    /// <summary>The words that may follow.</summary>
    [JSExport]
    public static string Complete(string text, int offset) => EditingJson.Completions(CompiledOf(text), offset);

    /// <summary>What a word means; empty where there is nothing to say.</summary>
    [JSExport]
    public static string Explain(string text, int offset) => Hovers.At(CompiledOf(text), offset)?.Markdown ?? "";

    /// <summary>The text in even columns.</summary>
    [JSExport]
    public static string Format(string text) => Formatter.Format(CompiledOf(text).Tree);

    /// <summary>The picture that is shown, as a file; empty where nothing can be drawn.</summary>
    [JSExport]
    public static string Svg(string text)
    {
        var compiled = CompiledOf(text);
        return
            compiled.Circuit is { Parts.IsEmpty: false } circuit
            && compiled.PlanFor(LayoutEffort.Quick) is { } plan
            && new DrawOptions(LayoutEffort.Quick, Theme.Light, File) is var options
            ? SvgWriter.Write(plan.Paint(circuit, compiled.PromptFindings, options))
            : "";
    }

    /// <summary>Everything that is found, with the edits that were searched for, and what each state does.</summary>
    [JSExport]
    public static string Tell(string text)
    {
        var picture = Live.Show(SourceOf(text), CancellationToken.None);
        var figures = Live.AwaitsFigures ? Live.TellFigures(CancellationToken.None) : "null";
        return $"{{\"picture\":{picture},\"mends\":{EditingJson.Mends(Live)},\"figures\":{figures}}}";
    }

    /// <summary>The page for a customer; empty where there is none to be had: with errors, without a jack, with too many states.</summary>
    [JSExport]
    public static string Page(string text)
    {
        var compiled = CompiledOf(text);
        return !compiled.HasErrors && compiled.Circuit is { Parts.IsEmpty: false } && compiled.TellStates() is { } table
            ? compiled.WritePage(table, LayoutEffort.Quick, File) ?? ""
            : "";
    }

    private static Compilation CompiledOf(string text) =>
        Live.Latest is not { } latest ? Compilation.Of(SourceOf(text), NoSources.Instance)
        : latest.Source.Content == text ? latest
        : latest.WithPlacesHeld(SourceOf(text));

    private static SourceText SourceOf(string text) => new(File, text);
}
