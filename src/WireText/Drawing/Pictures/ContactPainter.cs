using System.Collections.Immutable;
using WireText.Drawing.Faces;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Traces;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Paints contacts that are closed: a bar from lug to lug. An open contact has none.</summary>
internal sealed class ContactPainter(Scene scene)
{
    /// <summary>Those that a state which is followed goes through.</summary>
    public IEnumerable<PictureItem> Paint(Trace trace) => trace.Contacts.SelectMany(Paint);

    /// <summary>Each in a group with its place in the list, for who shows and hides them.</summary>
    public IEnumerable<PictureItem> Paint(IReadOnlyList<ContactBar> bars) =>
        bars.Select(
            (bar, i) => new PictureGroup("bar", [.. Paint([bar.From, bar.To])]) { Shows = [("bar", Scene.Text(i))] }
        );

    private IEnumerable<PictureItem> Paint(ImmutableArray<int> lugs)
    {
        (PlacedFace Part, Point At)[] places = [.. lugs.SelectMany(PlacesOf)];
        for (var i = 0; i + 1 < places.Length; i++)
        {
            var way = Way(places[i].Part, places[i].At, places[i + 1].At);
            yield return Bar(scene.Theme.Paper, Tokens.ContactBar + (2 * Tokens.Gap), way);
            yield return Bar(scene.Theme.Ink, Tokens.ContactBar, way);
        }
    }

    private static PathShape Bar(Colour colour, double width, Point[] way) =>
        PathShape.Through("contact", Shapes.Paint.Stroked(colour, width) with { HasRoundEnds = true }, way);

    /// <summary>
    /// Where lugs stand in a row at the rim the bar goes round inside them, so that it touches none that it passes; straight
    /// where they lie right across the part.
    /// </summary>
    private static Point[] Way(PlacedFace part, Point from, Point to)
    {
        var length = Point.Distance(from, to);
        if (length == 0)
        {
            return [from, to];
        }

        var centre = part.Bounds.Centre;
        var across = new Point(-(to.Y - from.Y) / length, (to.X - from.X) / length);
        var inwards = ((centre.X - ((from.X + to.X) / 2)) * across.X) + ((centre.Y - ((from.Y + to.Y) / 2)) * across.Y);
        if (Math.Abs(inwards) < Tokens.ContactReach)
        {
            return [from, to];
        }

        var aside = new Point(
            across.X * Math.Sign(inwards) * Tokens.ContactReach,
            across.Y * Math.Sign(inwards) * Tokens.ContactReach
        );
        return [from, from + aside, to + aside, to];
    }

    private IEnumerable<(PlacedFace Part, Point At)> PlacesOf(int lug) =>
        from part in scene.Parts
        from own in part.Face.Lugs
        where own.Lug == lug
        select (part, part.OnPage(own.At));
}
