using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints lugs and solder: an eyelet for each lug, a joint only where something is soldered, and each lug's name where nothing touches it.</summary>
/// <param name="namesAll">True when a name without room is written all the same, for there is no larger picture of the part.</param>
internal sealed class LugPainter(Scene scene, LabelSpace space, bool namesAll)
{
    private readonly Theme theme = scene.Theme;
    private readonly SortedSet<int> unnamed = [];

    /// <summary>The parts some of whose lugs, or rows of lugs, have no room for their names; filled by painting. Such a name is left out where the part is shown larger.</summary>
    public IReadOnlySet<int> Unnamed => unnamed;

    public IEnumerable<PictureItem> Paint()
    {
        foreach (var part in scene.Parts)
        {
            foreach (var lug in part.Face.Lugs)
            {
                space.Take(Box.Around(part.OnPage(lug.At), Tokens.JointDiameter, Tokens.JointDiameter));
            }

            foreach (var joint in part.Face.Surfaces.SelectMany(scene.JointsOn))
            {
                space.Take(Box.Around(joint.At, Tokens.SurfaceJointDiameter, Tokens.SurfaceJointDiameter));
            }
        }

        foreach (var part in scene.Parts)
        {
            var labels = LabelsOf(part);

            for (var i = 0; i < part.Face.Lugs.Length; i++)
            {
                yield return PaintLug(part, part.Face.Lugs[i], i < labels.Length ? labels[i] : null);
            }

            foreach (var surface in part.Face.Surfaces)
            {
                yield return PaintSurfaceJoints(surface);
            }

            foreach (var section in part.Face.Lugs.Where(lug => lug.Section.Length > 0).GroupBy(lug => lug.Section))
            {
                foreach (var word in PaintSection(part, section.Key, [.. section]))
                {
                    yield return word;
                }
            }
        }
    }

    /// <summary>A place for each label: beside its lug, or else, where something is soldered to that, at the end of a line.</summary>
    private LugLabels.Spot[] LabelsOf(PlacedFace part)
    {
        LugLabels.Spot[] labels = [.. LugLabels.Place(scene, part, space, scene.NameSides)];
        scene.NameSides.Keep(scene, part, labels);
        foreach (var label in labels.Where(label => label.IsClear))
        {
            space.Take(label.Box);
        }

        for (var i = 0; i < labels.Length; i++)
        {
            var lug = part.Face.Lugs[i];
            if (!labels[i].IsClear && scene.IsSoldered(lug.Lug))
            {
                labels[i] = NameLeader.Find(space, part.OnPage(lug.At), labels[i].Box) ?? labels[i];
                space.Take(labels[i].Box);
            }

            if (!labels[i].IsClear)
            {
                unnamed.Add(part.Index);
            }
        }

        return labels;
    }

    /// <summary>A lug as it is without solder.</summary>
    public static IEnumerable<PictureItem> Eyelet(Theme theme, Point at, string ring, string hole) =>
        [
            new CircleShape(
                ring,
                at,
                Tokens.EyeletDiameter / 2,
                new Paint(theme.Tin, theme.MetalLine, Tokens.EyeletLine)
            ),
            new CircleShape(hole, at, Tokens.EyeletHole / 2, Shapes.Paint.Filled(theme.MetalLine)),
        ];

