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
        var body = face.MainOutline.Bounds;
        foreach (var hole in part.Definition.Holes)
        {
            if (hole.Shape is HoleShape.Slot slot)
            {
                // Between rows that stand so near there is no room for it beside their names.
                if (face.Face.Lugs.Any(lug => Math.Abs(lug.At.Y - hole.At.Y) < RoomForSlot))
                {
                    continue;
                }

                foreach (var item in Slot(face, part, hole.At, slot.Width, theme))
                {
                    yield return item;
                }
            }
            else if (hole.Shape is HoleShape.Round && body.Contains(Box.Around(hole.At, 2 * ScrewHead, 2 * ScrewHead)))
            {
                yield return new CircleShape("screw", face.OnPage(hole.At), ScrewHead, DetailOf(theme));
                yield return PathShape.Through(
                    "screw",
                    DetailOf(theme),
                    face.OnPage(hole.At - new Point(ScrewHead * 0.7, ScrewHead * 0.7)),
                    face.OnPage(hole.At + new Point(ScrewHead * 0.7, ScrewHead * 0.7))
                );
            }
        }
    }

    private static IEnumerable<PictureItem> Slot(PlacedFace face, Part part, Point middle, double length, Theme theme)
    {
        var box = Box.Around(middle, length, SlotWidth);
        yield return new RectangleShape("slot", face.OnPage(box), SlotWidth / 2, DetailOf(theme));
        var positions = part.Definition.Controls.Length == 1 ? part.Definition.Controls[0].Positions : [];
        for (var i = 0; i < positions.Length; i++)
        {
            var share = positions.Length == 1 ? 0.5 : i / (positions.Length - 1.0);
            var at = new Point(box.X + (SlotWidth / 2) + (share * (box.Width - SlotWidth)), middle.Y);
            var isHalfWay = positions[i].Closed.Any(contact => contact.Terminals.Length > 2);
            yield return new CircleShape(
                "stop",
                face.OnPage(at),
                Stop,
                isHalfWay ? DetailOf(theme) : Paint.Filled(theme.PartLine)
            );
        }
    }
}
