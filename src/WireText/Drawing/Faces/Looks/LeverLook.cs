using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>
/// A lever switch from behind: the screws in its two ends, the slot that the lever moves in, and its stops along the slot, those
/// half way between two throws as empty dots.
/// </summary>
internal sealed class LeverLook : SwitchLook
{
    /// <summary>How wide the slot is drawn and how large a stop and the head of a screw are, in millimetres. Chosen by eye.</summary>
    private const double SlotWidth = 1.6;
    private const double Stop = 0.38;
    private const double ScrewHead = 1.25;
    private const double RoomForSlot = 5;

    public override IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme)
    {
        foreach (var item in base.Art(face, circuit, theme))
        {
            yield return item;
        }

        var part = circuit.Parts[face.Index];
        var scale = face.Face.Scale;
        foreach (var hole in part.Definition.Holes)
        {
            var at = new Point(hole.At.X * scale, hole.At.Y * scale);
            var items = hole.Shape switch
            {
                // Between rows that stand so near there is no room for it beside their names.
                HoleShape.Slot slot when face.Face.Lugs.All(lug => Math.Abs(lug.At.Y - at.Y) >= RoomForSlot * scale) =>
                    Slot(face, part, at, slot.Width * scale, theme),
                HoleShape.Round => Screw(face, at, theme),
                _ => [],
            };
            foreach (var item in items)
            {
                yield return item;
            }
        }
    }

    /// <summary>The head of a screw with its slot; nothing where it lies beside the body.</summary>
    private static IEnumerable<PictureItem> Screw(PlacedFace face, Point at, Theme theme)
    {
        var radius = ScrewHead * face.Face.Scale;
        if (!face.MainOutline.Bounds.Contains(Box.Around(at, 2 * radius, 2 * radius)))
        {
            return [];
        }

        var slot = new Point(radius * 0.7, radius * 0.7);
        return
        [
            new CircleShape("screw", face.OnPage(at), radius, DetailOf(theme)),
            PathShape.Through("screw", DetailOf(theme), face.OnPage(at - slot), face.OnPage(at + slot)),
        ];
    }

    private static IEnumerable<PictureItem> Slot(PlacedFace face, Part part, Point middle, double length, Theme theme)
    {
        var width = SlotWidth * face.Face.Scale;
        var box = Box.Around(middle, length, width);
        yield return new RectangleShape("slot", face.OnPage(box), width / 2, DetailOf(theme));
        var positions = part.Definition.Controls.Length == 1 ? part.Definition.Controls[0].Positions : [];
        for (var i = 0; i < positions.Length; i++)
        {
            var share = positions.Length == 1 ? 0.5 : i / (positions.Length - 1.0);
            var at = new Point(box.X + (width / 2) + (share * (box.Width - width)), middle.Y);
            var isHalfWay = positions[i].Closed.Any(contact => contact.Terminals.Length > 2);
            yield return new CircleShape(
                "stop",
                face.OnPage(at),
                Stop * face.Face.Scale,
                isHalfWay ? DetailOf(theme) : Paint.Filled(theme.PartLine)
            );
        }
    }
}