    private PictureGroup PaintLug(PlacedFace part, FaceLug lug, LugLabels.Spot? place)
    {
        var at = part.OnPage(lug.At);
        var items = ImmutableArray.CreateBuilder<PictureItem>();
        var wires = scene.WiresAt(lug.Lug);
        if (lug.Look == LugLook.Lead)
        {
            if (!wires.IsEmpty && !scene.LookOf(part).HangsByTwoLeads(scene.PartOf(part)))
            {
                // The lead and the wire are one piece: no edge between them.
                var style = WireStyle.Of(theme, wires[0]);
                items.Add(
                    PathShape.Through(
                        "lead",
                        style.CorePaint,
                        part.OnPage(lug.At.Towards(part.RootOf(lug), Tokens.EyeletDiameter)),
                        at
                    )
                );
            }

            items.Add(LeadEnd(at, wires));
        }
        else
        {
            items.AddRange(Eyelet(theme, at, "eyelet", "hole"));
        }

        if (scene.IsSoldered(lug.Lug))
        {
            items.Add(Joint(at, Tokens.JointDiameter, lug.Lug, wires.Select(wire => wire.Id)));
        }

        if (place is { } label && (label.IsClear || namesAll))
        {
            if (label.Leader is { } leader)
            {
                var line = Shapes.Paint.Stroked(theme.QuietInk, Tokens.DetailLine);
                items.Add(PathShape.Through("leader", line, leader.From, leader.To));
            }

            items.Add(
                TextItem.Centred(
                    "lug-label",
                    lug.Label,
                    label.Box.Centre - new Point(0, LugLabels.DescentOf(part) / 2),
                    TextWeight.Medium,
                    Tokens.LugLabelSize,
                    theme.QuietInk
                ) with
                {
                    Shows = [("lug", scene.Circuit.NameOf(lug.Lug))],
                }
            );
        }

        return new PictureGroup("lug", items.ToImmutable())
        {
            Id = ShapeIds.Of("lug", scene.Circuit.NameOf(lug.Lug)),
            Shows = scene.Shows(lug.Lug),
        };
    }

    /// <returns>Nothing where the word has no room.</returns>
    private IEnumerable<TextItem> PaintSection(PlacedFace part, string name, ImmutableArray<FaceLug> lugs)
    {
        var text = DrawnText.Fit(name, TextWeight.Medium, Tokens.LugLabelSize, Tokens.WidestLabel / 2);
        var width = DrawnText.Width(text, TextWeight.Medium, Tokens.LugLabelSize);
        var place = space.PlaceSection(part, lugs, new Size(width, Tokens.LugLabelSize * DrawnText.CapHeight));
        if (!place.IsClear)
        {
            unnamed.Add(part.Index);
        }

        if (!place.IsClear && !namesAll)
        {
            yield break;
        }

        yield return TextItem.Centred(
            "section-label",
            text,
            place.Box.Centre,
            TextWeight.Medium,
            Tokens.LugLabelSize,
            theme.QuietInk
        ) with
        {
            Shows = [("part", scene.PartOf(part).Name)],
        };
    }

    /// <summary>The lead goes on as the wire; a lead that nothing is done with ends here, cut.</summary>
    private CircleShape LeadEnd(Point at, ImmutableArray<Wire> wires)
    {
        var style = wires.IsEmpty ? WireStyle.Neutral(theme) : WireStyle.Of(theme, wires[0]);
        var paint = wires.IsEmpty
            ? new Paint(theme.Paper, theme.MetalLine, Tokens.EyeletLine)
            : Shapes.Paint.Filled(style.Core);
        return new CircleShape("eyelet", at, (wires.IsEmpty ? Tokens.LeadEnd : style.Width) / 2, paint);
    }

    private PictureGroup PaintSurfaceJoints(FaceSurface surface)
    {
        var name = scene.Circuit.NameOf(surface.Lug);
        var joints = scene
            .JointsOn(surface)
            .Select(joint => Joint(joint.At, Tokens.SurfaceJointDiameter, surface.Lug, [joint.WireId]));
        return new PictureGroup("lug", [.. joints]) { Id = ShapeIds.Of("lug", name), Shows = scene.Shows(surface.Lug) };
    }

    private CircleShape Joint(Point at, double diameter, int lug, IEnumerable<string> wires) =>
        new("joint", at, diameter / 2, new Paint(theme.Solder, theme.MetalLine, Tokens.JointLine))
        {
            Shows = [("lug", scene.Circuit.NameOf(lug)), ("wire", string.Join(' ', wires))],
        };
}
