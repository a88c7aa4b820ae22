using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Connections;
using WireText.Checks.Intent;
using WireText.Checks.Repairs;
using WireText.Checks.Sound;
using WireText.Proposing;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText;

/// <summary>Writes harnesses into the text that asks for them and checks what comes of it, the best first.</summary>
internal sealed class HarnessTrials(
    Compilation compiled,
    HarnessProblem problem,
    JoiningJudge judge,
    CancellationToken cancellation
)
{
    /// <summary>Completed texts that are checked before the search gives up. Chosen.</summary>
    internal const int MostChecked = 200;

    private const string Heading = "# wires that were found";

    private readonly HashSet<(string Id, Subject? At)> mayStay = WhatMayStay(compiled, cancellation);
    private int tried;

    /// <summary>What a check said of the first harness that it found something in; null while it found nothing.</summary>
    public string? Found { get; private set; }

    /// <summary>The best harness whose text passes all checks; null when none of them does.</summary>
    /// <param name="harnesses">All of as many joints.</param>
    public Proposal? Best(List<Harness> harnesses)
    {
        var ordered = harnesses
            .OrderBy(harness => HarnessWorth.Of(problem, judge, harness))
            .ThenBy(harness => HarnessWires.LengthOf(problem, harness))
            .ToList();
        for (var i = 0; i < ordered.Count && tried < MostChecked; i++, tried++)
        {
            var lines = HarnessWires.Of(problem, ordered[i]);
            var completed = compiled.With(Completed(lines)).Until(cancellation);
            if (MistakeIn(completed) is { } mistake)
            {
                Found ??= mistake.Message;
                continue;
            }

            return new Proposal(ProposalOutcome.Found, 0, 0)
            {
                Joints = ordered[i].Joints + problem.LooseMetal.Length,
                Lines = lines,
                Completed = completed.Source,
                Study = completed.Study,
                Alike = ordered.Count,
                States = problem.States.Length,
                Nets = problem.Nets.Length,
                Others = OthersThan(ordered, i),
            };
        }

        return null;
    }

    /// <summary>One of each that joins other nets in some state.</summary>
    private ImmutableArray<ImmutableArray<string>> OthersThan(List<Harness> ordered, int best) =>
        [
            .. ordered
                .Prepend(ordered[best])
                .DistinctBy(harness => string.Join(' ', harness.States.Select(state => state.Bits)))
                .Skip(1)
                .Select(harness => HarnessWires.Of(problem, harness)),
        ];

    /// <summary>
    /// The kinds of mistakes of the text as it stands that no wire on the open lugs has to mend, those too that another mistake hides.
    /// </summary>
    private static HashSet<(string Id, Subject? At)> WhatMayStay(Compilation compiled, CancellationToken cancellation)
    {
        var context = CheckContext.Of(compiled.Circuit! with { Open = [] }, compiled.Study, cancellation);
        return
        [
            .. compiled
                .Request.Checks.SelectMany(check => check.Find(context))
                .Where(finding => finding.Id is not (Expect.Id or DeadPosition.Id or UnconnectedLug.Id))
                .Select(RepairAdvice.KindOf),
        ];
    }

    private Finding? MistakeIn(Compilation completed) =>
        completed
            .ReadingFindings.Concat(completed.Report.Findings)
            .FirstOrDefault(finding =>
                finding.Severity >= Severity.Warning && !mayStay.Contains(RepairAdvice.KindOf(finding))
            );

    /// <summary>The text with the lines below its last wire, and without <c>find</c>.</summary>
    private SourceText Completed(ImmutableArray<string> lines)
    {
        var finds = compiled.Tree.Statements.OfType<FindSyntax>().ToList();
        var last = compiled.Tree.Statements.OfType<WireSyntax>().LastOrDefault();
        ImmutableArray<string> block = [Heading, .. WiringColumns.Of(lines)];
        ImmutableArray<TextEdit> edits = last is null
            ?
            [
                TextEdit.Statement(finds[0].Location, block),
                .. finds.Skip(1).Select(find => TextEdit.WithoutStatement(find.Location)),
            ]
            :
            [
                .. block.Select(line => TextEdit.LineBelow(last.Location, line)),
                .. finds.Select(find => TextEdit.WithoutStatement(find.Location)),
            ];
        return new SourceText(
            compiled.Source.Path,
            WithoutBlankLinesBehind(TextEdit.Apply(compiled.Source.Content, edits))
        );
    }

    /// <summary>Where the last line went, the blank lines before it go too.</summary>
    private static string WithoutBlankLinesBehind(string text)
    {
        var ending = text.EndsWith("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        while (text.EndsWith(ending + ending, StringComparison.Ordinal))
        {
            text = text[..^ending.Length];
        }

        return text;
    }
}
