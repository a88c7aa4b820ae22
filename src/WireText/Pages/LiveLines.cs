using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Pages;

/// <summary>Where the text says what a drawing shows: for each part, lug and wire the places in a list of lines.</summary>
internal sealed class LiveLines
{
    private readonly Numbered<TextLine> lines = new();

    public LiveLines(Circuit circuit)
    {
        Parts = [.. circuit.Parts.Select(part => (part.Name, One(part.NameAt)))];
        Wires = [.. circuit.Wires.Select(wire => (wire.Id, One(wire.DeclaredAt)))];
        var ends = circuit
            .Wires.SelectMany(wire => new[] { (Lug: wire.From, wire), (Lug: wire.To, wire) })
            .ToLookup(end => end.Lug, end => end.wire.DeclaredAt);
        Lugs = [.. circuit.Lugs.Select(lug => (circuit.NameOf(lug.Index), AtLug(circuit, lug, ends[lug.Index])))];
    }

    public ImmutableArray<TextLine> Lines => lines.Items;

    public ImmutableArray<(string Name, ImmutableArray<int> Lines)> Parts { get; }

    public ImmutableArray<(string Name, ImmutableArray<int> Lines)> Wires { get; }

    /// <summary>The lines of the wires that end there; of a lug without wires that of its part.</summary>
    public ImmutableArray<(string Name, ImmutableArray<int> Lines)> Lugs { get; }

    private ImmutableArray<int> AtLug(Circuit circuit, Lug lug, IEnumerable<SourceLocation> wires)
    {
        ImmutableArray<int> named = [.. wires.Select(wire => lines.PlaceOf(TextLine.Of(wire))).Distinct()];
        return named.IsEmpty ? One(circuit.Parts[lug.Part].NameAt) : named;
    }

    private ImmutableArray<int> One(SourceLocation place) => [lines.PlaceOf(TextLine.Of(place))];
}

/// <summary>A line of a text, as it is shown.</summary>
/// <param name="Number">From 1.</param>
internal readonly record struct TextLine(string File, int Number, string Text)
{
    /// <summary>The line in which a place starts.</summary>
    public static TextLine Of(SourceLocation place)
    {
        var number = place.Position.Line;
        return new TextLine(
            VisibleText.Line(place.Source.Path),
            number,
            VisibleText.Line(place.Source.Slice(place.Source.LineSpan(number)))
        );
    }
}
