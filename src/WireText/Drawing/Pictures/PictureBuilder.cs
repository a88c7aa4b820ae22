using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Turns a circuit and where its parts and wires lie into a picture. A wrong wiring is drawn like a right one, and marked.</summary>
public static class PictureBuilder
{
    /// <param name="layout">What <see cref="Faces.FaceBuilder.BuildProblem(Circuit)"/> of the same circuit was laid out to.</param>
    public static Picture Build(Circuit circuit, LayoutResult layout, PictureOptions options)
    {
        // Lug labels and the numbers of findings reach a little beyond what layout counts.
        var drawing = layout.Extent.Grown(Tokens.LabelMargin);
        var width = Math.Max(drawing.Width + (2 * Tokens.PageMargin), Tokens.NarrowestPage);
        var left = (width - drawing.Width) / 2;
        var moved = LayoutShift.By(layout, new Point(left - drawing.X, Tokens.PageMargin - drawing.Y));
        var scene = new Scene(circuit, moved, options);

        var top = Tokens.PageMargin + drawing.Height + Tokens.BlockGap;
        var drawn = Drawing(scene, new LabelSpace(scene, new Box(1, 1, width - 2, top - 2)), namesAll: false);
        var closeUps = CloseUp.Of(scene, drawn);
        width = closeUps.Select(close => close.Size.Width + (2 * Tokens.PageMargin)).Append(width).Max();
        var area = new Box(Tokens.PageMargin, top, width - (2 * Tokens.PageMargin), 0);
        var (block, bottom) = TitleBlock.Build(scene, closeUps, drawn.Led, area);
        var page = new Size(width, bottom + Tokens.PageMargin);
        var items = ImmutableArray.CreateBuilder<PictureItem>();
        items.Add(
            new RectangleShape("paper", new Box(0, 0, page.Width, page.Height), 0, Paint.Filled(options.Theme.Paper))
        );
        items.AddRange(drawn.Items);
        items.Add(block);
        return new Picture(
            page,
            DrawnText.Clean(circuit.Title ?? "Untitled wiring"),
            Describe(circuit),
            options.Theme,
            items.ToImmutable()
        );
    }

    /// <summary>For what is shown once more: an id stands on a page once.</summary>
    internal static PictureItem WithoutIds(PictureItem item) =>
        (item is PictureGroup group ? group with { Items = [.. group.Items.Select(WithoutIds)] } : item) with
        {
            Id = null,
        };

    /// <summary>The circuit itself, without paper and title block.</summary>
    /// <param name="Unnamed">The parts some of whose lugs have no room for their names.</param>
    /// <param name="Led">The ids of the wires whose tags stand apart from them.</param>
    internal sealed record DrawnCircuit(
        ImmutableArray<PictureItem> Items,
        IReadOnlySet<int> Unnamed,
        IReadOnlySet<string> Led
    );

    /// <param name="namesAll">True when a lug's name is written even where it lies on something.</param>
    internal static DrawnCircuit Drawing(Scene scene, LabelSpace space, bool namesAll)
    {
        var lugPainter = new LugPainter(scene, space, namesAll);
        var contacts = new ContactPainter(scene);
        PictureItem[] parts = [.. scene.Parts.Select(part => new PartPainter(scene, part).Paint())];
        PictureItem[] wires = [.. new WirePainter(scene).Paint()];
        PictureItem[] lugs = [.. lugPainter.Paint()];
        var led = TagLeader.Of(scene, space);
        PictureItem[] tags = [.. new TagPainter(scene, led).Paint()];
        PictureItem[] joints = [.. new JointPainter(scene, space).Paint()];
        PictureItem[] findings = [.. new FindingPainter(scene, space).Paint()];
        if (scene.Options.Changes is { } changes)
        {
            var change = new ChangePainter(scene, space, changes.Overlay);
            PictureItem[] numbers = [.. change.Numbers()];
            (parts, wires) = ([.. parts.Select(change.Apply)], [.. wires.Select(change.Apply)]);
            joints = [.. joints, .. numbers];
        }

        if (Emphasis.Of(scene) is not { } emphasis)
        {
            PictureItem[] bars = [.. contacts.Paint(scene.Options.Bars)];
            return new DrawnCircuit(
                [.. parts, .. wires, .. bars, .. lugs, .. tags, .. joints, .. findings],
                lugPainter.Unnamed,
                led.Keys.ToHashSet(StringComparer.Ordinal)
            );
        }

        var fading = new Fading(scene, emphasis);
        ImmutableArray<PictureItem> faded =
        [
            .. parts.Select(fading.Apply),
            .. wires.Select(fading.Apply),
            .. scene.Options.Trace is { } trace ? contacts.Paint(trace) : [],
            .. lugs.Select(fading.Apply),
            .. tags.Select(fading.Apply),
            .. joints,
            .. findings,
        ];
        return new DrawnCircuit(faded, lugPainter.Unnamed, led.Keys.ToHashSet(StringComparer.Ordinal));
    }

    internal static string Describe(Circuit circuit)
    {
        var parts = string.Join(
            ", ",
            circuit.Parts.Select(part => part.Kind == part.Name ? part.Name : $"{part.Kind} {part.Name}")
        );
        return DrawnText.Clean(
            string.Create(
                CultureInfo.InvariantCulture,
                $"Wiring seen from behind, {circuit.Wires.Length} wires between: {parts}."
            )
        );
    }
}
