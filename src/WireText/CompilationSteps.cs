using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Drawing.Layout;
using WireText.Electrical.Studies;
using WireText.Steps;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText;

/// <summary>The steps of a <see cref="Compilation"/>, and what each takes over from the text before an edit.</summary>
internal sealed class CompilationSteps
{
    private static readonly CheckReport Nothing = new([], []);

    private readonly ImmutableArray<Step<Plan?>> plans;

    /// <param name="before">The steps of the text before an edit; null for a text of its own.</param>
    public CompilationSteps(SourceText source, ISourceProvider sources, CheckRequest request, CompilationSteps? before)
    {
        Source = source;
        Sources = sources;
        Request = request;

        // What was worked out before the edit is taken now: a chain of all texts of a day must not stay in memory.
        var known = before?.Known();
        Tree = new(_ => WiringParser.Parse(source));
        Bound = new(cancel => Binder.Bind(Tree.Get(cancel), sources));
        Study = new(cancel => Bound.Get(cancel).Circuit is { } circuit ? StudyOf(circuit, known) : null);
        Report = new(cancel =>
            IsRead(cancel) && Bound.Get(cancel).Circuit is { } circuit
                ? Checker.Examine(circuit, Study.Get(cancel), request, cancel)
                : Nothing
        );
        Repairs = new(cancel =>
            Bound.Get(cancel).Circuit is { } circuit && Study.Get(cancel) is { } study
                ? RepairAdvice.Search(circuit, study.Until(cancel), Report.Get(cancel), request.Settings, cancel)
                : null
        );
        Told = new(Tell);
        plans =
        [
            .. Enum.GetValues<LayoutEffort>()
                .Select(effort => new Step<Plan?>(cancel => PlanOf(effort, known, cancel))),
        ];
    }

    public SourceText Source { get; }

    public ISourceProvider Sources { get; }

    public CheckRequest Request { get; }

    public Step<WiringTree> Tree { get; }

    public Step<BoundCircuit> Bound { get; }

    public Step<Study?> Study { get; }

    public Step<CheckReport> Report { get; }

    public Step<RepairResult?> Repairs { get; }

    /// <summary>The report with the findings of reading in front and the repairs told.</summary>
    public Step<CheckReport> Told { get; }

    public Step<Plan?> PlanFor(LayoutEffort effort) => plans[(int)effort];

    private CheckReport Tell(CancellationToken cancellation)
    {
        var bound = Bound.Get(cancellation);
        var report = Report.Get(cancellation);
        if (bound.Circuit is { } circuit)
        {
            report = RepairAdvice.AddTo(report, circuit, Repairs.Get(cancellation));
        }

        return report with
        {
            Findings = InOrder([.. Read(cancellation), .. report.Findings]),
        };
    }

    private IEnumerable<Finding> Read(CancellationToken cancellation) =>
        Tree.Get(cancellation).Findings.Concat(Bound.Get(cancellation).Findings);

    /// <summary>A line that could not be read leaves holes: what a check said of them would be the same mistake again.</summary>
    private bool IsRead(CancellationToken cancellation) =>
        Read(cancellation).All(finding => finding.Severity != Severity.Error);

    private Plan? PlanOf(LayoutEffort effort, KnownBefore? known, CancellationToken cancellation) =>
        Bound.Get(cancellation).Circuit is { } circuit
            ? Plan.Of(circuit, effort, known?.Plans[(int)effort], cancellation)
            : null;

    private static Study? StudyOf(Circuit circuit, KnownBefore? known) =>
        known?.Study is { } study && !circuit.Outputs.IsEmpty
            ? ElectricalTwins.Are(study.Circuit, circuit)
                ? study
                : ElectricalTwins.ShareValues(study.Circuit, circuit)
                    ? study.Rewired(circuit)
                    : Electrical.Studies.Study.Of(circuit)
            : Electrical.Studies.Study.Of(circuit);

    private KnownBefore Known() =>
        new(
            Study.IsDone ? Study.Get(CancellationToken.None) : null,
            [.. plans.Select(plan => plan.IsDone ? plan.Get(CancellationToken.None) : null)]
        );

    private ImmutableArray<Finding> InOrder(IEnumerable<Finding> findings) =>
        [
            .. findings
                .OrderBy(finding => finding.Location.Source == Source ? 0 : 1)
                .ThenBy(finding => finding.Location.Source?.Path, StringComparer.Ordinal)
                .ThenBy(finding => finding.Location.Span.Start),
        ];

    /// <summary>What was finished of the text before an edit.</summary>
    private sealed record KnownBefore(Study? Study, ImmutableArray<Plan?> Plans);
}
