using System.Collections.Immutable;
using WireText.Checks;
using WireText.Comparing;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
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
    private readonly DrawOptions light = new(effort, Theme.Light, fileName);
    private Compilation? latest;
    private Compilation? drawn;
    private ImmutableArray<Finding> findings = [];

    /// <summary>What is told of a text at once: its picture, or the one before, with what was found. One line of JSON.</summary>
    public string Show(SourceText text, CancellationToken cancellation)
    {
        var compiled = (latest?.WithPlacesHeld(text) ?? Compilation.Of(text, sources, settings: settings)).Until(
            cancellation
        );
        findings = compiled.Findings.AddRange(compiled.DrawingFindings);
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
                Drawing = drawn is null ? null : PicturesOf(drawn, light),
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

        var (ink, dark) = PicturesOf(compiled, light with { Bars = table.Bars });
        return LiveFigures.Write(
            new PageContents(table, ink, dark, fileName) { StockTitle = compiled.BaseCircuit?.Title }
        );
    }

    private LivePicture Draw(Compilation compiled)
    {
        var shown = new LivePicture(compiled.Source.Path, findings, null, compiled.Circuit)
        {
            Drawing = PicturesOf(compiled, light),
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

    private static (Picture Light, Picture Dark) PicturesOf(Compilation compiled, DrawOptions options) =>
        (compiled.PictureFor(options)!, compiled.PictureFor(options with { Theme = Theme.Dark })!);
}
