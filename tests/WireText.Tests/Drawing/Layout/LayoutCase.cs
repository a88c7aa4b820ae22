using System.Collections.Immutable;
using System.Text.Json;
using WireText.Drawing.Layout;
using WireText.Geometry;
using WireText.Testing;

namespace WireText.Tests.Drawing.Layout;

/// <summary>The layout cases in <c>Cases/</c>: invented circuits in 10 px a pitch of 2 mm, read as layout problems.</summary>
internal static class LayoutCase
{
    private const double MillimetresPerPx = 0.2;

    public static readonly ImmutableArray<string> Names =
    [
        "c1-one-pickup",
        "c2-duo-lever-mute",
        "c3-trio-fiveway",
        "c4-twin-hb-pushpull",
        "c5-dense-fourpole",
    ];

    /// <param name="isGiven">True to put each part at its reference place, false to let layout find all places.</param>
    public static LayoutProblem Read(string name, bool isGiven)
    {
        var path = Repository.PathOf("tests", "WireText.Tests", "Drawing", "Layout", "Cases", name + ".json");
        using var json = JsonDocument.Parse(File.ReadAllText(path));
        var root = json.RootElement;
        return new LayoutProblem(
            [.. root.GetProperty("parts").EnumerateArray().Select(part => PartOf(part, isGiven))],
            [.. root.GetProperty("wires").EnumerateArray().Select(WireOf)],
            [],
            []
        );
    }

    private static LayoutPart PartOf(JsonElement part, bool isGiven)
    {
        var id = part.GetProperty("id").GetString()!;
        var place = part.GetProperty("place");
        var text = part.GetProperty("textBox");
        return new LayoutPart(
            id,
            Enum.Parse<LayoutZone>(part.GetProperty("zone").GetString()!, ignoreCase: true),
            part.GetProperty("order").GetInt32(),
            [.. part.GetProperty("body").EnumerateArray().Select(OutlineOf)],
            [.. part.GetProperty("lugs").EnumerateArray().Select(lug => LugOf(id, lug))],
            [
                .. part.GetProperty("surfaces")
                    .EnumerateArray()
                    .Select(s => new LayoutSurface($"{id}.{s.GetProperty("id").GetString()}", OutlineOf(s))),
            ],
            text.ValueKind == JsonValueKind.Null ? null : BoxOf(text),
            text.ValueKind == JsonValueKind.Null
                ? new Size(1.6 * part.GetProperty("label").GetString()!.Length, 3)
                : null,
            isGiven ? new Point(Number(place, "x"), Number(place, "y")) : null,
            isGiven ? place.GetProperty("rot").GetInt32() : null
        );
    }

    private static LayoutLug LugOf(string part, JsonElement lug) =>
        new(
            $"{part}.{lug.GetProperty("id").GetString()}",
            new Point(Number(lug, "x"), Number(lug, "y")),
            [.. lug.GetProperty("exits").GetString()!.Select(letter => (Side)"NESW".IndexOf(letter))]
        );

    private static LayoutWire WireOf(JsonElement wire)
    {
        var colour = wire.GetProperty("color").GetString()!;
        var hasTag = wire.GetProperty("role").GetString() != "lead" && colour != "bare";
        var rank = colour switch
        {
            "bare" => WireRank.Screen,
            "black" => WireRank.Ground,
            _ => WireRank.Signal,
        };
        return new LayoutWire(
            wire.GetProperty("id").GetString()!,
            wire.GetProperty("from").GetString()!,
            wire.GetProperty("to").GetString()!,
            colour,
            rank,
            hasTag ? new Size(4.4, 2.4) : null
        );
    }

    private static Outline OutlineOf(JsonElement shape) =>
        shape.GetProperty("shape").GetString() == "circle"
            ? new Outline.Circle(new Point(Number(shape, "cx"), Number(shape, "cy")), Number(shape, "r"))
            : new Outline.Rectangle(BoxOf(shape));

    private static Box BoxOf(JsonElement box) =>
        new(Number(box, "x"), Number(box, "y"), Number(box, "w"), Number(box, "h"));

    private static double Number(JsonElement element, string name) =>
        element.GetProperty(name).GetDouble() * MillimetresPerPx;
}
