using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Electrical.Studies;
using WireText.Mods;
using WireText.Output;
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
    private readonly KnownBefore? known;
    private readonly SaidBefore? said;
    private volatile Drawn? drawn;

    /// <param name="before">The steps of the text before an edit; null for a text of its own.</param>
    /// <param name="holdsPlaces">True where the picture goes on from the one before.</param>
    public CompilationSteps(
        SourceText source,
        ISourceProvider sources,
        CheckRequest request,
        CompilationSteps? before,
        bool holdsPlaces
    )
    {
        Source = source;
        Sources = sources;
        Request = request;

        // What was worked out before the edit is taken now: a chain of all texts of a day must not stay in memory.
        var all = before?.Known();
        said = WiringParser.Reads(source) ? all?.Said?.Of(source) : null;
        drawn = said is null ? null : all?.Drawn;
        known = all is null ? null : all with { Said = null, Drawn = null };
        Tree = new(_ => WiringParser.Parse(source));
        Resolved = new(cancel => ModResolver.Resolve(Tree.Get(cancel), sources));
        Bound = new(cancel => Binder.Bind(Resolved.Get(cancel), sources));
        BaseCircuit = new(cancel =>
            Resolved.Get(cancel).Base is { } under ? Binder.Bind(under.Resolved, sources).Circuit : null
        );
        Study = new(cancel => Bound.Get(cancel).Circuit is { } circuit ? StudyOf(circuit, known) : null);
        Report = new(cancel =>
            said is not null ? said.Report
            : IsRead(cancel) && Bound.Get(cancel).Circuit is { } circuit
                ? Checker.Examine(circuit, Study.Get(cancel), request.For(circuit), cancel)
            : Nothing
        );
        Repairs = new(cancel =>
            Bound.Get(cancel).Circuit is { } circuit && Study.Get(cancel) is { } study
                ? RepairAdvice.Search(circuit, study.Until(cancel), Report.Get(cancel), request.Settings, cancel)
                : null
        );
        Told = new(cancel => said is not null ? said.Told : Tell(cancel));
        plans =
        [
            .. Enum.GetValues<LayoutEffort>()
                .Select(effort => new Step<Plan?>(cancel => PlanOf(effort, known, holdsPlaces, cancel))),
        ];
    }

    public SourceText Source { get; }

    public ISourceProvider Sources { get; }

    public CheckRequest Request { get; }

    public Step<WiringTree> Tree { get; }

    /// <summary>The statements of the whole circuit: of a mod those of what it stands on, changed, and its own.</summary>
    public Step<ResolvedWiring> Resolved { get; }

    public Step<BoundCircuit> Bound { get; }

    public Step<Circuit?> BaseCircuit { get; }

    public Step<Study?> Study { get; }

    public Step<CheckReport> Report { get; }

    public Step<RepairResult?> Repairs { get; }

    /// <summary>The report with the findings of reading in front and the repairs told.</summary>
    public Step<CheckReport> Told { get; }

    public Step<Plan?> PlanFor(LayoutEffort effort) => plans[(int)effort];

    /// <summary>The picture; null when there is no plan. The one that was drawn last is kept: who looks on looks at the same.</summary>
    public Picture? Paint(DrawOptions options, CancellationToken cancellation)
    {
        if (drawn is { } last && last.Options == options)
        {
            return last.Picture;
        }

        var picture =
            Bound.Get(cancellation).Circuit is { } circuit && PlanFor(options.Effort).Get(cancellation) is { } plan
                ? plan.Paint(circuit, Told.Get(cancellation).Findings, options, HeardFor(options, cancellation))
                : null;
        drawn = new Drawn(options, picture);
        return picture;
    }

    private HeardTable? HeardFor(DrawOptions options, CancellationToken cancellation) =>
        options is { TellsHeard: true, Views.IsEmpty: true, Trace: null, Changes: null }
        && Study.Get(cancellation) is { } study
            ? HeardWords.Of(study.Until(cancellation).PositionsAtJacks)
            : null;

    /// <summary>What was found in reading, in the order of the text, those in included files after.</summary>
    public ImmutableArray<Finding> FoundInReading(CancellationToken cancellation) => InOrder(Read(cancellation));

    /// <summary>All findings in the order of the text, before repairs are looked for.</summary>
    public ImmutableArray<Finding> FoundWithoutRepairs(CancellationToken cancellation) =>
        FindingLimit.Keep(InOrder([.. Read(cancellation), .. Report.Get(cancellation).Findings]));

    private CheckReport Tell(CancellationToken cancellation)
    {
        var bound = Bound.Get(cancellation);
        var report = Report.Get(cancellation);
        if (bound.Circuit is { } circuit)
        {
            report =
                Repairs.Get(cancellation) is { } repairs ? RepairAdvice.AddTo(report, circuit, repairs)
                : Study.Get(cancellation) is { } study
                    ? LikelyMend.AddTo(report, circuit, study.Until(cancellation), Request.For(circuit), cancellation)
                : report;
        }

        return report with
        {
            Findings = FindingLimit.Keep(InOrder([.. Read(cancellation), .. report.Findings])),
        };
    }

    private IEnumerable<Finding> Read(CancellationToken cancellation) =>
        Tree.Get(cancellation).Findings.Concat(Bound.Get(cancellation).Findings);

    /// <summary>A line that could not be read leaves holes: what a check said of them would be the same mistake again.</summary>
    private bool IsRead(CancellationToken cancellation) =>
        Read(cancellation).All(finding => finding.Severity != Severity.Error);

    private Plan? PlanOf(LayoutEffort effort, KnownBefore? known, bool holdsPlaces, CancellationToken cancellation) =>
        Bound.Get(cancellation).Circuit is { } circuit
            ? Plan.Of(circuit, effort, known?.Plans[(int)effort], holdsPlaces, cancellation)
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
            Finished(Study, known?.Study),
            [.. plans.Select((plan, effort) => Finished(plan, known?.Plans[effort]))],
            said ?? WhatIsSaid(),
            drawn
        );

    /// <summary>Null where nothing is said yet, and where another file has a say.</summary>
    private SaidBefore? WhatIsSaid() =>
        Told.IsDone && Report.IsDone && IncludesNothing()
            ? new SaidBefore(Source, Report.Get(CancellationToken.None), Told.Get(CancellationToken.None))
            : null;

    private bool IncludesNothing() =>
        !Tree.Get(CancellationToken.None).Statements.Any(statement => statement is IncludeSyntax or BaseSyntax);

    /// <summary>What a step gave, or an older value for the next text to start from: a text that is broken for a moment gives none.</summary>
    private static T? Finished<T>(Step<T?> step, T? older)
        where T : class => (step.IsDone ? step.Get(CancellationToken.None) : null) ?? older;

    private ImmutableArray<Finding> InOrder(IEnumerable<Finding> findings) =>
        [
            .. findings
                .OrderBy(finding => finding.Location.Source == Source ? 0 : 1)
                .ThenBy(finding => finding.Location.Source?.Path, StringComparer.Ordinal)
                .ThenBy(finding => finding.Location.Span.Start),
        ];

    /// <summary>What was finished of the text before an edit.</summary>
    /// <param name="Study">Of the last text that was asked for one.</param>
    /// <param name="Plans">Of the last texts that were drawn, by effort.</param>
    /// <param name="Drawn">Of the text before, or a twin of it.</param>
    private sealed record KnownBefore(Study? Study, ImmutableArray<Plan?> Plans, SaidBefore? Said, Drawn? Drawn);

    private sealed record Drawn(DrawOptions Options, Picture? Picture);
}
