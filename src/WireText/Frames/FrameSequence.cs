using System.Collections.Immutable;
using System.Globalization;
using WireText.Building;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Pictures;
using WireText.Geometry;

namespace WireText.Frames;

/// <summary>The pictures of a video, in their order, all of one size.</summary>
/// <param name="Word">What each is of: <c>step</c> or <c>position</c>.</param>
public sealed record FrameSequence(FrameSize Size, string Word, ImmutableArray<Frame> Frames)
{
    /// <summary>The most frames of one sequence: a video of more is in several files.</summary>
    public const int Most = 400;

    /// <summary>A frame for each step of the work.</summary>
    /// <param name="faces">Of the circuit's parts, in their order.</param>
    /// <param name="layout">Where they and the wires lie.</param>
    public static FrameSequence OfSteps(
        Circuit circuit,
        WorkOrder order,
        ImmutableArray<Face> faces,
        LayoutResult layout,
        Theme theme,
        FrameSize size
    )
    {
        RefuseTooMany(order.Steps.Length);
        var drawing = new FrameDrawing(circuit, layout, OptionsOf(faces, theme), trace: null);
        var frame = FrameLayout.Of(size);
        var moments = Moments.Of(circuit, order);
        var views = new Camera(drawing.Whole, frame).Views([.. moments.Select(drawing.About)]);
        var painter = new FramePainter(frame, theme, TitleOf(circuit), "step", moments.Count);
        return new FrameSequence(
            size,
            "step",
            [
                .. moments.Select(
                    (moment, i) =>
                    {
                        var callouts = new Callouts(drawing, frame, views[i]);
                        ImmutableArray<FrameName> names = [.. NamesOf(drawing, moment, callouts)];
                        var picture = painter.Compose(
                            drawing.At(moment),
                            drawing.Whole,
                            views[i],
                            callouts.Place(names, FrameTokens.NameDistances, hasRings: moment.Part is null),
                            new FramePainter.Said(i + 1, moment.Group, moment.Words)
                        );
                        return new Frame(i + 1, moment.Group, moment.Words, picture, views[i], names)
                        {
                            FileName = FileName("step", i + 1, moments.Count),
                            Wires = [.. moment.NewWires.Select(wire => circuit.Wires[wire].Id)],
                            Joint = moment.Joint,
                        };
                    }
                ),
            ]
        );
    }

    /// <summary>A frame for each of some positions, with what is live there.</summary>
    /// <inheritdoc cref="OfSteps"/>
    public static FrameSequence OfPositions(
        Circuit circuit,
        ImmutableArray<SheetView> positions,
        ImmutableArray<Face> faces,
        LayoutResult layout,
        Theme theme,
        FrameSize size
    )
    {
        RefuseTooMany(positions.Length);
        var frame = FrameLayout.Of(size);
        var painter = new FramePainter(frame, theme, TitleOf(circuit), "position", positions.Length);
        var options = OptionsOf(faces, theme);
        return new FrameSequence(
            size,
            "position",
            [
                .. positions.Select(
                    (position, i) =>
                    {
                        var drawing = new FrameDrawing(circuit, layout, options, position.Trace);
                        var view = new Camera(drawing.Whole, frame).Whole;
                        var callouts = new Callouts(drawing, frame, view);
                        ImmutableArray<FrameName> names = [.. NamesOf(drawing, position, callouts)];
                        foreach (var at in position.Controls)
                        {
                            callouts.KeepOff(drawing.Scene.FindPart(at.Part)?.Bounds ?? default);
                        }

                        var caption = $"{position.Heading}: {position.Says}";
                        var picture = painter.Compose(
                            drawing.All,
                            drawing.Whole,
                            view,
                            callouts.Place(names, FrameTokens.NearDistances, hasRings: false),
                            new FramePainter.Said(i + 1, position.Heading, caption)
                        );
                        return new Frame(i + 1, position.Heading, caption, picture, view, names)
                        {
                            FileName = FileName("position", i + 1, positions.Length),
                        };
                    }
                ),
            ]
        );
    }

    private static void RefuseTooMany(int count) => ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Most);

    private static PictureOptions OptionsOf(ImmutableArray<Face> faces, Theme theme) =>
        new() { Faces = faces, Theme = theme };

    private static string TitleOf(Circuit circuit) => circuit.Title ?? "Untitled wiring";

    private static IEnumerable<FrameName> NamesOf(FrameDrawing drawing, Moment moment, Callouts callouts)
    {
        foreach (var lug in moment.Lugs)
        {
            yield return new FrameName(
                callouts.Written(drawing.Scene.Circuit.NameOf(lug)),
                [.. drawing.PlacesOf(lug, moment.Wires)]
            );
        }

        if (moment.Part is { } index)
        {
            yield return new FrameName(
                callouts.Written(drawing.Scene.Circuit.Parts[index].Name),
                PlaceOf(drawing, index)
            );
        }
    }

    private static IEnumerable<FrameName> NamesOf(FrameDrawing drawing, SheetView position, Callouts callouts) =>
        position.Controls.Select(at => new FrameName(
            callouts.Written($"{at.Name} = {at.Position}"),
            PlaceOf(drawing, at.Part)
        ));

    private static ImmutableArray<Point> PlaceOf(FrameDrawing drawing, int part) =>
        drawing.Scene.FindPart(part) is { } placed ? [new Point(placed.Bounds.Centre.X, placed.Bounds.Bottom)] : [];

    /// <summary>With as many figures as the last one, two at least, so that they sort.</summary>
    private static string FileName(string word, int number, int count)
    {
        var figures = Math.Max(2, count.ToString(CultureInfo.InvariantCulture).Length);
        return $"{word}-{number.ToString(CultureInfo.InvariantCulture).PadLeft(figures, '0')}.png";
    }
}
