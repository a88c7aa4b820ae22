using System.Text.RegularExpressions;
using WireText.Circuits;
using WireText.Drawing.Faces.Looks;
using WireText.Drawing.Layout;
using WireText.Parts;
using WireText.Testing;

namespace WireText.Tests.Drawing.Faces.Looks;

public class LookListTests
{
    public static TheoryData<string> Kinds => Rows.Of(StandardKinds);

    private static IEnumerable<string> StandardKinds => StandardParts.Catalogue.Kinds.Append(PartKinds.Splice);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Standard_OfEachKindThatTheLanguageKnows_HasALook(string kind)
    {
        Assert.NotNull(LookList.Standard.Find(kind, PartDefinition.StandardModel));
        Assert.NotNull(LookList.Standard.Find(kind.ToUpperInvariant(), PartDefinition.StandardModel));
    }

    [Fact]
    public void Find_OfAModelWithALookOfItsOwn_TakesThat()
    {
        var (one, all) = (new PlainLook(), new PlainLook());
        var looks = new LookList([new("lamp", Model: null, all), new("lamp", "red", one)]);

        Assert.Same(one, looks.Find("lamp", "Red"));
        Assert.Same(all, looks.Find("Lamp", "green"));
        Assert.Null(looks.Find("bulb", "red"));
    }

    /// <summary>A new kind is one look and its line in the list: nothing else in the drawing may ask for a kind by name.</summary>
    [Fact]
    public void Kind_ByName_IsKnownToLooksAlone()
    {
        var name = new Regex($"\"({string.Join('|', StandardKinds)})\"|PartKinds\\.\\w+", RegexOptions.IgnoreCase);
        var drawing = Repository.PathOf("src", "WireText", "Drawing");
        var looks = Path.Combine(drawing, "Faces", "Looks");

        var bad = Repository
            .FilesBelow("src/WireText/Drawing", "*.cs")
            .Where(file => !file.StartsWith(looks, StringComparison.Ordinal))
            .Where(file => name.IsMatch(File.ReadAllText(file)))
            .Select(file => Path.GetRelativePath(drawing, file));

        Assert.Matches(name, File.ReadAllText(Path.Combine(looks, "LookList.cs")));
        Assert.Empty(bad);
    }

    private sealed class PlainLook : Look
    {
        public override LayoutZone ZoneOf(Part part) => LayoutZone.Ground;
    }
}
