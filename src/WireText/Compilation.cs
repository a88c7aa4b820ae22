using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Studies;
using WireText.Mods;
using WireText.Output;
using WireText.Pages;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText;

/// <summary>
/// One wiring text on its way to findings and a picture, in one direction: text, tree, circuit, study, report, repairs, plan,
/// picture. Each is a step of its own: worked out when it is first asked for, once, and kept; safe to ask from several threads.
/// </summary>
public sealed class Compilation
{
    private readonly CompilationSteps steps;
    private readonly CancellationToken cancellation;

    private Compilation(CompilationSteps steps, CancellationToken cancellation) =>
        (this.steps, this.cancellation) = (steps, cancellation);

    public SourceText Source => steps.Source;

    /// <summary>The statements, with every blank and comment.</summary>
    public WiringTree Tree => steps.Tree.Get(cancellation);

    /// <summary>The statements of the whole circuit: of a mod those of what it stands on, changed, and its own.</summary>
    public ResolvedWiring Resolved => steps.Resolved.Get(cancellation);

    /// <summary>The circuit; null when none could be built.</summary>
    public Circuit? Circuit => steps.Bound.Get(cancellation).Circuit;

    /// <summary>The circuit that a mod stands on; null for a file that stands alone.</summary>
    public Circuit? BaseCircuit => steps.BaseCircuit.Get(cancellation);

    /// <summary>The standard models and those the file defines or includes.</summary>
    public PartCatalogue Catalogue => steps.Bound.Get(cancellation).Catalogue;

    /// <summary>The files that the circuit's files include, and those that these include, each once.</summary>
    public ImmutableArray<WiringTree> Included => steps.Bound.Get(cancellation).Included;

    /// <summary>
    /// What the electrical stage finds out, of this circuit or a twin of it; null without a circuit, or without an output jack.
    /// </summary>
    public Study? Study => steps.Study.Get(cancellation)?.Until(cancellation);

    /// <summary>Which checks look.</summary>
    internal CheckRequest Request => steps.Request;

    /// <summary>What the checks found, without the search for repairs; empty while a line cannot be read.</summary>
    public CheckReport Report => steps.Report.Get(cancellation);

    /// <summary>The edits that mend a refuted claim; null when nothing is refuted.</summary>
    public RepairResult? Repairs => steps.Repairs.Get(cancellation);

    /// <summary>
    /// What was found in reading and by the checks, with the repairs told: in the order of the text, those in included files
    /// after.
    /// </summary>
    public ImmutableArray<Finding> Findings => steps.Told.Get(cancellation).Findings;

    /// <summary>The same without what a search adds: the edits that mend a refuted claim.</summary>
    public ImmutableArray<Finding> PromptFindings => steps.FoundWithoutRepairs(cancellation);

    /// <summary>What was found in reading alone: nothing is checked for it.</summary>
    public ImmutableArray<Finding> ReadingFindings => steps.FoundInReading(cancellation);

    /// <summary>What an <c>allow</c> line took out of the findings, by place in the text.</summary>
    public ImmutableArray<AllowedFinding> Allowed => steps.Told.Get(cancellation).Allowed;

    /// <summary>The checks whose findings wait until what stands is mended, by id.</summary>
    public ImmutableArray<string> Waiting => steps.Told.Get(cancellation).Waiting;

    public bool HasErrors => Findings.Any(finding => finding.Severity == Severity.Error);

    /// <param name="withHarmless">Also tells what is harmless: see <see cref="FindingDescription.OnlyWhenAsked"/>.</param>
    /// <param name="settings">What is made of the checks; null for everything as the table of checks says.</param>
    public static Compilation Of(
        SourceText source,
        ISourceProvider sources,
        bool withHarmless = false,
        CheckSettings? settings = null
    ) =>
        new(
            new CompilationSteps(
                source,
                sources,
                CheckRequest.Of(withHarmless, settings),
                before: null,
                holdsPlaces: false
            ),
            CancellationToken.None
        );

    /// <summary>The same, whose work ends with an <see cref="OperationCanceledException"/> when the token says so.</summary>
    /// <remarks>What was finished stays; what was cancelled is begun anew by whoever asks next.</remarks>
    public Compilation Until(CancellationToken token) => new(steps, token);

    /// <summary>
    /// The same file with another text. What the edit left alone is taken over: what was solved, the study, the plan. The result
    /// is the same as of the text alone.
    /// </summary>
    public Compilation With(SourceText text) =>
        new(new CompilationSteps(text, steps.Sources, steps.Request, steps, holdsPlaces: false), cancellation);

    /// <summary>
    /// The same for somebody who looks on while the file is written: in the picture, parts stay where they were and wires keep their
    /// paths where they can. Findings are those of the text alone; the picture depends on those before it.
    /// </summary>
    public Compilation WithPlacesHeld(SourceText text) =>
        new(new CompilationSteps(text, steps.Sources, steps.Request, steps, holdsPlaces: true), cancellation);

    /// <summary>Where everything goes on the page; null when there is no circuit, or one too large to draw.</summary>
    public Plan? PlanFor(LayoutEffort effort) => steps.PlanFor(effort).Get(cancellation);

    /// <summary>What stands in the way of a drawing, besides the findings; empty when nothing does.</summary>
    public ImmutableArray<Finding> DrawingFindings =>
        Circuit is { } circuit && Plan.TooLarge(circuit) is { } finding ? [finding] : [];

    /// <summary>The picture; null when there is no plan. A mistake is drawn and marked, not refused.</summary>
    public Picture? PictureFor(DrawOptions options) => steps.Paint(options, cancellation);

    /// <summary>The picture as SVG; null when there is no plan.</summary>
    public string? Draw(DrawOptions options) =>
        PictureFor(options) is { } picture ? SvgWriter.Write(picture, options.Scale) : null;

    /// <summary>What a page shows of the circuit; null without a circuit or an output jack, and with more states than a page has.</summary>
    public PageTable? TellStates() =>
        Circuit is { } circuit && Study is { } study ? PageTable.Of(circuit, study, BaseCircuit, cancellation) : null;

    /// <summary>The page for a customer, as HTML; null when there is no plan.</summary>
    /// <param name="table">What it shows.</param>
    /// <param name="fileName">Null for none.</param>
    public string? WritePage(PageTable table, LayoutEffort effort, string? fileName)
    {
        var options = new DrawOptions(effort, Theme.Light, fileName)
        {
            Bars = table.Bars,
            ForBench = false,
            TellsHeard = false,
        };
        return PictureFor(options) is { } light && PictureFor(options with { Theme = Theme.Dark }) is { } dark
            ? PageHtml.Write(new PageContents(table, light, dark, fileName) { StockTitle = BaseCircuit?.Title })
            : null;
    }
}
