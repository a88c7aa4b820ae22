using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Lettering;
using WireText.Geometry;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Drawing.Faces;

/// <summary>What stands on a part or beside it: its name, its value or model, and the mark printed on the real one.</summary>
internal static class PartWords
{
    /// <summary>Inside the body where all of it fits; a two-lead part has its value on the body and its name beside it.</summary>
    public static (ImmutableArray<FaceLine> Inside, Box? Box, ImmutableArray<FaceLine> Outside) Place(
        Circuit circuit,
        Part part,
        FaceBody body,
        ImmutableArray<FaceLug> lugs,
        CaseSeats seats
    )
    {
        var name = Line(FaceLineKind.Name, part.Name);
        var rest = Rest(circuit, part).ToImmutableArray();
        if (seats.Of(part) is not null)
        {
            // Its value and its mark on one line, under the name where both fit.
            rest = rest.IsEmpty ? rest : [Line(FaceLineKind.Value, string.Join(' ', rest.Select(line => line.Text)))];
            if (SpotFor(body, [], [name, .. rest]) is { } seated)
            {
                return ([name, .. rest], seated, []);
            }
        }

        if (FaceSizes.IsTwoLead(part))
        {
            return rest.IsEmpty || SpotFor(body, [], rest) is not { } spot
                ? ([], null, [name, .. rest])
                : (rest, spot, [name]);
        }

        ImmutableArray<FaceLine> all = [name, .. rest];
        if (part.Kind is "metal" or "splice" or "jack")
        {
            return ([], null, all);
        }

        // How a coil is wound is left to the build sheet where a body has no room for it.
        var coil = part.Kind == "pickup" ? OnlyCoil(circuit, part) : null;
        if (coil is not null && SpotFor(body, lugs, [.. all, coil]) is { } roomy)
        {
            return ([.. all, coil], roomy, []);
        }

        return SpotFor(body, lugs, all, seats.TakenOn(part)) is { } box ? (all, box, []) : ([], null, all);
    }

    private static FaceLine? OnlyCoil(Circuit circuit, Part part)
    {
        var coils = part.Elements.Select(element => circuit.Elements[element]).OfType<Coil>().ToImmutableArray();
        var words = coils is [var coil] ? CoilWords.Describe(coil.Winding, coil.Magnet) : "";
        return words.Length > 0 ? Line(FaceLineKind.Value, words) : null;
    }

    private static Box? SpotFor(
        FaceBody body,
        ImmutableArray<FaceLug> lugs,
        ImmutableArray<FaceLine> lines,
        Box? kept = null
    )
    {
        var size = FaceLine.SizeOf(lines);
        // Where nothing stands above or below them it is enough that the capitals fit.
        var air = (lines[0].Size + lines[^1].Size) / 2 * (Tokens.LineHeight - DrawnText.CapHeight);
        var height = size.Height - (lines.Length == 1 || lugs.IsEmpty ? air : 0);
        var inset = lugs.IsEmpty ? Tokens.LabelGap : Tokens.TextInset;
        return TextSpot.Find(body, lugs, new Size(size.Width, height), inset, kept);
    }

    private static IEnumerable<FaceLine> Rest(Circuit circuit, Part part)
    {
        var value = Value(part);
        if (value.Length > 0)
        {
            yield return Line(FaceLineKind.Value, value);
        }

        if (part.Kind == "pot" && part.Definition.Model != PartDefinition.StandardModel)
        {
            yield return Line(FaceLineKind.Value, part.Definition.Model);
        }

        foreach (var element in part.Elements)
        {
            if (part.Kind == "cap" && circuit.Elements[element] is Capacitor capacitor)
            {
                if (MarkingCode.OfCapacitor(capacitor.Farads) is { } mark)
                {
                    yield return Line(FaceLineKind.Mark, mark);
                }

                yield break;
            }
        }
    }

    private static string Value(Part part)
    {
        var words = new[] { part.ValueLabel, part.TaperLabel }.Where(word => !string.IsNullOrEmpty(word));
        var value = string.Join(' ', words);
        return value.Length > 0 ? value
            : part.Remark is { Length: > 0 } remark ? remark
            : part.Kind is "switch" or "jack" or "preamp" ? part.Definition.Model
            : "";
    }

    private static FaceLine Line(FaceLineKind kind, string text)
    {
        var line = new FaceLine(kind, text);
        return line with { Text = DrawnText.Fit(text, line.Weight, line.Size, Tokens.WidestLabel) };
    }
}
