using CsCheck;
using WireText.Matching;
using WireText.Testing;

namespace WireText.Tests.Matching;

public class AssignmentTests
{
    /// <summary>Against every way to give rows columns of their own.</summary>
    [Fact]
    public void Solve_RandomCosts_IsAsCheapAsTheCheapestOfAll() =>
        Samples.Each(
            Gen.Select(Gen.Int[1, 5], Gen.Int[0, 2], Gen.Double[-10, 10].Array[35]),
            300,
            (rows, more, values) =>
            {
                var columns = rows + more;
                double CostOf(int row, int column) => values[(row * 7) + column];

                var found = Assignment.Solve(rows, columns, CostOf);

                Assert.Equal(rows, found.Distinct().Count());
                Assert.Equal(
                    Cheapest(rows, columns, CostOf, 0, []),
                    found.Select((column, row) => CostOf(row, column)).Sum(),
                    1e-9
                );
            }
        );

    [Fact]
    public void Solve_MoreRowsThanColumns_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Assignment.Solve(2, 1, (_, _) => 0));

    private static double Cheapest(int rows, int columns, Func<int, int, double> costOf, int row, HashSet<int> used) =>
        row == rows
            ? 0
            : Enumerable
                .Range(0, columns)
                .Where(column => !used.Contains(column))
                .Min(column => costOf(row, column) + Cheapest(rows, columns, costOf, row + 1, [.. used, column]));
}
