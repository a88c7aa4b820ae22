using WireText.Drawing.Shapes;

namespace WireText.Tests.Drawing.Pictures;

/// <summary>All that is on a picture, groups and what is in them.</summary>
internal static class PictureItems
{
    public static IEnumerable<PictureItem> In(Picture picture) => In(picture.Items);

    public static IEnumerable<PictureItem> In(IEnumerable<PictureItem> items) =>
        items.SelectMany(item => item is PictureGroup group ? In(group.Items).Prepend(group) : [item]);
}
