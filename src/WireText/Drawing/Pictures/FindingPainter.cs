using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Text;

namespace WireText.Drawing.Pictures;

/// <summary>Marks what findings are about: a ring, a triangle or a dot with the finding's number, so that colour is never the only sign.</summary>
internal sealed class FindingPainter(Scene scene, LabelSpace space)
{
    private const double Third = Math.PI * 2 / 3;

    /// <summary>How far from what it is about the number of a finding is looked for, in millimetres. Chosen by eye.</summary>
    private const double Farthest = 12;

    public IEnumerable<PictureGroup> Paint()
    {
        for (var i = 0; i < scene.Options.Findings.Length; i++)
        {
            var finding = scene.Options.Findings[i];
            var items = ImmutableArray.CreateBuilder<PictureItem>();
            foreach (var subject in finding.Subjects.Distinct())
            {
                items.AddRange(MarkSubject(finding.Severity, i + 1, subject));
            }

            if (items.Count > 0)
            {
                yield return new PictureGroup("finding", items.ToImmutable())
                {
                    Shows = [("finding", Scene.Text(i + 1)), ("check", finding.Id)],
                };
            }
        }
    }

    /// <summary>The shape of a severity with a number in it, as on the drawing and in the list under it.</summary>
    public static IEnumerable<PictureItem> Badge(Theme theme, Severity severity, int number, Point centre)
    {
        var colour = theme.Of(severity);
        var text = Scene.Text(number);
        var width = Math.Max(
            Tokens.FindingBadge,
            DrawnText.Width(text, TextWeight.SemiBold, Tokens.FindingNumberSize) + Tokens.TagPadding
        );
        var radius = width / 2;
        switch (severity)
        {
            case Severity.Error:
                var ring = new Paint(theme.Paper, colour, Tokens.FindingLine);
                yield return new CircleShape("finding-mark", centre, radius, ring);
                break;
            case Severity.Warning:
                yield return Triangle(centre, TriangleRadius(text), new Paint(theme.Paper, colour, Tokens.FindingLine));
                break;
            default:
                yield return new CircleShape("finding-mark", centre, radius, Shapes.Paint.Filled(colour));
                break;
        }

        var ink = severity is Severity.Error or Severity.Warning ? colour : theme.Paper;
        yield return TextItem.Centred(
            "finding-number",
            text,
            severity == Severity.Warning ? new Point(centre.X, centre.Y + (TriangleRadius(text) * 0.17)) : centre,
            TextWeight.SemiBold,
            severity == Severity.Warning ? Tokens.LugLabelSize : Tokens.FindingNumberSize,
            ink
        );
    }

    /// <summary>So large that all figures stand inside its line: the room half way up is half its side.</summary>
    private static double TriangleRadius(string number)
    {
        var wide = DrawnText.Width(number, TextWeight.SemiBold, Tokens.LugLabelSize) + (2 * Tokens.FindingLine);
        return Math.Max(Tokens.FindingBadge / 2 * 1.5, wide * 0.92);
    }

    private static PathShape Triangle(Point centre, double radius, Paint paint)
    {
        var corners = Enumerable
            .Range(0, 3)
            .Select(i => (i * Third) - (Math.PI / 2))
            .Select(angle => new Point(
                centre.X + (radius * Math.Cos(angle)),
                centre.Y + (radius * 0.15) + (radius * Math.Sin(angle))
            ))
            .ToImmutableArray();
        return new PathShape(
            "finding-mark",
            [
                new PathStep.Move(corners[0]),
                new PathStep.Line(corners[1]),
                new PathStep.Line(corners[2]),
                new PathStep.Close(corners[0]),
            ],
            paint
        );
    }

    private IEnumerable<PictureItem> MarkSubject(Severity severity, int number, Subject subject)
    {
        if (PlaceOf(subject) is not var (target, around))
        {
            yield break;
        }

        if (around is { } lug)
        {
            yield return new CircleShape(
                "finding-ring",
                lug,
                Tokens.FindingRing / 2,
                Shapes.Paint.Stroked(scene.Theme.Of(severity), Tokens.FindingLine)
            );
        }

        var size =
            severity == Severity.Warning
                ? (2 * TriangleRadius(Scene.Text(number))) - 0.2
                : Tokens.FindingBadge + Tokens.FindingLine;
        var box = space.Near(target.Grown(Farthest + (2 * size))).Best(BadgePlaces(target, size));
        space.Take(box);
        foreach (var item in Badge(scene.Theme, severity, number, box.Centre))
        {
            yield return item;
        }
    }

    /// <summary>The box that the number goes beside, and for a lug the point that the ring goes round; null when it is not on the drawing.</summary>
    private (Box Target, Point? Around)? PlaceOf(Subject subject)
    {
        if (subject.Kind == SubjectKind.Lug)
        {
            return PlaceOfLug(subject.Name) ?? PlaceOfPart(subject.Name.Split('.')[0]);
        }

        return PlaceOfPart(subject.Kind == SubjectKind.Part ? subject.Name : subject.Name.Split('=', '.')[0]);
    }

    private (Box, Point?)? PlaceOfLug(string name)
    {
        if (scene.Circuit.FindLug(name) is not { } lug || scene.FindPart(lug.Part) is not { } part)
        {
            return null;
        }

        foreach (var face in part.Face.Lugs.Where(face => face.Lug == lug.Index))
        {
            var at = part.OnPage(face.At);
            return (Box.Around(at, Tokens.FindingRing, Tokens.FindingRing), at);
        }

        return null;
    }

    private (Box, Point?)? PlaceOfPart(string name) =>
        scene.Circuit.FindPart(name) is { } part && scene.FindPart(part.Index) is { } placed
            ? (Box.Around(placed.RimAt(1, -1), 0.1, 0.1), null)
            : null;

    private static IEnumerable<Box> BadgePlaces(Box target, double size)
    {
        for (var ring = 0.0; ring <= Farthest; ring += 1)
        {
            var (dx, dy) = ((target.Width / 2) + (size / 2) + ring, (target.Height / 2) + (size / 2) + ring);
            foreach (var (x, y) in new[] { (1, -1), (1, 0), (0, -1), (-1, -1), (-1, 0), (1, 1), (0, 1), (-1, 1) })
            {
                var isDiagonal = x != 0 && y != 0;
                var share = isDiagonal ? 0.75 : 1;
                var centre = new Point(target.Centre.X + (x * dx * share), target.Centre.Y + (y * dy * share));
                yield return Box.Around(centre, size, size);
            }
        }
    }
}
