using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Pictures;

/// <summary>Everything that painters read: the circuit, its faces, and where layout put them, moved to their place on the page.</summary>
internal sealed class Scene
{
    private readonly Dictionary<int, LugLook> drawn = [];

    public Scene(Circuit circuit, LayoutResult layout, PictureOptions options)
        : this(circuit, options.Faces.IsEmpty ? FaceBuilder.BuildFaces(circuit) : options.Faces, layout, options) { }

    /// <param name="faces">Those of some of the circuit's parts.</param>
    public Scene(Circuit circuit, ImmutableArray<Face> faces, LayoutResult layout, PictureOptions options)
    {
        Circuit = circuit;
        Layout = layout;
        Options = options;
        Parts = PairParts(faces, layout);
        Wires = PairWires(circuit, layout);
        foreach (var face in Parts.Select(part => part.Face))
        {
            foreach (var lug in face.Lugs)
            {
                drawn[lug.Lug] = lug.Look;
            }

            foreach (var surface in face.Surfaces)
            {
                drawn[surface.Lug] = LugLook.Riveted;
            }
        }
    }

    public Circuit Circuit { get; }

    public LayoutResult Layout { get; }

    public PictureOptions Options { get; }

    public Theme Theme => Options.Theme;

    /// <summary>In the order of the circuit, a part that lies on another after that; a part that layout left out is not here.</summary>
    public ImmutableArray<PlacedFace> Parts { get; }

    /// <summary>In the order of the circuit.</summary>
    public ImmutableArray<SceneWire> Wires { get; }

    /// <summary>Where the names of lugs stand so far; shared with the larger views of the same parts.</summary>
    public NameSides NameSides { get; init; } = new();

    public Part PartOf(PlacedFace face) => Circuit.Parts[face.Index];

    public Look LookOf(PlacedFace face) => LookList.Of(PartOf(face));

    /// <summary>True for a part with the sign that heat harms it.</summary>
    public bool HasHeatSign(PlacedFace face) => Options.ForBench && PartOf(face).IsHeatSensitive;

    public PlacedFace? FindPart(int part) => Parts.FirstOrDefault(p => p.Index == part);

    /// <summary>The wires that are drawn to a lug, and the braids whose tails are, in the order of the circuit.</summary>
    public ImmutableArray<Wire> WiresAt(int lug) =>
        [.. Circuit.Wires.Where(wire => wire.Touches(lug) && (IsDrawn(wire) || HasTailAt(wire, Circuit.NameOf(lug))))];

    /// <summary>True for a lug or metal of a part that is drawn here.</summary>
    public bool HasLug(int lug) => drawn.ContainsKey(lug);

    /// <summary>True where something is soldered on. A pickup's or battery's lead is its first wire itself; a second one is soldered to it.</summary>
    public bool IsSoldered(int lug) =>
        drawn.TryGetValue(lug, out var look) && WiresAt(lug).Length >= (look == LugLook.Lead ? 2 : 1);

    /// <summary>The joints on metal that takes many: where each lies, and the id of its wire or braid.</summary>
    public IEnumerable<(Point At, string WireId)> JointsOn(FaceSurface surface)
    {
        var name = Circuit.NameOf(surface.Lug);
        var wires = from wire in Wires from end in EndsAt(wire, surface.Lug) select (end, wire.Wire.Id);
        var tails =
            from braid in Layout.Braids
            from tail in braid.Tails
            from end in TailEndsAt(tail, name)
            select (end, tail.Wire.Id);
        return wires.Concat(tails);
    }

    private static IEnumerable<Point> EndsAt(SceneWire wire, int lug)
    {
        if (wire.Wire.From == lug)
        {
            yield return wire.Route.Points[0];
        }

        if (wire.Wire.To == lug)
        {
            yield return wire.Route.Points[^1];
        }
    }

    private static IEnumerable<Point> TailEndsAt(RoutedWire tail, string lug)
    {
        if (tail.Wire.From == lug)
        {
            yield return tail.Points[0];
        }

        if (tail.Wire.To == lug)
        {
            yield return tail.Points[^1];
        }
    }

    private bool IsDrawn(Wire wire) => Wires.Any(drawn => drawn.Wire.Index == wire.Index);

    private bool HasTailAt(Wire wire, string lug) =>
        Layout
            .Braids.Where(braid => braid.Cable.BraidId == wire.Id)
            .SelectMany(braid => braid.Tails)
            .Any(tail => tail.Wire.From == lug || tail.Wire.To == lug);

    /// <summary>What a shape of that lug shows.</summary>
    public ImmutableArray<(string Name, string Value)> Shows(int lug) =>
        [
            ("lug", Circuit.NameOf(lug)),
            ("part", Circuit.PartOf(Circuit.Lugs[lug]).Name),
            ("net", Text(Circuit.Nets.OneNet[lug])),
        ];

    public static string Text(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private ImmutableArray<PlacedFace> PairParts(ImmutableArray<Face> faces, LayoutResult layout)
    {
        var placed = layout.Parts.ToDictionary(part => part.Part.Id, StringComparer.Ordinal);
        return
        [
            .. faces
                .OrderBy(face => Math.Max(face.Part, HostOf(face)))
                .ThenBy(face => face.Layout.Seat is not null)
                .Where(face => placed.ContainsKey(face.Layout.Id))
                .Select(face => new PlacedFace(face, placed[face.Layout.Id])),
        ];
    }

    private int HostOf(Face face) => face.Layout.Seat is { } seat ? Circuit.FindPart(seat.Host)!.Index : -1;

    private static ImmutableArray<SceneWire> PairWires(Circuit circuit, LayoutResult layout)
    {
        var routed = layout.Wires.ToDictionary(wire => wire.Wire.Id, StringComparer.Ordinal);
        return
        [
            .. circuit
                .Wires.Where(wire => routed.ContainsKey(wire.Id))
                .Select(wire => new SceneWire(wire, routed[wire.Id])),
        ];
    }
}

/// <summary>A wire of the circuit with its route.</summary>
internal sealed record SceneWire(Wire Wire, RoutedWire Route);
