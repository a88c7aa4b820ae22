using System.Collections.Immutable;
using WireText.Geometry;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Reads where the author put parts.</summary>
internal sealed class PlaceBinder(CircuitDraft draft, LugResolver resolver)
{
    private readonly Dictionary<int, SourceLocation> seen = [];

    public List<ImmutableArray<int?>> Rows { get; } = [];

    public List<GivenPlace> Places { get; } = [];

    public void Bind(ArrangeSyntax syntax)
    {
        foreach (var row in syntax.Rows)
        {
            Rows.Add([.. row.Cells.Select(BindCell)]);
        }
    }

    public void Bind(PlaceSyntax syntax)
    {
        if (resolver.ResolvePart(syntax.Name) is not { } part)
        {
            return;
        }

        if (Places.Exists(p => p.Part == part.Index))
        {
            draft.Sink.Add(
                StatementFindings.SaidTwice.At(
                    syntax.Name.Location,
                    $"'{part.Name}' has a place already",
                    "keep one of the lines"
                )
            );
            return;
        }

        var turn = syntax.Turned ?? 0;
        if (turn % 90 != 0 || turn is < 0 or > 360)
        {
            draft.Sink.Add(
                PlaceFindings.BadTurn.At(
                    syntax.Location,
                    $"'{part.Name}' cannot be turned by that much",
                    "turn it by 0, 90, 180 or 270 degrees, clockwise"
                )
            );
            turn = 0;
        }

        var at = syntax.At is { } point ? new Point(point.X, point.Y) : (Point?)null;
        Places.Add(new GivenPlace(part.Index, at, turn % 360, syntax.Location));
    }

    private int? BindCell(WordSyntax cell)
    {
        if (cell.Text == "." || resolver.ResolvePart(cell) is not { } part)
        {
            return null;
        }

        if (seen.TryAdd(part.Index, cell.Location))
        {
            return part.Index;
        }

        draft.Sink.Add(
            StatementFindings
                .SaidTwice.At(cell.Location, $"'{part.Name}' sits in two places", "write '.' in one of them")
                .Beside(seen[part.Index], "it sits here too")
        );
        return null;
    }
}
