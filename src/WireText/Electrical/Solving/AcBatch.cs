using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace WireText.Electrical.Solving;

/// <summary>A few frequencies side by side, one in each lane; real and imaginary parts apart.</summary>
internal sealed class AcBatch(
    Elimination plan,
    ImmutableArray<TwoPole> poles,
    AcSolver.StampPlaces[] stamps,
    LiveNetwork network
)
{
    private readonly Lanes[] real = new Lanes[plan.EntryCount];
    private readonly Lanes[] imaginary = new Lanes[plan.EntryCount];
    private readonly Lanes[] stampedReal = new Lanes[plan.EntryCount];
    private readonly Lanes[] stampedImaginary = new Lanes[plan.EntryCount];

    /// <summary>The admittance of each two-pole's series path, which is what a coil's EMF drives.</summary>
    private readonly Lanes[] seriesReal = new Lanes[poles.Length];
    private readonly Lanes[] seriesImaginary = new Lanes[poles.Length];

    /// <summary>The node voltages, by place.</summary>
    private readonly Lanes[] voltsReal = new Lanes[plan.Size];
    private readonly Lanes[] voltsImaginary = new Lanes[plan.Size];

    private readonly Lanes[] drivenReal = new Lanes[plan.Size];
    private readonly Lanes[] drivenImaginary = new Lanes[plan.Size];
    private readonly Lanes[] columnReal = new Lanes[plan.Size];
    private readonly Lanes[] columnImaginary = new Lanes[plan.Size];

    private Lanes residual;

    /// <param name="omega">The angular frequency of each lane, in radians per second.</param>
    public void Solve(Lanes omega)
    {
        Stamp(omega);
        Factor();
        var tip = plan.PlaceOf(LiveNetwork.Tip);
        Array.Clear(voltsReal);
        Array.Clear(voltsImaginary);
        voltsReal[tip] = Lanes.One;
        Substitute(voltsReal, voltsImaginary, tip);
        foreach (var amplifier in network.Amplifiers)
        {
            Drive(amplifier);
        }

        residual = RelativeResidual(tip);
    }

    /// <summary>How far the solution of a lane is off, relative to the currents in the network; NaN when there is none.</summary>
    public double Residual(int lane) => residual[lane];

    /// <summary>The voltage of a node against the sleeve for 1 A into the tip.</summary>
    public Complex Voltage(int node, int lane) =>
        node == LiveNetwork.Sleeve
            ? Complex.Zero
            : new Complex(voltsReal[plan.PlaceOf(node)][lane], voltsImaginary[plan.PlaceOf(node)][lane]);

    /// <summary>The voltage at the tip for 1 V in the series path of a two-pole that raises its plus node.</summary>
    public Complex Gain(int pole, int lane) =>
        new Complex(seriesReal[pole][lane], seriesImaginary[pole][lane])
        * (Voltage(poles[pole].To, lane) - Voltage(poles[pole].From, lane));

    /// <summary>Solves one lane again by full elimination with row exchanges; false when that cannot be trusted either.</summary>
    public bool SolveWithPivots(int lane, double maxResidual)
    {
        if (plan.Size > DenseSolver.MaxSize)
        {
            return false;
        }

        var matrix = DenseMatrix(lane);
        var currents = new Complex[plan.Size];
        currents[plan.PlaceOf(LiveNetwork.Tip)] = Complex.One;
        if (DenseSolver.Solve(matrix, currents, maxResidual) is not { } volts)
        {
            return false;
        }

        for (var place = 0; place < volts.Length; place++)
        {
            voltsReal[place] = voltsReal[place].WithElement(lane, volts[place].Real);
            voltsImaginary[place] = voltsImaginary[place].WithElement(lane, volts[place].Imaginary);
        }

        return true;
    }

    private void Stamp(Lanes omega)
    {
        Array.Clear(stampedReal);
        Array.Clear(stampedImaginary);
        for (var i = 0; i < poles.Length; i++)
        {
            var pole = poles[i];
            (seriesReal[i], seriesImaginary[i]) = SeriesAdmittance(pole, omega);
            var re = seriesReal[i] + Vector256.Create(pole.Siemens);
            var im = seriesImaginary[i] + (omega * pole.Farads);
            var (from, to, between) = stamps[i];
            if (from >= 0)
            {
                stampedReal[from] += re;
                stampedImaginary[from] += im;
            }

            if (to >= 0)
            {
                stampedReal[to] += re;
                stampedImaginary[to] += im;
            }

            if (between >= 0)
            {
                stampedReal[between] -= re;
                stampedImaginary[between] -= im;
            }
        }

        stampedReal.CopyTo(real, 0);
        stampedImaginary.CopyTo(imaginary, 0);
    }

    /// <summary>1/(R + jωL), the inductance with its loss across where there is one.</summary>
    private static (Lanes Real, Lanes Imaginary) SeriesAdmittance(TwoPole pole, Lanes omega)
    {
        if (!pole.ConductsDirectCurrent)
        {
            return (Lanes.Zero, Lanes.Zero);
        }

        var re = Vector256.Create(pole.Ohms);
        var im = omega * pole.Henries;
        if (double.IsFinite(pole.EddyOhms))
        {
            // jωL·Re/(Re + jωL) = (ωL)²·Re/(Re² + (ωL)²) + jωL·Re²/(Re² + (ωL)²)
            var scale = Vector256.Create(pole.EddyOhms) / (Vector256.Create(pole.EddyOhms * pole.EddyOhms) + (im * im));
            re += im * im * scale;
            im *= Vector256.Create(pole.EddyOhms) * scale;
        }

        var size = (re * re) + (im * im);
        return (re / size, -im / size);
    }

    /// <summary>Turns the entries into L below the diagonal and the inverse of D on it.</summary>
    private void Factor()
    {
        var next = 0;
        for (var k = 0; k < plan.Size; k++)
        {
            var size = (real[k] * real[k]) + (imaginary[k] * imaginary[k]);
            var (inverseReal, inverseImaginary) = (real[k] / size, -imaginary[k] / size);
            (real[k], imaginary[k]) = (inverseReal, inverseImaginary);
            var (start, end) = (plan.Starts[k], plan.Starts[k + 1]);
            for (var i = start; i < end; i++)
            {
                var (a, b) = (real[plan.Size + i], imaginary[plan.Size + i]);
                columnReal[i - start] = a;
                columnImaginary[i - start] = b;
                var (scaledReal, scaledImaginary) = (
                    (a * inverseReal) - (b * inverseImaginary),
                    (a * inverseImaginary) + (b * inverseReal)
                );
                (real[plan.Size + i], imaginary[plan.Size + i]) = (scaledReal, scaledImaginary);
                for (var j = 0; j <= i - start; j++)
                {
                    var target = plan.Targets[next++];
                    real[target] -= (scaledReal * columnReal[j]) - (scaledImaginary * columnImaginary[j]);
                    imaginary[target] -= (scaledReal * columnImaginary[j]) + (scaledImaginary * columnReal[j]);
                }
            }
        }
    }

    /// <summary>Turns currents into voltages. All currents before the first place are 0.</summary>
    private void Substitute(Lanes[] re, Lanes[] im, int first)
    {
        for (var k = first; k < plan.Size; k++)
        {
            for (var i = plan.Starts[k]; i < plan.Starts[k + 1]; i++)
            {
                var (row, a, b) = (plan.Rows[i], real[plan.Size + i], imaginary[plan.Size + i]);
                re[row] -= (a * re[k]) - (b * im[k]);
                im[row] -= (a * im[k]) + (b * re[k]);
            }
        }

        for (var k = first; k < plan.Size; k++)
        {
            (re[k], im[k]) = ((real[k] * re[k]) - (imaginary[k] * im[k]), (real[k] * im[k]) + (imaginary[k] * re[k]));
        }

        for (var k = plan.Size - 1; k >= 0; k--)
        {
            for (var i = plan.Starts[k]; i < plan.Starts[k + 1]; i++)
            {
                var (row, a, b) = (plan.Rows[i], real[plan.Size + i], imaginary[plan.Size + i]);
                re[k] -= (a * re[row]) - (b * im[row]);
                im[k] -= (a * im[row]) + (b * re[row]);
            }
        }
    }

    /// <summary>In the adjoint network an amplifier's output drives a current A/R_out times its voltage through its input.</summary>
    private void Drive(LiveAmplifier amplifier)
    {
        var transconductance = Vector256.Create(amplifier.Gain / amplifier.OutputOhms);
        var (re, im) = Difference(amplifier.Out, amplifier.Common);
        (re, im) = (re * transconductance, im * transconductance);
        Array.Clear(drivenReal);
        Array.Clear(drivenImaginary);
        AddCurrent(drivenReal, drivenImaginary, amplifier.In, re, im);
        AddCurrent(drivenReal, drivenImaginary, amplifier.Common, -re, -im);
        Substitute(drivenReal, drivenImaginary, 0);
        for (var k = 0; k < plan.Size; k++)
        {
            voltsReal[k] += drivenReal[k];
            voltsImaginary[k] += drivenImaginary[k];
        }
    }

    private void AddCurrent(Lanes[] re, Lanes[] im, int node, Lanes currentReal, Lanes currentImaginary)
    {
        if (node != LiveNetwork.Sleeve)
        {
            re[plan.PlaceOf(node)] += currentReal;
            im[plan.PlaceOf(node)] += currentImaginary;
        }
    }

    private (Lanes Real, Lanes Imaginary) Difference(int node, int other)
    {
        var (re, im) =
            node == LiveNetwork.Sleeve
                ? (Lanes.Zero, Lanes.Zero)
                : (voltsReal[plan.PlaceOf(node)], voltsImaginary[plan.PlaceOf(node)]);
        return other == LiveNetwork.Sleeve
            ? (re, im)
            : (re - voltsReal[plan.PlaceOf(other)], im - voltsImaginary[plan.PlaceOf(other)]);
    }

    /// <summary>The largest of |Yᵀv − i| over the largest of |Y||v| + |i|; sizes are |re| + |im|.</summary>
    private Lanes RelativeResidual(int tip)
    {
        var (re, im, scale) = (drivenReal, drivenImaginary, columnReal);
        for (var k = 0; k < plan.Size; k++)
        {
            (re[k], im[k], scale[k]) = (k == tip ? -Lanes.One : Lanes.Zero, Lanes.Zero, Lanes.Zero);
        }

        for (var k = 0; k < plan.Size; k++)
        {
            AddProduct(k, k, k);
            for (var i = plan.Starts[k]; i < plan.Starts[k + 1]; i++)
            {
                AddProduct(plan.Rows[i], k, plan.Size + i);
                AddProduct(k, plan.Rows[i], plan.Size + i);
            }
        }

        foreach (var amplifier in network.Amplifiers)
        {
            var transconductance = Vector256.Create(amplifier.Gain / amplifier.OutputOhms);
            var (drive, driveImaginary) = Difference(amplifier.Out, amplifier.Common);
            AddCurrent(re, im, amplifier.In, -drive * transconductance, -driveImaginary * transconductance);
            AddCurrent(re, im, amplifier.Common, drive * transconductance, driveImaginary * transconductance);
        }

        var (worst, largest) = (Lanes.Zero, Lanes.Zero);
        for (var k = 0; k < plan.Size; k++)
        {
            worst = Vector256.Max(worst, Vector256.Abs(re[k]) + Vector256.Abs(im[k]));
            largest = Vector256.Max(largest, scale[k]);
        }

        return worst / (largest + Lanes.One);

        void AddProduct(int row, int column, int entry)
        {
            var (a, b, x, y) = (stampedReal[entry], stampedImaginary[entry], voltsReal[column], voltsImaginary[column]);
            re[row] += (a * x) - (b * y);
            im[row] += (a * y) + (b * x);
            scale[row] += (Vector256.Abs(a) + Vector256.Abs(b)) * (Vector256.Abs(x) + Vector256.Abs(y));
        }
    }

    /// <summary>The adjoint matrix of a lane, amplifiers included.</summary>
    private Complex[,] DenseMatrix(int lane)
    {
        var matrix = new Complex[plan.Size, plan.Size];
        for (var k = 0; k < plan.Size; k++)
        {
            matrix[k, k] = new Complex(stampedReal[k][lane], stampedImaginary[k][lane]);
            for (var i = plan.Starts[k]; i < plan.Starts[k + 1]; i++)
            {
                var entry = new Complex(stampedReal[plan.Size + i][lane], stampedImaginary[plan.Size + i][lane]);
                matrix[plan.Rows[i], k] = entry;
                matrix[k, plan.Rows[i]] = entry;
            }
        }

        foreach (var amplifier in network.Amplifiers)
        {
            var transconductance = amplifier.Gain / amplifier.OutputOhms;
            Add(amplifier.In, amplifier.Out, -transconductance);
            Add(amplifier.In, amplifier.Common, transconductance);
            Add(amplifier.Common, amplifier.Out, transconductance);
            Add(amplifier.Common, amplifier.Common, -transconductance);
        }

        return matrix;

        void Add(int row, int column, double siemens)
        {
            if (row != LiveNetwork.Sleeve && column != LiveNetwork.Sleeve)
            {
                matrix[plan.PlaceOf(row), plan.PlaceOf(column)] += siemens;
            }
        }
    }
}
