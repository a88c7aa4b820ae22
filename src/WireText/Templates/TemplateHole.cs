using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Templates;

/// <summary>A hole where it is drilled.</summary>
/// <param name="Part">The name of its part.</param>
/// <param name="Shape">Turned with its part.</param>
/// <param name="At">Its middle, in millimetres from the 0,0 of the places: x to the right as seen from the side, y down.</param>
/// <param name="IsMain">False for one that a screw goes through.</param>
/// <param name="IsUsual">True for a size that neither the file nor a definition of the user's says.</param>
public sealed record TemplateHole(string Part, HoleShape Shape, Point At, bool IsMain, bool IsUsual)
{
    /// <summary>What it takes up.</summary>
    public Box Bounds =>
        Shape switch
        {
            HoleShape.Slot slot => Box.Around(At, slot.Width, slot.Height),
            HoleShape.Round round => Box.Around(At, round.Diameter, round.Diameter),
            _ => Box.Around(At, 0, 0),
        };
}

/// <summary>What is drilled for a circuit, and which of its parts have no hole or no place that is known.</summary>
/// <param name="Placed">The outlines of the parts that sit in holes, and where they lie.</param>
/// <param name="Unknown">Names of parts that are placed, and sit in a hole whose size nobody says.</param>
/// <param name="NotPlaced">Names of parts that sit in a hole and have no place.</param>
public sealed record TemplateHoles(
    TemplateSide Side,
    ImmutableArray<TemplateHole> Holes,
    ImmutableArray<PlacedOutline> Placed,
    ImmutableArray<string> Unknown,
    ImmutableArray<string> NotPlaced
)
{
    /// <summary>Every part that sits in a hole, in the order of the circuit.</summary>
    public static TemplateHoles Of(Circuit circuit, TemplateSide side)
    {
        var holes = ImmutableArray.CreateBuilder<TemplateHole>();
        var placed = ImmutableArray.CreateBuilder<PlacedOutline>();
        var (unknown, notPlaced) = (ImmutableArray.CreateBuilder<string>(), ImmutableArray.CreateBuilder<string>());
        foreach (var part in circuit.Parts.Where(IsDrilled))
        {
            if (PoseOf(circuit, part) is not { } pose)
            {
                notPlaced.Add(part.Name);
                continue;
            }

            holes.AddRange(part.Holes.Select((hole, i) => Turned(part, hole, pose, i == 0, side)));
            placed.Add(new PlacedOutline(part.Name, OutlineOf(part, pose, side), Seen(pose.At, side)));
            if (part.HolesFrom == HoleSource.Unknown)
            {
                unknown.Add(part.Name);
            }
        }

        return new TemplateHoles(
            side,
            holes.ToImmutable(),
            placed.ToImmutable(),
            unknown.ToImmutable(),
            notPlaced.ToImmutable()
        );
    }

    private static bool IsDrilled(Part part) => !part.Holes.IsEmpty || part.HolesFrom == HoleSource.Unknown;

    private static Pose? PoseOf(Circuit circuit, Part part) =>
        circuit.Places.FirstOrDefault(place => place.Part == part.Index) is { At: { } at } place
            ? new Pose(at, (int)place.Turn)
            : null;

    private static TemplateHole Turned(Part part, PartHole hole, Pose pose, bool isMain, TemplateSide side)
    {
        var shape =
            hole.Shape is HoleShape.Slot slot && pose.Turn % 180 != 0
                ? new HoleShape.Slot(slot.Height, slot.Width)
                : hole.Shape;
        var isUsual =
            part.Definition.DefinedAt.Source == StandardParts.Source
            && (part.HolesFrom == HoleSource.Definition || !isMain);
        return new TemplateHole(part.Name, shape, Seen(pose.OnPage(hole.At), side), isMain, isUsual);
    }

    private static Outline? OutlineOf(Part part, Pose pose, TemplateSide side)
    {
        Outline? own = part.Definition.Body switch
        {
            BodyShape.Round round => new Outline.Circle(new Point(0, 0), round.Diameter / 2),
            BodyShape.Box box => new Outline.Rectangle(Box.Around(new Point(0, 0), box.Width, box.Height)),
            _ => null,
        };

        // A body lies even about its hole: mirrored it is the same body at the mirrored place.
        return own is null ? null : new Pose(Seen(pose.At, side), pose.Turn).OnPage(own);
    }

    /// <summary>From the front, what lies right lies left.</summary>
    private static Point Seen(Point behind, TemplateSide side) =>
        side == TemplateSide.Front ? behind with { X = -behind.X } : behind;
}

/// <param name="Outline">Its body; null where the definition has none.</param>
/// <param name="At">Its place.</param>
public sealed record PlacedOutline(string Part, Outline? Outline, Point At);
