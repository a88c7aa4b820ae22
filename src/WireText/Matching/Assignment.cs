namespace WireText.Matching;

/// <summary>Gives each row a column of its own so that the costs sum to the least.</summary>
/// <remarks>
/// Shortest augmenting paths with dual values, O(rows² · columns): the method of Kuhn (1955) and Munkres (1957) in the form of Jonker and
/// Volgenant, "A shortest augmenting path algorithm for dense and sparse linear assignment problems", Computing 38, 1987 (from memory).
/// </remarks>
public static class Assignment
{
    /// <summary>The column of each row.</summary>
    /// <param name="columns">At least as many as rows.</param>
    /// <param name="costOf">Finite, of a row and a column.</param>
    /// <exception cref="ArgumentException">There are more rows than columns.</exception>
    public static int[] Solve(int rows, int columns, Func<int, int, double> costOf)
    {
        if (rows > columns)
        {
            throw new ArgumentException("there are more rows than columns", nameof(rows));
        }

        // Row and column 0 stand for none.
        var rowPrice = new double[rows + 1];
        var columnPrice = new double[columns + 1];
        var rowOf = new int[columns + 1];
        var cameFrom = new int[columns + 1];
        for (var row = 1; row <= rows; row++)
        {
            rowOf[0] = row;
            var column = 0;
            var least = new double[columns + 1];
            Array.Fill(least, double.PositiveInfinity);
            var isUsed = new bool[columns + 1];
            do
            {
                isUsed[column] = true;
                var (from, delta, next) = (rowOf[column], double.PositiveInfinity, 0);
                for (var other = 1; other <= columns; other++)
                {
                    if (isUsed[other])
                    {
                        continue;
                    }

                    var reduced = costOf(from - 1, other - 1) - rowPrice[from] - columnPrice[other];
                    if (reduced < least[other])
                    {
                        (least[other], cameFrom[other]) = (reduced, column);
                    }

                    if (least[other] < delta)
                    {
                        (delta, next) = (least[other], other);
                    }
                }

                for (var other = 0; other <= columns; other++)
                {
                    if (isUsed[other])
                    {
                        rowPrice[rowOf[other]] += delta;
                        columnPrice[other] -= delta;
                    }
                    else
                    {
                        least[other] -= delta;
                    }
                }

                column = next;
            } while (rowOf[column] != 0);

            do
            {
                var before = cameFrom[column];
                rowOf[column] = rowOf[before];
                column = before;
            } while (column != 0);
        }

        var columnOf = new int[rows];
        for (var column = 1; column <= columns; column++)
        {
            if (rowOf[column] > 0)
            {
                columnOf[rowOf[column] - 1] = column - 1;
            }
        }

        return columnOf;
    }
}
