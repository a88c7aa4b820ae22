using System.Numerics;

namespace WireText.Tests.Judging;

/// <summary>
/// Kirchhoff's current law at nodes, as a dense matrix: what flows out of each node through its admittances is what is fed
/// in. A node without a row is at 0 V.
/// </summary>
/// <param name="rows">For each node its row, or -1.</param>
internal sealed class NodalEquations(int[] rows)
{
    private readonly int size = rows.Max() + 1;
    private readonly Complex[][] matrix = Square(rows.Max() + 1);

    /// <summary>An admittance in siemens between two nodes.</summary>
    public void Join(int one, int other, Complex siemens)
    {
        Steer(one, one, other, siemens);
        Steer(other, other, one, siemens);
    }

    /// <summary>A current out of a node: so many siemens times the voltage from <paramref name="plus"/> to <paramref name="minus"/>.</summary>
    public void Steer(int outOf, int plus, int minus, Complex siemens)
    {
        if (rows[outOf] < 0)
        {
            return;
        }

        if (rows[plus] >= 0)
        {
            matrix[rows[outOf]][rows[plus]] += siemens;
        }

        if (rows[minus] >= 0)
        {
            matrix[rows[outOf]][rows[minus]] -= siemens;
        }
    }

    /// <summary>
    /// The voltages of all nodes for each of some currents, in amperes, fed out of a node and into another. Gauss with the
    /// largest pivot of each column; it can be asked once.
    /// </summary>
    /// <exception cref="InvalidOperationException">Some voltage is not determined.</exception>
    public List<Complex[]> Solve(IReadOnlyList<(int OutOf, int Into, Complex Amperes)> feeds)
    {
        var right = Enumerable.Range(0, size).Select(_ => new Complex[feeds.Count]).ToArray();
        for (var i = 0; i < feeds.Count; i++)
        {
            var (outOf, into, amperes) = feeds[i];
            Feed(right, into, i, amperes);
            Feed(right, outOf, i, -amperes);
        }

        for (var column = 0; column < size; column++)
        {
            Eliminate(column, right);
        }

        for (var row = size - 1; row >= 0; row--)
        {
            for (var i = 0; i < feeds.Count; i++)
            {
                var sum = right[row][i];
                for (var column = row + 1; column < size; column++)
                {
                    sum -= matrix[row][column] * right[column][i];
                }

                right[row][i] = sum / matrix[row][row];
            }
        }

        return [.. feeds.Select((_, i) => rows.Select(row => row < 0 ? Complex.Zero : right[row][i]).ToArray())];
    }

    private static Complex[][] Square(int size) => [.. Enumerable.Range(0, size).Select(_ => new Complex[size])];

    private void Feed(Complex[][] right, int node, int feed, Complex amperes)
    {
        if (rows[node] >= 0)
        {
            right[rows[node]][feed] += amperes;
        }
    }

    private void Eliminate(int column, Complex[][] right)
    {
        var pivot = column;
        for (var row = column + 1; row < size; row++)
        {
            pivot = Complex.Abs(matrix[row][column]) > Complex.Abs(matrix[pivot][column]) ? row : pivot;
        }

        if (matrix[pivot][column] == Complex.Zero)
        {
            throw new InvalidOperationException("a voltage is not determined");
        }

        (matrix[column], matrix[pivot]) = (matrix[pivot], matrix[column]);
        (right[column], right[pivot]) = (right[pivot], right[column]);
        for (var row = column + 1; row < size; row++)
        {
            if (matrix[row][column] == Complex.Zero)
            {
                continue;
            }

            var factor = matrix[row][column] / matrix[column][column];
            for (var other = column; other < size; other++)
            {
                matrix[row][other] -= factor * matrix[column][other];
            }

            for (var i = 0; i < right[row].Length; i++)
            {
                right[row][i] -= factor * right[column][i];
            }
        }
    }
}
