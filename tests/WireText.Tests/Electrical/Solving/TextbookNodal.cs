using System.Numerics;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;

namespace WireText.Tests.Electrical.Solving;

/// <summary>
/// Modified nodal analysis as textbooks write it: a dense matrix, one source at a time, an amplifier's output current as an
/// unknown, Gauss with pivoting. It shares nothing with the solver but the list of live branches.
/// </summary>
internal static class TextbookNodal
{
    /// <summary>Node voltages for 1 V in a coil, or for 1 A into the tip when <paramref name="coil"/> is null.</summary>
    public static Complex[] Solve(LiveNetwork live, Surroundings load, double hertz, int? coil)
    {
        var omega = new Complex(0, 2 * Math.PI * hertz);
        var size = live.NodeCount + live.Amplifiers.Length;
        var matrix = new Complex[size, size];
        var right = new Complex[size];

        // The sleeve's row says that its voltage is 0.
        for (var place = 0; place < live.Branches.Length; place++)
        {
            var branch = live.Branches[place];
            if (live.Amplifiers.Any(amplifier => IsOutputOf(branch, amplifier)))
            {
                continue;
            }

            var inside = branch.Inside;
            var series = double.IsFinite(inside.Ohms) ? 1 / (inside.Ohms + (omega * inside.Henries)) : Complex.Zero;
            Add(branch.From, branch.To, series + inside.Siemens + (omega * inside.Farads));
            if (place == coil)
            {
                right[branch.To] += series;
                right[branch.From] -= series;
            }
        }

        Add(LiveNetwork.Tip, LiveNetwork.Sleeve, (1 / load.InputOhms) + (omega * load.CableFarads));
        if (coil is null)
        {
            right[LiveNetwork.Tip] = 1;
        }

        for (var i = 0; i < live.Amplifiers.Length; i++)
        {
            // V_out − V_common − A·(V_in − V_common) + R_out·I = 0, I from out to common.
            var amplifier = live.Amplifiers[i];
            var row = live.NodeCount + i;
            matrix[amplifier.Out, row] += 1;
            matrix[amplifier.Common, row] -= 1;
            matrix[row, amplifier.Out] += 1;
            matrix[row, amplifier.Common] += amplifier.Gain - 1;
            matrix[row, amplifier.In] -= amplifier.Gain;
            matrix[row, row] -= amplifier.OutputOhms;
        }

        for (var column = 0; column < size; column++)
        {
            matrix[LiveNetwork.Sleeve, column] = column == LiveNetwork.Sleeve ? 1 : 0;
        }

        right[LiveNetwork.Sleeve] = 0;
        return Gauss(matrix, right);

        void Add(int a, int b, Complex siemens)
        {
            matrix[a, a] += siemens;
            matrix[b, b] += siemens;
            matrix[a, b] -= siemens;
            matrix[b, a] -= siemens;
        }
    }

    /// <summary>An amplifier that is not listed hears nothing: its output resistance is a resistance like any other.</summary>
    private static bool IsOutputOf(LiveBranch branch, LiveAmplifier amplifier) =>
        branch.Source.Kind == BranchKind.AmplifierOutput && branch.Source.Element == amplifier.Element;

    private static Complex[] Gauss(Complex[,] matrix, Complex[] right)
    {
        var size = right.Length;
        for (var k = 0; k < size; k++)
        {
            var pivot = Enumerable.Range(k, size - k).MaxBy(row => matrix[row, k].Magnitude);
            for (var column = 0; column < size; column++)
            {
                (matrix[k, column], matrix[pivot, column]) = (matrix[pivot, column], matrix[k, column]);
            }

            (right[k], right[pivot]) = (right[pivot], right[k]);
            for (var row = 0; row < size; row++)
            {
                if (row == k || matrix[row, k] == Complex.Zero)
                {
                    continue;
                }

                var factor = matrix[row, k] / matrix[k, k];
                for (var column = k; column < size; column++)
                {
                    matrix[row, column] -= factor * matrix[k, column];
                }

                right[row] -= factor * right[k];
            }
        }

        return [.. right.Select((value, k) => value / matrix[k, k])];
    }
}
