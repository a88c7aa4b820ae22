using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Drawing.Faces.Looks;

/// <summary>What a legend tells of a kind of part that not everybody knows by sight.</summary>
/// <param name="Sample">Paints it small between two points, from left to right.</param>
public sealed record LookSign(string Words, Func<Theme, Point, Point, IEnumerable<PictureItem>> Sample);
