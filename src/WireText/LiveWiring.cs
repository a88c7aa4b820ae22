using System.Collections.Immutable;
using WireText.Checks;
using WireText.Comparing;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Pages;
using WireText.Text;

namespace WireText;

/// <summary>
/// A wiring beside which somebody writes its text: each save becomes what a page shows of it. Parts stay where they were, and a
/// text that cannot be read leaves the picture of the one before.
/// </summary>
/// <remarks>For one thread.</remarks>
/// <param name="effort">How much is done for the first picture; those after it go on from there.</param>
/// <param name="fileName">For the title block; null for none.</param>
public sealed class LiveWiring(ISourceProvider sources, CheckSettings settings, LayoutEffort effort, string? fileName)
{
    private readonly DrawOptions options = new(effort, Theme.Light, fileName) { TellsHeard = false };
    private Compilation? latest;
    private Compilation? drawn;
    private ImmutableArray<Finding> findings = [];

    /// <summary>
    /// The theme that a picture is told in at once, where whoever looks on sees it at each key stroke; null for both. The edits that mend
    /// a refuted claim are then not waited for, nor are the figures: another of the same text tells them.
    /// </summary>
    public Theme? PromptTheme { get; set; }

    /// <summary>The text that was told last, drawn or not; null before the first.</summary>
    public Compilation? Latest => latest;

    /// <summary>What was found in it, as far as it was told.</summary>
    public ImmutableArray<Finding> Findings => findings;

    /// <summary>What is told of a text at once: its picture, or the one before, with what was found. One line of JSON.</summary>
    public string Show(SourceText text, CancellationToken cancellation)
    {
        var compiled = (latest?.WithPlacesHeld(text) ?? Compilation.Of(text, sources, settings: settings)).Until(
            cancellation
        );
        findings = FindingsOf(compiled);
        latest = compiled;
        return CanBeDrawn(compiled) ? LivePictureData.Write(Draw(compiled)) : Keep(text.Path, WhyKept(compiled));
    }

    /// <summary>The same where the text itself could not be had.</summary>
    /// <param name="file">What the text is called.</param>
    /// <param name="trouble">Why not.</param>
    public string Keep(string file, string trouble) =>
        LivePictureData.Write(
            new LivePicture(file, findings, trouble, drawn?.Circuit)
            {
                Drawing = drawn is null ? null : PicturesOf(drawn),
            }
        );

    /// <summary>True where the picture that was told last is a new one, whose figures are still to be told.</summary>
    public bool AwaitsFigures { get; private set; }

    /// <summary>What the states of the circuit do that was drawn last. One line of JSON.</summary>
    /// <exception cref="InvalidOperationException">Nothing was drawn yet.</exception>
    public string TellFigures(CancellationToken cancellation)
    {
        var compiled = (drawn ?? throw new InvalidOperationException("Nothing was drawn yet.")).Until(cancellation);
        var figures = FiguresOf(compiled);
        AwaitsFigures = false;
        return figures;
    }

    private string FiguresOf(Compilation compiled)
    {
        if (compiled.Study is null)
        {
            return LiveFigures.WriteNone("There is no output jack to listen at yet.");
        }

        if (compiled.TellStates() is not { } table)
        {
            return LiveFigures.WriteNone(
                $"All controls together have more than {PageStates.LimitOf(compiled.Circuit!)} positions: a page cannot hold what each does."
            );
        }

        var (light, dark) = InBoth(compiled, table.Bars);
        return LiveFigures.Write(
            new PageContents(table, light, dark, fileName) { StockTitle = compiled.BaseCircuit?.Title }
        );
    }

    /// <summary>The picture that was told last, in both themes and with contacts that can close. One line of JSON.</summary>
    /// <param name="bars">Those of the circuit that was drawn last.</param>
    /// <exception cref="InvalidOperationException">Nothing was drawn yet.</exception>
    public string DrawInBoth(ImmutableArray<ContactBar> bars)
    {
        var (light, dark) = InBoth(drawn ?? throw new InvalidOperationException("Nothing was drawn yet."), bars);
        return LiveFigures.WriteDrawing(light, dark);
    }

    private LivePicture Draw(Compilation compiled)
    {
        var shown = new LivePicture(compiled.Source.Path, findings, null, compiled.Circuit)
        {
            Drawing = PicturesOf(compiled),
            Change = drawn?.Circuit is { } before ? CircuitComparison.Of(before, compiled.Circuit!) : null,
        };
        drawn = compiled;
        AwaitsFigures = true;
        return shown;
    }

    /// <summary>Every line could be read, and there is something to draw.</summary>
    private static bool CanBeDrawn(Compilation compiled) =>
        compiled.Circuit is { Parts.IsEmpty: false }
        && compiled.DrawingFindings.IsEmpty
        && compiled.ReadingFindings.All(finding => finding.Severity != Severity.Error);

    private static string WhyKept(Compilation compiled) =>
        !compiled.DrawingFindings.IsEmpty ? "The circuit is too large to draw."
        : compiled.ReadingFindings.Any(finding => finding.Severity == Severity.Error)
            ? "There are lines that cannot be read."
        : "There is no part to draw yet.";

    private ImmutableArray<Finding> FindingsOf(Compilation compiled) =>
        (PromptTheme is null ? compiled.Findings : compiled.PromptFindings).AddRange(compiled.DrawingFindings);

    /// <summary>The picture on a light page and on a dark one: the same one twice where it is told in one theme alone.</summary>
    private (Picture Light, Picture Dark) PicturesOf(Compilation compiled) =>
        PromptTheme is { } theme && Paint(compiled, options with { Theme = theme }) is var one
            ? (one, one)
            : InBoth(compiled, []);

    private (Picture Light, Picture Dark) InBoth(Compilation compiled, ImmutableArray<ContactBar> bars)
    {
        var barred = options with { Bars = bars };
        return (Paint(compiled, barred), Paint(compiled, barred with { Theme = Theme.Dark }));
    }

    /// <summary>With what was found as far as it was told: nothing more is looked for.</summary>
    private Picture Paint(Compilation compiled, DrawOptions how) =>
        PromptTheme is null
            ? compiled.PictureFor(how)!
            : compiled.PlanFor(effort)!.Paint(compiled.Circuit!, FindingsOf(compiled), how);
}
