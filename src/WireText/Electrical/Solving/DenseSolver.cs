using System.Numerics;

namespace WireText.Electrical.Solving;

/// <summary>Gaussian elimination with partial pivoting: slow, and right where the sparse way is in doubt.</summary>
internal static class DenseSolver
{
    /// <summary>Unknowns beyond which it is not tried: it takes their third power. Chosen.</summary>
    public const int MaxSize = 300;

    /// <summary>The solution of a square system, or null when its residual is too large.</summary>
    /// <param name="maxResidual">Relative to |Y||v| + |i|, each by its largest row.</param>
    public static Complex[]? Solve(Complex[,] matrix, Complex[] right, double maxResidual)
    {
        var size = right.Length;
        var work = (Complex[,])matrix.Clone();
        var solution = (Complex[])right.Clone();
        for (var k = 0; k < size; k++)
        {
            var pivot = PivotRow(work, k);
            if (work[pivot, k] == Complex.Zero)
            {
                return null;
            }

            Exchange(work, solution, k, pivot);
            for (var row = k + 1; row < size; row++)
            {
                var factor = work[row, k] / work[k, k];
                for (var column = k + 1; column < size; column++)
                {
                    work[row, column] -= factor * work[k, column];
                }

                solution[row] -= factor * solution[k];
            }
        }

        for (var k = size - 1; k >= 0; k--)
        {
            for (var column = k + 1; column < size; column++)
            {
                solution[k] -= work[k, column] * solution[column];
            }

            solution[k] /= work[k, k];
        }

        return Residual(matrix, solution, right) <= maxResidual ? solution : null;
    }

    private static int PivotRow(Complex[,] work, int k)
    {
        var best = k;
        for (var row = k + 1; row < work.GetLength(0); row++)
        {
            if (Complex.Abs(work[row, k]) > Complex.Abs(work[best, k]))
            {
                best = row;
            }
        }

        return best;
    }

    private static void Exchange(Complex[,] work, Complex[] right, int a, int b)
    {
        (right[a], right[b]) = (right[b], right[a]);
        for (var column = 0; column < work.GetLength(0); column++)
        {
            (work[a, column], work[b, column]) = (work[b, column], work[a, column]);
        }
    }

    private static double Residual(Complex[,] matrix, Complex[] solution, Complex[] right)
    {
        var (worst, scale) = (0.0, 0.0);
        for (var row = 0; row < right.Length; row++)
        {
            var (sum, size) = (-right[row], Complex.Abs(right[row]));
            for (var column = 0; column < right.Length; column++)
            {
                sum += matrix[row, column] * solution[column];
                size += Complex.Abs(matrix[row, column]) * Complex.Abs(solution[column]);
            }

            worst = Math.Max(worst, Complex.Abs(sum));
            scale = Math.Max(scale, size);
        }

        return worst / scale;
    }
}
