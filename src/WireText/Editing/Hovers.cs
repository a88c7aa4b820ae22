using WireText.Checks;
using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Output;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>Says what a word of a text means: a part with its face, a lug with its net, a state with what it does, a check with its page.</summary>
public static class Hovers
{
    private const char Fence = '`';
    private const int ShortestFence = 3;

    /// <summary>Null where there is nothing to say.</summary>
    public static Hover? At(Compilation compiled, int offset)
    {
        if (NameTable.Of(compiled).At(offset) is { } use)
        {
            return Of(compiled, use) is { } said ? new Hover(use.At.Span, said) : null;
        }

        var line = compiled.Tree.Lines.LastOrDefault(line => line.Span.Start <= offset);
        return
            line?.Content is { } content
            && LineScan.WordsIn(compiled.Source.Content, content.Span) is [var first, ..]
            && first.Start <= offset
            && offset <= first.End
            && StatementWords.MeaningOf(compiled.Source.Slice(first)) is { } meaning
            ? new Hover(first, Code(meaning))
            : null;
    }

    private static string? Of(Compilation compiled, NameUse use)
    {
        var name = use.At.Text;
        return use.Kind switch
        {
            NameKind.Check => FindingCatalogue.Find(name) is { } check ? CheckPage.Write(check) : null,
            NameKind.Kind => StatementWords.MeaningOf(name) is { } meaning ? Code(meaning) : null,
            NameKind.Model => ModelOf(compiled, use) is { } model ? Code(PartSheet.Show(model)) : null,
            NameKind.Colour => ColourOf(name),
            NameKind.Part => compiled.Circuit is { } circuit && circuit.FindPart(name) is { } part
                ? OfPart(circuit, part)
                : null,
            NameKind.Lug => LugHover.At(compiled, use),
            NameKind.Position => OfPosition(compiled, use),
            _ => null,
        };
    }

    /// <summary>The model by its name and the kind at the start of the line.</summary>
    private static PartDefinition? ModelOf(Compilation compiled, NameUse use)
    {
        var line = LineScan.Of(compiled.Source, use.At.Position.Line).Content;
        var words = LineScan.WordsIn(compiled.Source.Content, line).ConvertAll(compiled.Source.Slice);
        var kind =
            Naming.Alike(words[0], "define") ? words[1]
            : Naming.Alike(words[0], "replace") ? compiled.Circuit?.FindPart(words[1])?.Kind
            : words[0];
        return kind is null ? null : compiled.Catalogue.Find(kind, use.At.Text);
    }

    private static string OfPart(Circuit circuit, Part part)
    {
        var words = $"{part.Kind} {Comparing.PartWords.Of(circuit, part)}".TrimEnd();
        var said = part.Remark is { } remark ? $"{part.Name}: {words}\n\"{remark}\"\n" : $"{part.Name}: {words}\n";
        var controls = part
            .Controls.Select(control => circuit.Controls[control])
            .Select(control =>
                $"{control.Name}: {string.Join(' ', control.Positions.Select(position => position.Name))}\n"
            )
            .Concat(part.Dials.Select(dial => $"{circuit.Dials[dial].Name}: turns from 0 to 10\n"));
        var face = TextFace.Draw(part.Definition);
        return Code(said + string.Concat(controls) + (face.Length > 0 ? $"\nfrom behind:\n\n{face}" : ""));
    }

    private static string? ColourOf(string name) =>
        ColourPalette.Standard.Read(name) is { } colour
            ? Code($"{colour.Name}{(colour.Tag.Length > 0 ? $", {colour.Tag}" : "")}, {Theme.Insulation(colour.Base)}")
            : null;

    /// <summary>What the circuit does with the control there, everything else at rest, or as an <c>expect</c> line says.</summary>
    private static string? OfPosition(Compilation compiled, NameUse use)
    {
        if (compiled.Circuit is not { } circuit || compiled.Study is not { } study)
        {
            return null;
        }

        var expectation = circuit.Expectations.FirstOrDefault(one =>
            one.DeclaredAt.Source == compiled.Source
            && one.DeclaredAt.Span.Start <= use.At.Span.Start
            && use.At.Span.End <= one.DeclaredAt.Span.End
        );
        if (expectation is { State.HasAny: false })
        {
            return Code(
                $"{StateText.AsSaid(expectation.State)}: {StateWords.Of(circuit, study.At(expectation.Jack), expectation.State)}"
            );
        }

        var line = compiled
            .Tree.Statements.OfType<PositionsSyntax>()
            .FirstOrDefault(line => line.Names.Any(name => name.Location == use.At));
        return
            line is not null
            && circuit.FindControl(line.Control.FullName) is { } control
            && control
                .Positions.Select((position, i) => (position.Name, i))
                .FirstOrDefault(at => Naming.Alike(at.Name, use.At.Text))
                is { Name: not null } found
            ? Code(
                $"{StateText.Of(control, found.i)}: {StateWords.Of(circuit, study, State.Rest(circuit).With(control, found.i))}"
            )
            : null;
    }

    /// <summary>Words as they are, whatever is in them: the fence is longer than any run of its sign in them.</summary>
    internal static string Code(string text)
    {
        var (longest, run) = (ShortestFence - 1, 0);
        foreach (var character in text)
        {
            run = character == Fence ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        var fence = new string(Fence, longest + 1);
        return $"{fence}text\n{text.TrimEnd()}\n{fence}\n";
    }
}
