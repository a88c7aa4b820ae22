using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>A few words that an editor shows in a line and that are not in the text.</summary>
/// <param name="At">The offset before which they are shown.</param>
/// <param name="Meaning">What they are, for who points at them.</param>
public sealed record LineHint(int At, string Words, string Meaning);

/// <summary>What a text leads to, beside the lines that lead to it: what each state that is claimed something of does, and the marking of each capacitor.</summary>
public static class LineHints
{
    private const string OfState = "what this state does, as the program computes it";
    private const string OfMarking = "the marking on the part (IEC 60062)";

    /// <summary>Those of a stretch of the text, in its order.</summary>
    public static ImmutableArray<LineHint> In(Compilation compiled, TextSpan stretch) =>
        compiled.Circuit is not { } circuit
            ? []
            :
            [
                .. States(compiled, circuit, stretch)
                    .Concat(Markings(compiled, circuit, stretch))
                    .OrderBy(hint => hint.At),
            ];

    /// <summary>A state with a control at any is several: nothing is told of it.</summary>
    private static IEnumerable<LineHint> States(Compilation compiled, Circuit circuit, TextSpan stretch) =>
        compiled.Study is not { } study
            ? []
            : from expectation in circuit.Expectations
            let at = expectation.DeclaredAt
            where at.Source == compiled.Source && Meets(at.Span, stretch) && !expectation.State.HasAny
            select new LineHint(
                at.Span.End,
                StateWords.Of(circuit, study.At(expectation.Jack), expectation.State),
                OfState
            );

    private static IEnumerable<LineHint> Markings(Compilation compiled, Circuit circuit, TextSpan stretch) =>
        from line in compiled.Tree.Statements.OfType<PartSyntax>()
        where !line.IsBroken && Meets(line.Span, stretch)
        let part = circuit.FindPart(line.Name.Text)
        where part is not null && part.NameAt == line.Name.Location
        let capacitor = part.Elements.Select(element => circuit.Elements[element]).OfType<Capacitor>().FirstOrDefault()
        where capacitor is { Doubt: null }
        let code = MarkingCode.OfCapacitor(capacitor.Farads)
        let value = ValueIn(line)
        where code is not null && value is not null
        select new LineHint(value.Span.End, code, OfMarking);

    /// <summary>The word that says the value of a capacitor; null where the marking itself says it.</summary>
    private static SyntaxNode? ValueIn(PartSyntax line) =>
        line.Arguments.FirstOrDefault(argument =>
            argument switch
            {
                WordSyntax word => ValueReader.Read(word.Text, ValueUse.Capacitor).Value is not null,
                PairSyntax pair => Naming.Alike(pair.Key.Text, "value"),
                _ => false,
            }
        );

    private static bool Meets(TextSpan line, TextSpan stretch) =>
        line.Start <= stretch.End && stretch.Start <= line.End;
}
