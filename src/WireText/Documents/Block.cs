using System.Collections.Immutable;
using WireText.Drawing.Shapes;

namespace WireText.Documents;

/// <summary>A piece of a document that stands on lines of its own. Its texts are as the author wrote them: outputs escape them.</summary>
public abstract record Block
{
    /// <param name="Level">1 for the title of the document, 2 for its parts, 3 within a part.</param>
    public sealed record Heading(int Level, string Text) : Block;

    public sealed record Paragraph(string Text) : Block;

    /// <summary>Things of equal rank, in no order.</summary>
    public sealed record Bullets(ImmutableArray<string> Items) : Block;

    /// <summary>Things to do, each with a box to tick.</summary>
    public sealed record Boxes(ImmutableArray<string> Items) : Block;

    /// <param name="Rows">Each with one cell a column.</param>
    public sealed record Table(ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows) : Block
    {
        /// <summary>The same without the columns in which nothing stands.</summary>
        public static Table OfFilledColumns(ImmutableArray<string> columns, ImmutableArray<ImmutableArray<string>> rows)
        {
            var filled = Enumerable
                .Range(0, columns.Length)
                .Where(i => rows.IsEmpty || rows.Any(row => row[i].Length > 0))
                .ToList();
            return new Table(
                [.. filled.Select(i => columns[i])],
                [.. rows.Select(row => (ImmutableArray<string>)[.. filled.Select(i => row[i])])]
            );
        }
    }

    /// <summary>A drawing at true size, a part of the document by itself: on paper it has pages of its own.</summary>
    /// <param name="Title">Its heading, of level 2.</param>
    public sealed record Figure(string Title, Picture Picture, string Caption) : Block;
}
