namespace WireText.Drawing.Charts;

/// <summary>Sets labels one under the other, each as near as may be to where its curve ends.</summary>
internal static class LabelRows
{
    /// <summary>The top of each row, in the order given.</summary>
    /// <param name="wanted">The middle that each row would like best, in the order of the rows from the top.</param>
    /// <param name="heights">The height of each row.</param>
    /// <remarks>
    /// Rows that would overlap are joined into a block, which moves to the mean of what its rows want (isotonic regression by
    /// pooling neighbours, Ayer et al. 1955); then the whole is pushed inside.
    /// </remarks>
    public static double[] Place(IReadOnlyList<double> wanted, IReadOnlyList<double> heights, double top, double bottom)
    {
        var blocks = new List<(int First, int Count, double Top, double Height)>();
        for (var i = 0; i < wanted.Count; i++)
        {
            blocks.Add((i, 1, Inside(wanted[i] - (heights[i] / 2), heights[i]), heights[i]));
            while (blocks.Count > 1 && blocks[^2].Top + blocks[^2].Height > blocks[^1].Top)
            {
                var (above, below) = (blocks[^2], blocks[^1]);
                blocks.RemoveRange(blocks.Count - 2, 2);
                var height = above.Height + below.Height;
                var mean =
                    ((above.Top * above.Count) + ((below.Top - above.Height) * below.Count))
                    / (above.Count + below.Count);
                blocks.Add((above.First, above.Count + below.Count, Inside(mean, height), height));
            }
        }

        var tops = new double[wanted.Count];
        foreach (var block in blocks)
        {
            var y = block.Top;
            for (var i = block.First; i < block.First + block.Count; i++)
            {
                tops[i] = y;
                y += heights[i];
            }
        }

        return tops;

        double Inside(double wantedTop, double height) => Math.Max(top, Math.Min(wantedTop, bottom - height));
    }
}
