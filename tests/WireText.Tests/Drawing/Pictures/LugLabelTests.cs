using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Testing;
using WireText.Tests.Parts;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>Nobody may have to guess which lug a name belongs to, or read it through a wire.</summary>
public class LugLabelTests
{
    private const double HalfOfAWire = (Tokens.WireCore / 2) + Tokens.Casing;

    public static TheoryData<string> Examples => Rows.Of(Repository.ExampleNames);

    [Theory, MemberData(nameof(Examples))]
    public void LugLabels_OfAnExample_StandByTheirOwnLugs(string example)
    {
        var picture = Drawings.PictureOf(File.ReadAllText(Repository.PathOf("examples", example)));

        Assert.NotEmpty(LabelsOf([.. All(picture.Items)]));
        AssertOwnLugs(picture);
    }

    [Theory, MemberData(nameof(DeclaredParts.Rows), MemberType = typeof(DeclaredParts))]
    public void LugLabels_OfAStandardPart_StandByTheirOwnLugs(string kind, string model) =>
        AssertOwnLugs(Drawings.PictureOf(DeclaredParts.Line(kind, model)));

    [Theory, MemberData(nameof(Examples))]
    public void LugLabels_OfAnExample_LieUnderNoWire(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var items = All(Drawings.PictureOf(text, effort: LayoutEffort.Full).Items).ToList();
        var cores = items.Where(found => found.Item is PathShape { Class: "core" }).ToList();
        Assert.NotEmpty(cores);
        foreach (var label in Every.Of(LabelsOf(items)))
        {
            foreach (var (_, _, core) in cores)
            {
                Assert.False(Meets((PathShape)core, label.Box), $"a wire runs over the name of {label.Lug}");
            }
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void LugLabels_OfAPickup_KeepClearOfTheLineOfItsCoils(string example)
    {
        var items = All(Drawings.PictureOf(File.ReadAllText(Repository.PathOf("examples", example))).Items).ToList();
        var coils = items.Select(found => found.Item).OfType<RectangleShape>().Where(item => item.Class == "coil");
        Assert.NotEmpty(coils);
        foreach (var label in Every.Of(LabelsOf(items)))
        {
            Assert.DoesNotContain(
                coils,
                coil =>
                    coil.Box.X < label.Box.Right
                    && label.Box.X < coil.Box.Right
                    && coil.Box.Y < label.Box.Bottom
                    && label.Box.Y < coil.Box.Bottom
            );
        }
    }

    [Fact]
    public void LugLabels_OfAButton_DoNotReadAsOneNumber()
    {
        var labels = LabelsOf([.. All(Drawings.PictureOf("button mute momentary").Items)]);

        Assert.Equal(2, labels.Count);
        var (one, two) = (labels[0].Box, labels[1].Box);
        var isOnOneLine = one.Y < two.Bottom && two.Y < one.Bottom;
        Assert.True(!isOnOneLine || Math.Max(one.X - two.Right, two.X - one.Right) >= 1.3, $"{one} {two}");
    }

    [Fact]
    public void LugLabels_OfABoard_KeepOffItsEdgeAndItsHoles()
    {
        var items = All(Drawings.PictureOf("preamp pre buffer").Items).ToList();
        var board = items.Select(found => found.Item).OfType<RectangleShape>().Single(item => item.Class == "body").Box;
        CircleShape[] holes =
        [
            .. items.Select(found => found.Item).OfType<CircleShape>().Where(item => item.Class == "detail"),
        ];
        Assert.Equal(4, holes.Length);
        foreach (var (lug, name) in Every.Of(LabelsOf(items)))
        {
            Assert.True(name.X - board.X >= 0.8 && board.Right - name.Right >= 0.8, $"{lug} at the edge: {name}");
            Assert.DoesNotContain(holes, hole => Distance(name, hole.Centre) <= hole.Radius);
        }
    }

    private static void AssertOwnLugs(Picture picture)
    {
        var items = All(picture.Items).ToList();
        var labels = LabelsOf(items);
        var lugs = items
            .Where(found => found.Group == "lug" && found.Item is CircleShape { Class: "eyelet" })
            .Select(found => (Lug: found.Shows, At: ((CircleShape)found.Item).Centre))
            .ToList();
        foreach (var lug in lugs.Where(lug => labels.Any(label => label.Lug == lug.Lug)))
        {
            var nearest = labels.MinBy(label => Distance(label.Box, lug.At));
            Assert.Equal(lug.Lug, nearest.Lug);
        }

        foreach (var label in labels)
        {
            Assert.Equal(label.Lug, lugs.MinBy(lug => Distance(label.Box, lug.At)).Lug);
        }
    }

    private static List<(string Lug, Box Box)> LabelsOf(List<(string Group, string Shows, PictureItem Item)> items) =>
        [
            .. items
                .Where(found => found.Item is TextItem { Class: "lug-label" })
                .Select(found => (found.Shows, ((TextItem)found.Item).Bounds)),
        ];

    private static IEnumerable<(string Group, string Shows, PictureItem Item)> All(
        IEnumerable<PictureItem> items,
        string group = "",
        string shows = ""
    )
    {
        foreach (var item in items)
        {
            if (item is PictureGroup inner)
            {
                var lug = inner.Shows.FirstOrDefault(pair => pair.Name == "lug").Value ?? "";
                foreach (var found in All(inner.Items, inner.Class, lug))
                {
                    yield return found;
                }
            }
            else
            {
                yield return (group, shows, item);
            }
        }
    }

    /// <summary>A path as wide as its wire: lines and corners as they are drawn, hops as their chords.</summary>
    private static bool Meets(PathShape path, Box label)
    {
        const int Samples = 40;
        for (var i = 1; i < path.Steps.Length; i++)
        {
            var (from, to) = (path.Steps[i - 1].To, path.Steps[i].To);
            for (var sample = 0; sample <= Samples; sample++)
            {
                var share = (double)sample / Samples;
                var at = path.Steps[i] is PathStep.Turn turn
                    ? Between(Between(from, turn.Corner, share), Between(turn.Corner, to, share), share)
                    : Between(from, to, share);
                if (Distance(label, at) < HalfOfAWire)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static Point Between(Point from, Point to, double share) =>
        new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));

    private static double Distance(Box box, Point at)
    {
        var dx = Math.Max(0, Math.Max(box.X - at.X, at.X - box.Right));
        var dy = Math.Max(0, Math.Max(box.Y - at.Y, at.Y - box.Bottom));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
