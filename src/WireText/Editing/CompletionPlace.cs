using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>A place in a text where somebody writes, and the words that the text has for it.</summary>
internal sealed record CompletionPlace(Compilation Compiled, LineBefore Line)
{
    /// <summary>What there is without the line, as far as a circuit could be built.</summary>
    public Circuit? Circuit => Compiled.Circuit;

    /// <summary>A word in place of the one that is being written.</summary>
    public Completion Word(string word, CompletionKind kind, string detail = "") => new(word, kind, detail, Line.At);

    /// <summary>Words of the language.</summary>
    public IEnumerable<Completion> Words(params IEnumerable<string> words) =>
        words.Select(word => Word(word, CompletionKind.Word));

    /// <summary>The parts, each with what it is.</summary>
    public IEnumerable<Completion> Parts() =>
        Circuit is { } circuit ? circuit.Parts.Select(part => Word(part.Name, CompletionKind.Part, WordsOf(part))) : [];

    /// <summary>Parts; behind a dot the lugs of the part before it, each with what it is.</summary>
    public IEnumerable<Completion> Lugs()
    {
        var dot = Line.Written.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0)
        {
            return Parts();
        }

        return Circuit?.FindPart(Line.Written[..dot]) is { } part
            ? part
                .Lugs.Select(lug => Circuit.Lugs[lug])
                .Where(lug => !lug.IsInner)
                .Select(lug => new Completion(
                    lug.Terminal.Name,
                    CompletionKind.Lug,
                    LugWords.Of(Circuit, lug),
                    TextSpan.FromBounds(Line.At.Start + dot + 1, Line.At.End)
                ))
            : [];
    }

    /// <summary>The colours that the text can name, each as it looks.</summary>
    public IEnumerable<Completion> Colours()
    {
        var own = OtherFiles
            .BasesOf(Compiled)
            .Prepend(Compiled.Tree)
            .Concat(Compiled.Included)
            .SelectMany(tree => tree.Statements.OfType<ColourSyntax>())
            .Where(colour => colour is { Code: not null, Paint: not null })
            .Select(colour =>
                Word(colour.Name.Text, CompletionKind.Colour, colour.Code!.Text) with
                {
                    Paint = colour.Paint!.Text,
                }
            );
        return ColourPalette
            .Standard.Names.Select(name => ColourPalette.Standard.Find(name)!)
            .Select(colour =>
                Word(colour.Name, CompletionKind.Colour, colour.Code) with
                {
                    Paint = Theme.Insulation(colour).ToString(),
                }
            )
            .Concat(own);
    }

    /// <summary>Controls and dials with an equals sign; behind that the positions of the one before it.</summary>
    /// <param name="mayBeAny">True where a line may mean each position.</param>
    public IEnumerable<Completion> Settings(bool mayBeAny)
    {
        if (Circuit is not { } circuit)
        {
            return [];
        }

        var equals = Line.Written.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
        {
            return circuit
                .Controls.Select(control =>
                    Word($"{control.Name}=", CompletionKind.Control, string.Join(' ', PositionsOf(control)))
                )
                .Concat(circuit.Dials.Select(dial => Word($"{dial.Name}=", CompletionKind.Control, "0 to 10")))
                .Concat(
                    mayBeAny
                        ? [Word("others=any", CompletionKind.Word, "each position of every control that is not named")]
                        : []
                );
        }

        var at = Line.Behind('=');
        var named = Line.Written[..equals];
        var positions =
            circuit.FindControl(named) is { } found ? PositionsOf(found)
            : circuit.FindDial(named) is null ? []
            : ["0", "5", "10"];
        return positions
            .Select(position => new Completion(position, CompletionKind.Position, "", at))
            .Concat(
                mayBeAny ? [new Completion(StateText.AnyWord, CompletionKind.Word, "each of the positions", at)] : []
            );
    }

    /// <summary>What a part is, in the words of its line.</summary>
    public string WordsOf(Part part) =>
        $"{part.Kind} {Comparing.PartWords.Of(Compiled.Circuit!, part)}".TrimEnd()
        + (part.Remark is { } remark ? $": {remark}" : "");

    /// <summary>The model that words of a line name, else the one that is taken when none is; null where one must be named.</summary>
    public PartDefinition? ModelIn(string kind, IEnumerable<string> words) =>
        words.Select(word => Compiled.Catalogue.Find(kind, word)).FirstOrDefault(model => model is not null)
        ?? Compiled.Catalogue.DefaultOf(kind);

    private static IEnumerable<string> PositionsOf(Control control) =>
        control.Positions.Select(position => position.Name);
}
