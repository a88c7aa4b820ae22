using System.Globalization;
using WireText.Circuits;
using WireText.Drawing.Faces;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Lettering;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Pictures;

/// <summary>What the text says of parts and wires that has no place on the drawing itself, in lines for under it.</summary>
internal static class ToldParts
{
    /// <summary>A part's own lead is no longer than this from body to joint, in millimetres: common practice.</summary>
    private const double LongestLead = 35;

    /// <summary>Remarks and words of definitions that stand on no part, or not whole.</summary>
    public static IEnumerable<string> Remarks(Scene scene)
    {
        foreach (var face in scene.Parts)
        {
            var part = scene.PartOf(face);
            var words = new List<string>();
            if (part.Remark is { Length: > 0 } remark && !IsShown(face.Face, remark))
            {
                words.Add(remark);
            }

            if (
                part.Definition.Remark is { Length: > 0 } definition
                && (
                    !StandardParts.Define(part.Definition)
                    || face.Face.Lugs.Select(lug => lug.Section).Distinct().Count() > 1
                )
            )
            {
                words.Add(definition);
            }

            if (face.Face.Layout.Seat is not null)
            {
                words.AddRange(scene.LookOf(face).LinesBeside(part).Select(line => line.Text));
            }

            if (words.Count > 0)
            {
                yield return $"{part.Name}: {string.Join(", ", words)}";
            }
        }
    }

    /// <summary>Wires of a stated length or gauge.</summary>
    public static IEnumerable<string> StatedLengths(Scene scene, Func<Wire, string> endsOf)
    {
        foreach (var wire in scene.Wires.Select(wire => wire.Wire))
        {
            string?[] words =
            [
                wire.Colour?.Name,
                wire.IsSleeved ? "sleeved" : null,
                wire.LengthMetres is { } length ? $"{Text(1000 * length)} mm" : null,
                wire.Gauge is { } gauge ? $"AWG {Text(gauge)}" : null,
            ];
            if (wire.LengthMetres is not null || wire.Gauge is not null)
            {
                yield return $"{endsOf(wire)}  {string.Join(", ", words.OfType<string>())}";
            }
        }
    }

    /// <summary>Cables that are twisted, and whose cores do not run side by side in the drawing.</summary>
    public static IEnumerable<string> UndrawnTwists(Scene scene, Func<Wire, string> endsOf)
    {
        var drawn = TwistedPairs
            .In(scene)
            .Where(pair => !pair.Twists.IsEmpty)
            .Select(pair => pair.Cable.Index)
            .ToHashSet();
        return scene
            .Circuit.Cables.Where(cable => cable.IsTwisted && !drawn.Contains(cable.Index))
            .Select(cable => string.Join(" with ", cable.Cores.Select(core => endsOf(scene.Circuit.Wires[core]))));
    }

    /// <summary>Leads of small parts that are longer than such a part has.</summary>
    public static IEnumerable<string> LongLeads(Scene scene, Func<Wire, string> endsOf) =>
        scene
            .Wires.Where(wire =>
                IsOwnLead(scene, wire.Wire) && Polyline.Length(wire.Route.Points.AsSpan()) > LongestLead
            )
            .Select(wire => endsOf(wire.Wire));

    private static bool IsOwnLead(Scene scene, Wire wire) =>
        !wire.IsSleeved
        && wire.Colour is { IsBare: true }
        && new[] { wire.From, wire.To }.Any(lug =>
            lug >= 0
            && scene.Circuit.PartOf(scene.Circuit.Lugs[lug]) is { } part
            && LookList.Of(part).HangsByTwoLeads(part)
        );

    /// <summary>True where it stands on the part or beside it: whole, or in the place of a value with its end.</summary>
    private static bool IsShown(Face face, string remark) =>
        face
            .Inside.Concat(face.Outside)
            .Any(line => line.Kind == FaceLineKind.Remark || line.Text == DrawnText.Clean(remark));

    private static string Text(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
