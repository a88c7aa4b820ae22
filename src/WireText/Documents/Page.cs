using System.Collections.Immutable;
using WireText.Drawing.Shapes;
using WireText.Geometry;

namespace WireText.Documents;

/// <summary>A page that is set.</summary>
/// <param name="Picture">All that stands on it.</param>
/// <param name="Bookmarks">Its headings, from the top.</param>
public sealed record Page(Picture Picture, ImmutableArray<Bookmark> Bookmarks);

/// <summary>Where a heading stands.</summary>
/// <param name="Level">As of <see cref="Block.Heading"/>.</param>
/// <param name="Top">In millimetres from the top of the page.</param>
public sealed record Bookmark(int Level, string Text, double Top);

/// <summary>A page before its foot, which says how many there are.</summary>
internal sealed record PageDraft(Size Size, ImmutableArray<PictureItem> Items, ImmutableArray<Bookmark> Bookmarks);
