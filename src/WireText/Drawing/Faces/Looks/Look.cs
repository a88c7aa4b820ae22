using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>
/// How the parts of one kind, or of one model, look from behind: where they belong, how large they are, what stands on them and
/// how they are painted. Each look has a file of its own; what it does not say is as for any part.
/// </summary>
public abstract class Look
{
    /// <summary>Where such a part belongs in the cavity when the author says nothing.</summary>
    public abstract LayoutZone ZoneOf(Part part);

    /// <summary>The body of a part whose definition gives none.</summary>
    /// <param name="lugs">How many lugs and leads it has.</param>
    /// <param name="wires">How many wires end on it.</param>
    public virtual BodyShape UsualBody(Part part, int lugs, int wires) => FaceSizes.Around(part.Definition, lugs);

    /// <summary>True for a small body that hangs by its own two leads.</summary>
    public virtual bool HangsByTwoLeads(Part part) => false;

    /// <summary>True for a part whose two leads may not be changed for one another.</summary>
    public virtual bool IsPolarised(Part part) => false;

    /// <summary>True for a part that is soldered along its body when it has one lug, which is then the body itself.</summary>
    public virtual bool IsSolderedAlongItsBody => false;

    /// <summary>True for a part with a case that a small one may lie on, soldered to it.</summary>
    public virtual bool CarriesSmallParts => false;

    /// <summary>True for a part whose words stand beside it, for wires or its own shape need the body.</summary>
    public virtual bool HasWordsBeside => false;

    /// <summary>True for a part that is told by its model where it has neither a value nor a remark.</summary>
    public virtual bool IsToldByModel => false;

    /// <summary>What stands under its name and its value.</summary>
    public virtual IEnumerable<FaceLine> MoreLines(Circuit circuit, Part part) => [];

    /// <summary>What a small part is made of, in words beside it.</summary>
    public virtual IEnumerable<FaceLine> LinesBeside(Part part) => [];

    /// <summary>False for a small part whose value stands beside it, for its body shows something else.</summary>
    public virtual bool HasValueOnBody => true;

    /// <summary>What stands below all that where the body has room for it too; null for nothing.</summary>
    public virtual FaceLine? LineWithRoom(Circuit circuit, Part part) => null;

    public virtual Colour FillOf(Theme theme) => theme.PartFill;

    /// <summary>The radius of the corners of its body.</summary>
    /// <param name="shorter">The shorter side of the body.</param>
    public virtual double CornerOf(double shorter) => Math.Min(shorter / 4, Tokens.BodyCorner);

    /// <summary>What is painted on its body, under the words: just enough to be recognised by who holds the real one.</summary>
    public virtual IEnumerable<PictureItem> Art(PlacedFace face, Circuit circuit, Theme theme) => [];

    /// <summary>Lines of its art, on the page, that names of lugs keep off as they keep off wires.</summary>
    public virtual IEnumerable<Segment> LinesToKeepOff(PlacedFace face) => [];

    /// <summary>Outlines of its art, on the page, on which names of lugs may lie whole and which they do not cross.</summary>
    public virtual IEnumerable<Outline> OutlinesOfArt(PlacedFace face) => [];

    /// <summary>What lies on its case, in the part's own frame: nothing is soldered to the case there. Null for nothing.</summary>
    public virtual Box? CoverOf(ImmutableArray<FaceLug> lugs) => null;

    /// <summary>What a legend tells of such parts; null for nothing.</summary>
    public virtual LookSign? Sign => null;

    /// <summary>How a line inside a part is painted.</summary>
    protected static Paint DetailOf(Theme theme) => Paint.Stroked(theme.Detail, Tokens.DetailLine);

    /// <summary>A ring in the middle of the body.</summary>
    /// <param name="share">Of the largest circle that the body holds.</param>
    protected static CircleShape Ring(PlacedFace face, Theme theme, double share)
    {
        var body = face.MainOutline.Bounds;
        var radius = Math.Min(body.Width, body.Height) / 2 * share;
        return new CircleShape("detail", face.OnPage(body.Centre), radius, DetailOf(theme));
    }
}
