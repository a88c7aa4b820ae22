using System.Collections.Immutable;
using WireText.Parts;
using WireText.Proposing;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText;

/// <summary>Tries standard switches in place of one that cannot do what is claimed.</summary>
internal static class OtherSwitches
{
    /// <summary>Those that can, fewest joints first, then fewest lugs; null where it is no single standard switch that is to be wired.</summary>
    public static ImmutableArray<OtherSwitch>? Of(
        Compilation compiled,
        ProposalRequest request,
        CancellationToken cancellation
    )
    {
        var circuit = compiled.Circuit!;
        if (
            circuit.Open is not [var open]
            || circuit.Parts[circuit.Controls[open.Control].Part]
                is not { Kind: PartKinds.Switch, Definition: var own } part
            || compiled.Tree.Statements.OfType<PartSyntax>().FirstOrDefault(one => one.Name.Is(part.Name))
                is not { } line
            || line.Arguments.OfType<WordSyntax>().FirstOrDefault(word => word.Is(own.Model)) is not { } word
        )
        {
            return null;
        }

        var stops = circuit.Controls[open.Control].Positions.Length;
        return
        [
            .. StandardParts
                .Catalogue.ModelsOf(PartKinds.Switch)
                .Where(model =>
                    model.Model != own.Model && model.Controls is [{ Positions: var more }] && more.Length >= stops
                )
                .Select(model => Try(compiled, word, model, stops, request, cancellation))
                .OfType<OtherSwitch>()
                .OrderBy(one => one.Joints)
                .ThenBy(one => one.Lugs),
        ];
    }

    private static OtherSwitch? Try(
        Compilation compiled,
        WordSyntax word,
        PartDefinition model,
        int stops,
        ProposalRequest request,
        CancellationToken cancellation
    )
    {
        var circuit = compiled.Circuit!;
        var control = circuit.Controls[circuit.Open[0].Control];
        var more = Enumerable
            .Range(stops + 1, model.Controls[0].Positions.Length - stops)
            .Select(stop => $"stop-{stop}");
        List<TextEdit> edits = [new TextEdit(word.Location, model.Model)];
        if (
            compiled
                .Tree.Statements.OfType<PositionsSyntax>()
                .FirstOrDefault(one => Naming.Alike(one.Control.FullName, control.Name)) is
            { } names
        )
        {
            edits.Add(new TextEdit(names.Names[^1].Location, string.Join(' ', more.Prepend(names.Names[^1].Text))));
        }

        var text = TextEdit.Apply(compiled.Source.Content, [.. edits]);
        var changed = compiled.With(new SourceText(compiled.Source.Path, text)).Until(cancellation);
        if (
            changed.Circuit is not { } tried
            || changed.Study is not { } study
            || changed.ReadingFindings.Any(finding => finding.Severity == Severity.Error)
            || HarnessProblem.Of(tried).Problem is not { } whole
        )
        {
            return null;
        }

        var place = tried.Open[0].Control;
        var problem = whole.Without(state => state.State[place] >= stops);
        var judge = new JoiningJudge(problem, study);
        var found = HarnessLeast.Of(
            new HarnessSearch(problem, judge, new HarnessBudget(request), cancellation),
            0,
            null
        );
        return found.Count == 0
            ? null
            : new OtherSwitch(
                model.Model,
                found[0].Joints + problem.LooseMetal.Length,
                tried.Parts[tried.Controls[place].Part].Lugs.Length
            );
    }
}
