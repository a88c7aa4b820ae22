using WireText.Circuits;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Layout;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces;

/// <summary>
/// The capacitors and resistors that lie on the back of a pot: one lead on a lug of its lower row, the other on its case, as a tone
/// capacitor is soldered on the bench. A pot has room for one.
/// </summary>
internal sealed class CaseSeats
{
    /// <summary>Where the middle of the part lies, in the pot's own frame, before its leads are moved onto the lattice.</summary>
    private static readonly Point Middle = new(0, 4.2);

    /// <summary>The body of such a part, wide enough for its name over its value.</summary>
    private static readonly Size Body = new(12.4, 7.6);

    /// <summary>What it takes up at most, leads included, wherever the lattice moves it by up to a millimetre.</summary>
    private static readonly Box Room = new(-9.4, Middle.Y - 0.2 - (Body.Height / 2), 18.8, Body.Height + 1.2);

    /// <summary>The sign of one that heat harms reaches so far above it, in millimetres.</summary>
    private const double AboveForHeat = 1.4;

    /// <summary>A smaller case has no room for it.</summary>
    private const double LeastRadius = 12;

    /// <summary>With more wires on the case, the part's own lead among them, their joints need the room that it takes.</summary>
    private const int MostJoints = 6;

    private readonly Dictionary<int, LayoutSeat> seats = [];
    private readonly Dictionary<int, Part> guests = [];

    public CaseSeats(Circuit circuit)
    {
        foreach (var part in circuit.Parts.Where(part => IsFree(circuit, part)))
        {
            if (SeatOf(circuit, part) is { } seat && guests.TryAdd(seat.Host.Index, part))
            {
                seats.Add(part.Index, new LayoutSeat(seat.Host.Name, Middle, seat.Turn));
            }
        }
    }

    /// <summary>Where a part lies on another; null for one that lies on none.</summary>
    public LayoutSeat? Of(Part part) => seats.GetValueOrDefault(part.Index);

    /// <summary>What of a pot's case the part on it needs; null when none lies there.</summary>
    public Box? TakenOn(Part pot) =>
        guests.GetValueOrDefault(pot.Index) is not { } guest ? null
        : guest.IsHeatSensitive
            ? Box.Spanning(new Point(Room.X, Room.Y - AboveForHeat), new Point(Room.Right, Room.Bottom))
        : Room;

    public FaceBody? BodyOf(Part part) =>
        seats.ContainsKey(part.Index) ? new FaceBody.Rectangle(Body.Width, Body.Height) : null;

    private static bool IsFree(Circuit circuit, Part part) =>
        LookList.Of(part).HangsByTwoLeads(part)
        && circuit.Places.All(place => place.Part != part.Index)
        && !circuit.Arrangement.Any(row => row.Contains(part.Index));

    private static (Part Host, int Turn)? SeatOf(Circuit circuit, Part part)
    {
        if (part.HangsOn is not var (first, second))
        {
            return null;
        }

        var (lug, other) = circuit.Lugs[first].IsMetal ? (second, first) : (first, second);
        var host = circuit.PartOf(circuit.Lugs[lug]);
        var isOnOneCase =
            LookList.Of(host).CarriesSmallParts
            && circuit.Lugs[other].Part == host.Index
            && circuit.Lugs[other].IsMetal;
        if (
            !isOnOneCase
            || circuit.Lugs[lug].Terminal.At is not { } at
            || !HasRoom(circuit, host, at)
            || circuit.Wires.Count(wire => wire.Touches(other)) > MostJoints
        )
        {
            return null;
        }

        // The lead to the lug comes out on the lug's side; the first lead of a part points to the left.
        var isFirst = lug == first;
        return (host, isFirst == at.X <= 0 ? 0 : 180);
    }

    /// <summary>True when the lug is in the lower row and nothing sits on the case.</summary>
    private static bool HasRoom(Circuit circuit, Part host, Point lug) =>
        host.Definition.Body is BodyShape.Round round
        && round.Diameter / 2 >= LeastRadius
        && lug.Y > round.Diameter / 2
        && host.Lugs.Select(index => circuit.Lugs[index])
            .All(other => other.IsMetal || other.Terminal.At is not { } at || Math.Abs(at.Y) > round.Diameter / 2);
}
