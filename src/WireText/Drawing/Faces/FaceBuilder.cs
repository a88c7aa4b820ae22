using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>Turns a circuit into what has to be laid out: the faces of its parts, and its wires.</summary>
public static class FaceBuilder
{
    public static LayoutProblem BuildProblem(Circuit circuit) => BuildProblem(circuit, BuildFaces(circuit));

    /// <param name="faces">Those of the circuit's parts, in their order.</param>
    public static LayoutProblem BuildProblem(Circuit circuit, ImmutableArray<Face> faces) =>
        new(
            [.. faces.Select(face => face.Layout)],
            [.. circuit.Wires.Where(IsRouted).Select(wire => WireFaces.Of(circuit, wire))],
            [.. circuit.Cables.Select(cable => CableOf(circuit, cable))],
            [.. circuit.Arrangement.Select(row => row.Select(cell => NameOf(circuit, cell)).ToImmutableArray())]
        );

    /// <summary>One face for each part, in their order.</summary>
    public static ImmutableArray<Face> BuildFaces(Circuit circuit) => BuildFaces(circuit, new CaseSeats(circuit));

    private static ImmutableArray<Face> BuildFaces(Circuit circuit, CaseSeats seats) =>
        [.. circuit.Parts.Select(part => BuildFace(circuit, part, seats))];

    /// <summary>True for what has a path of its own; a braid goes where its cores go.</summary>
    private static bool IsRouted(Wire wire) =>
        wire.Kind != WireKind.Braid && wire.From >= 0 && wire.To >= 0 && wire.From != wire.To;

    private static string? NameOf(Circuit circuit, int? cell) => cell is { } part ? circuit.Parts[part].Name : null;

    private static Face BuildFace(Circuit circuit, Part part, CaseSeats seats)
    {
        var lugs = part.Lugs.Select(index => circuit.Lugs[index]).Where(lug => !lug.IsInner).ToImmutableArray();
        var wireCount = circuit.Wires.Count(wire => lugs.Any(lug => wire.Touches(lug.Index)));
        var look = LookList.Of(part);
        var body =
            seats.BodyOf(part) ?? FaceBody.Of(part.Definition.Body ?? look.UsualBody(part, lugs.Length, wireCount));
        var places = LugPlaces.Places(body, [.. lugs.Select(lug => lug.Terminal)]);
        var surface = SurfaceOf(part, lugs, places, body);
        var others = Enumerable.Range(0, lugs.Length).Where(index => index != surface).ToImmutableArray();
        var faceLugs = FaceLugs(part, body, [.. others.Select(i => lugs[i])], [.. others.Select(i => places[i])]);
        var (inside, box, outside) = PartWords.Place(circuit, part, body, faceLugs, seats);
        ImmutableArray<FaceSurface> surfaces = surface < 0 ? [] : [new FaceSurface(lugs[surface].Index, body.Outline)];
        var layout = new LayoutPart(
            part.Name,
            look.ZoneOf(part),
            OrderInZone(circuit, part),
            [body.Outline, .. Wafers.Under(body, faceLugs).Select(wafer => new Outline.Rectangle(wafer))],
            [.. faceLugs.Select(lug => LayoutLugOf(circuit, lug))],
            [
                .. surfaces.Select(s => new LayoutSurface(circuit.NameOf(s.Lug), s.Shape)
                {
                    Cover = look.CoverOf(faceLugs),
                }),
            ],
            box,
            outside.IsEmpty ? null : FaceLine.SizeOf(outside),
            GivenPoint(circuit, part),
            GivenTurn(circuit, part)
        )
        {
            Seat = seats.Of(part),
        };
        return new Face(part.Index, layout, faceLugs, surfaces, inside, outside);
    }

    /// <summary>The metal that is the body itself, as an index among the lugs, or -1. A splice is joined along its sleeve.</summary>
    private static int SurfaceOf(Part part, ImmutableArray<Lug> lugs, ImmutableArray<Point> places, FaceBody body)
    {
        for (var index = 0; index < lugs.Length; index++)
        {
            var isHousing = lugs[index].IsMetal && !lugs[index].IsLead && body.Contains(places[index], 0);
            if (isHousing || (LookList.Of(part).IsSolderedAlongItsBody && lugs.Length == 1))
            {
                return index;
            }
        }

        return -1;
    }

    private static ImmutableArray<FaceLug> FaceLugs(
        Part part,
        FaceBody body,
        ImmutableArray<Lug> lugs,
        ImmutableArray<Point> places
    )
    {
        var isTwoLead = LookList.Of(part).HangsByTwoLeads(part);
        return
        [
            .. lugs.Select(
                (lug, index) =>
                    new FaceLug(
                        lug.Index,
                        DrawnText.Clean(lug.Terminal.Name[(lug.Terminal.Name.LastIndexOf('.') + 1)..]),
                        DrawnText.Clean(lug.Terminal.Name[..Math.Max(0, lug.Terminal.Name.LastIndexOf('.'))]),
                        places[index],
                        LookOf(lug, body, places[index]),
                        isTwoLead ? TwoLeadExits(places[index]) : LugPlaces.Exits(body, places, index)
                    )
            ),
        ];
    }

    private static LayoutLug LayoutLugOf(Circuit circuit, FaceLug lug) =>
        new(circuit.NameOf(lug.Lug), lug.At, lug.Exits) { Name = lug.Look == LugLook.Lead ? null : lug.LabelSize };

    private static LugLook LookOf(Lug lug, FaceBody body, Point at) =>
        lug.IsLead ? LugLook.Lead
        : body.Contains(at, 0) ? LugLook.Riveted
        : LugLook.Tab;

    private static ImmutableArray<Side> TwoLeadExits(Point at) =>
        [at.X < 0 ? Side.West : Side.East, Side.North, Side.South];

    private static int OrderInZone(Circuit circuit, Part part)
    {
        var zone = LookList.Of(part).ZoneOf(part);
        Part[] all = [.. circuit.Parts.Where(other => LookList.Of(other).ZoneOf(other) == zone)];
        return zone == LayoutZone.Pickup
            ? PickupOrder.Of([.. all.Select(other => other.Name)])[Array.IndexOf(all, part)]
            : Array.IndexOf(all, part);
    }

    private static Point? GivenPoint(Circuit circuit, Part part) =>
        circuit.Places.FirstOrDefault(place => place.Part == part.Index)?.At;

    private static int? GivenTurn(Circuit circuit, Part part) =>
        circuit.Places.FirstOrDefault(place => place.Part == part.Index) is { } given && double.IsFinite(given.Turn)
            ? (((int)Math.Round(given.Turn % 360 / 90) % 4) + 4) % 4 * 90
            : null;

    private static LayoutCable CableOf(Circuit circuit, Cable cable)
    {
        var braid = cable.Braid is { } index ? circuit.Wires[index] : null;
        return new LayoutCable(
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"cable-{cable.Index + 1}"),
            [.. cable.Cores.Select(core => circuit.Wires[core].Id)],
            braid?.Id,
            EndOf(circuit, braid?.From),
            EndOf(circuit, braid?.To)
        );
    }

    private static string? EndOf(Circuit circuit, int? lug) => lug is >= 0 ? circuit.NameOf(lug.Value) : null;
}
