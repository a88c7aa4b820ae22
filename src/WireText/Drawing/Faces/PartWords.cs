using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>What stands on a part or beside it: its name, its value or model, and the mark printed on the real one.</summary>
internal static class PartWords
{
    /// <summary>A remark of more lines stands under the picture instead.</summary>
    private const int MostRemarkLines = 2;

    /// <summary>Inside the body where all of it fits; a two-lead part has its value on the body and its name beside it.</summary>
    public static (ImmutableArray<FaceLine> Inside, Box? Box, ImmutableArray<FaceLine> Outside) Place(
        Circuit circuit,
        Part part,
        FaceBody body,
        ImmutableArray<FaceLug> lugs,
        CaseSeats seats
    )
    {
        var look = LookList.Of(part);
        var name = FaceLine.Fitting(FaceLineKind.Name, part.Name);
        var rest = Rest(circuit, part, look);
        if (seats.Of(part) is not null)
        {
            // Its value and its mark on one line under the name; a mark that is too long is read off the part.
            foreach (var words in new[] { rest, [.. rest.Take(1)] }.Where(lines => !lines.IsEmpty))
            {
                var value = FaceLine.Fitting(FaceLineKind.Value, string.Join(' ', words.Select(line => line.Text)));
                if (SpotFor(body, [], [name, value]) is { } seated)
                {
                    return ([name, value], seated, []);
                }
            }
        }

        var remark = RemarkUnderValue(part);
        if (look.HangsByTwoLeads(part))
        {
            ImmutableArray<FaceLine> beside = [.. look.LinesBeside(part), .. remark];
            return !look.HasValueOnBody || rest.IsEmpty || SpotFor(body, [], rest) is not { } spot
                ? ([], null, [name, .. rest, .. beside])
                : (rest, spot, [name, .. beside]);
        }

        ImmutableArray<FaceLine> all = [name, .. rest];
        if (look.HasWordsBeside)
        {
            return ([], null, [.. all, .. remark]);
        }

        if (look.LineWithRoom(circuit, part) is { } more && SpotFor(body, lugs, [.. all, more]) is { } roomy)
        {
            return ([.. all, more], roomy, remark);
        }

        var kept = seats.TakenOn(part);
        if (!remark.IsEmpty && SpotFor(body, lugs, [.. all, .. remark], kept) is { } whole)
        {
            return ([.. all, .. remark], whole, []);
        }

        return SpotFor(body, lugs, all, kept) is { } box ? (all, box, remark) : ([], null, [.. all, .. remark]);
    }

    /// <summary>The author's words where they do not stand in the place of the value; none where they are too long for a part.</summary>
    private static ImmutableArray<FaceLine> RemarkUnderValue(Part part)
    {
        if (part.Remark is not { Length: > 0 } remark || string.IsNullOrEmpty(part.ValueLabel ?? part.TaperLabel))
        {
            return [];
        }

        return RemarkLines(remark);
    }

    /// <summary>The author's words in as many lines as they take; none where these are too many for a part.</summary>
    private static ImmutableArray<FaceLine> RemarkLines(string remark)
    {
        var lines = Wrapped(Tokens.WidestLabel);
        if (lines.Count > MostRemarkLines)
        {
            return [];
        }

        // As narrow as it goes in as many lines, so that no word is left alone in the last.
        var narrower = lines;
        for (
            var width = Tokens.WidestLabel - 1;
            width > 0 && narrower.Count == lines.Count && !IsCut(narrower);
            width--
        )
        {
            (lines, narrower) = (narrower, Wrapped(width));
        }

        return [.. lines.Select(line => new FaceLine(FaceLineKind.Remark, line))];

        IReadOnlyList<string> Wrapped(double width) =>
            DrawnText.Wrap(remark, TextWeight.Regular, Tokens.MarkSize, width);

        bool IsCut(IReadOnlyList<string> wrapped) => string.Join(' ', wrapped) != string.Join(' ', lines);
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

    private static ImmutableArray<FaceLine> Rest(Circuit circuit, Part part, Look look)
    {
        var words = new[] { part.ValueLabel, part.TaperLabel }.Where(word => !string.IsNullOrEmpty(word));
        var value = string.Join(' ', words);
        var remark = value.Length == 0 && part.Remark is { Length: > 0 } said ? RemarkLines(said) : [];
        if (remark.Length > 1 && look.LineWithRoom(circuit, part) is not null)
        {
            // How its coil is wound needs the room; the words stand under the picture.
            remark = [];
        }

        ImmutableArray<FaceLine> lines =
            value.Length > 0 ? [FaceLine.Fitting(FaceLineKind.Value, value)]
            : remark.Length == 1 ? [remark[0] with { Kind = FaceLineKind.Value }]
            : !remark.IsEmpty ? remark
            : look.IsToldByModel ? [FaceLine.Fitting(FaceLineKind.Value, part.Definition.Model)]
            : [];
        return [.. lines, .. look.MoreLines(circuit, part)];
    }
}
