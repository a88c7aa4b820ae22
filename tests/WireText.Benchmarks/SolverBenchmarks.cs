using System.Globalization;
using System.Numerics;
using System.Text;
using BenchmarkDotNet.Attributes;
using MathNet.Numerics.LinearAlgebra.Complex;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Responses;
using WireText.Electrical.Solving;
using WireText.Text;

namespace WireText.Benchmarks;

/// <summary>
/// A network of 25 nodes at 400 frequencies: our solver beside dense complex LU of a general library, managed code both. The
/// library is handed the same matrix; it gets what it does not know (that the matrix is symmetric, sparse and alike at every
/// frequency) no more than any general solver would.
/// </summary>
[MemoryDiagnoser]
[ShortRunJob]
public class SolverBenchmarks
{
    private const int Nodes = 25;

    private readonly double[] hertz = [.. ResponseStudy.Hertz];
    private readonly List<DenseMatrix> matrices = [];
    private readonly DenseVector intoTip = new(Nodes);
    private LiveNetwork network = null!;
    private AcSolver solver = null!;

    [GlobalSetup]
    public void Build()
    {
        var source = new SourceText("ladder", Ladder());
        var ladder = Network.Of(Compilation.Of(source, NoSources.Instance).Circuit!)!;
        network = LiveNetwork.Of(ladder, State.Rest(ladder.Circuit));
        if (network.NodeCount != Nodes + 1)
        {
            throw new InvalidOperationException($"{network.NodeCount} nodes with the sleeve");
        }

        solver = AcSolver.Prepare(network, Surroundings.Usual)!;
        intoTip[LiveNetwork.Tip - 1] = Complex.One;
        matrices.AddRange(hertz.Select(Assemble));
        Agree();
    }

    [Benchmark(Baseline = true)]
    public Complex Ours() => solver.Solve(hertz)!.ImpedanceAt(0);

    /// <summary>Ours with the plan made anew, as when a circuit is met for the first time.</summary>
    [Benchmark]
    public Complex OursWithItsPlan() => AcSolver.Prepare(network, Surroundings.Usual)!.Solve(hertz)!.ImpedanceAt(0);

    /// <summary>Factor and solve alone: the matrices are there already.</summary>
    [Benchmark]
    public Complex DenseLu()
    {
        var sum = Complex.Zero;
        foreach (var matrix in matrices)
        {
            sum += matrix.LU().Solve(intoTip)[0];
        }

        return sum;
    }

    /// <summary>Filling the matrices too, as ours does.</summary>
    [Benchmark]
    public Complex DenseLuWithItsMatrices()
    {
        var sum = Complex.Zero;
        foreach (var at in hertz)
        {
            sum += Assemble(at).LU().Solve(intoTip)[0];
        }

        return sum;
    }

    private void Agree()
    {
        var answer = solver.Solve(hertz)!;
        for (var f = 0; f < hertz.Length; f++)
        {
            var theirs = matrices[f].LU().Solve(intoTip)[LiveNetwork.Tip - 1];
            if ((answer.ImpedanceAt(f) - theirs).Magnitude > 1e-9 * theirs.Magnitude)
            {
                throw new InvalidOperationException($"{answer.ImpedanceAt(f)} and {theirs} at {hertz[f]} Hz");
            }
        }
    }

    private DenseMatrix Assemble(double at)
    {
        var matrix = new DenseMatrix(Nodes);
        var omega = 2 * Math.PI * at;
        foreach (var branch in network.Branches)
        {
            Stamp(branch.Inside);
        }

        var load = Surroundings.Usual;
        Stamp(
            TwoPole.Resistance(LiveNetwork.Sleeve, LiveNetwork.Tip, load.InputOhms) with
            {
                Farads = load.CableFarads,
            }
        );
        return matrix;

        void Stamp(TwoPole pole)
        {
            var siemens = new Complex(pole.Siemens, omega * pole.Farads);
            siemens += pole.ConductsDirectCurrent ? 1 / new Complex(pole.Ohms, omega * pole.Henries) : Complex.Zero;
            var (from, to) = (pole.From - 1, pole.To - 1);
            if (from >= 0)
            {
                matrix[from, from] += siemens;
            }

            if (to >= 0)
            {
                matrix[to, to] += siemens;
            }

            if (from >= 0 && to >= 0)
            {
                matrix[from, to] -= siemens;
                matrix[to, from] -= siemens;
            }
        }
    }

    /// <summary>Coils from node to node with a capacitor and a resistor at each, and every third node joined with one further on.</summary>
    private static string Ladder()
    {
        var text = new StringBuilder("pickup p single-coil dcr=6k l=2.4H c=100p\njack out\n");
        text.Append("wire p.ground to out.sleeve black\nwire p.hot to n1 white\n");
        for (var i = 1; i < Nodes; i++)
        {
            var next = i + 1 < Nodes ? Node(i + 1) : "out.tip";
            text.Append(CultureInfo.InvariantCulture, $"metal n{i}\n");
            text.Append(CultureInfo.InvariantCulture, $"inductor l{i} 50mH dcr=200R from n{i} to {next}\n");
            text.Append(CultureInfo.InvariantCulture, $"cap c{i} {100 + i}p from n{i} to out.sleeve\n");
            if (i % 3 == 1 && i + 4 < Nodes)
            {
                text.Append(CultureInfo.InvariantCulture, $"resistor r{i} 47k from n{i} to {Node(i + 4)}\n");
            }
        }

        return text.ToString();

        static string Node(int i) => string.Create(CultureInfo.InvariantCulture, $"n{i}");
    }
}
