using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Comparing;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Pictures;
using WireText.Drawing.Shapes;
using WireText.Text;

namespace WireText;

/// <summary>Where everything of a circuit goes on the page: the faces of its parts, and their places and the paths of the wires.</summary>
/// <param name="Faces">In the order of the parts.</param>
/// <param name="Problem">What was laid out.</param>
public sealed record Plan(ImmutableArray<Face> Faces, LayoutProblem Problem, LayoutResult Layout)
{
    private KnownLugLabels LugLabels { get; init; } = new();

    /// <summary>Why a circuit cannot be drawn; null when it can.</summary>
    public static Finding? TooLarge(Circuit circuit) =>
        circuit.Wires.Length > CircuitLimits.MaxDrawnWires
            ? CircuitLimits.TooLargeToDraw.At(
                circuit.Wires[CircuitLimits.MaxDrawnWires].DeclaredAt,
                $"a drawing has {CircuitLimits.MaxDrawnWires} wires at most; this circuit has {circuit.Wires.Length}",
                "divide the circuit into several files"
            )
            : null;

    /// <summary>Null for a circuit that is too large to draw.</summary>
    /// <param name="before">A plan of the text before an edit: where the edit changed nothing to lay out, it stands, and all but the tags does where it changed colours.</param>
    /// <param name="holdsPlaces">True to go on from the plan before: see <see cref="LayoutEngine.Continue"/>.</param>
    public static Plan? Of(
        Circuit circuit,
        LayoutEffort effort,
        Plan? before,
        bool holdsPlaces,
        CancellationToken cancellation
    )
    {
        if (TooLarge(circuit) is not null)
        {
            return null;
        }

        var faces = FaceBuilder.BuildFaces(circuit);
        var problem = FaceBuilder.BuildProblem(circuit, faces);
        var layout =
            before is null ? LayoutEngine.Lay(problem, effort, cancellation)
            : LayoutTwins.Are(before.Problem, problem) ? before.Layout
            : LayoutTwins.AreButForTheTags(before.Problem, problem) ? LayoutEngine.Retag(problem, before.Layout)
            : holdsPlaces ? LayoutEngine.Continue(problem, before.Problem, before.Layout, cancellation)
            : LayoutEngine.Lay(problem, effort, cancellation);
        var parts = problem.Parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        return new Plan(faces, problem, layout) { LugLabels = before?.LugLabels.Of(parts) ?? new() };
    }

    /// <summary>This plan with what came out of an earlier circuit on it: no part of the circuit moves, its wires may.</summary>
    /// <returns>Null where the two together are too large to draw.</returns>
    public Plan? Under(Overlay overlay, LayoutEffort effort, CancellationToken cancellation)
    {
        if (TooLarge(overlay.Circuit) is not null)
        {
            return null;
        }

        ImmutableArray<Face> faces = [.. Faces, .. FaceBuilder.BuildFaces(overlay.Circuit).Skip(Faces.Length)];
        var places = Layout.Parts.ToDictionary(part => part.Part.Id, StringComparer.Ordinal);
        var problem = FaceBuilder.BuildProblem(overlay.Circuit, faces);
        var held = problem.Parts.Select(part =>
            places.TryGetValue(part.Id, out var place) ? part with { GivenAt = place.At, GivenTurn = place.Turn } : part
        );
        problem = problem with { Parts = [.. held], Arrangement = [] };
        return new Plan(faces, problem, LayoutEngine.Lay(problem, effort, cancellation));
    }

    /// <summary>The picture of the circuit.</summary>
    /// <param name="heard">What is heard in every position; null where it is not told.</param>
    public Picture Paint(
        Circuit circuit,
        ImmutableArray<Finding> findings,
        DrawOptions options,
        HeardTable? heard = null
    )
    {
        var pictured = new PictureOptions
        {
            Faces = Faces,
            KnownLugLabels = LugLabels,
            Theme = options.Theme,
            FileName = options.FileName,
            Trace = options.Trace,
            Bars = options.Bars,
            Joints = options.Joints,
            Changes = options.Changes,
            ForBench = options.ForBench,
            Heard = heard,
            Findings = options is { ForBench: true, Changes: null } ? findings : [],
        };
        return options.Views.IsEmpty
            ? PictureBuilder.Build(circuit, Layout, pictured)
            : ViewSheet.Build(circuit, Layout, pictured, options.Views);
    }
}
