namespace WireText.Diagnosing;

/// <summary>What is believed of the nuisances under one fault: normal, and with each reading that it explains narrower.</summary>
/// <remarks>Linear and normal, so in closed form: one step of a Kalman filter a reading.</remarks>
internal sealed class Belief
{
    private readonly double[] mean;
    private readonly double[,] spread;

    public Belief(int count)
    {
        mean = new double[count];
        spread = new double[count, count];
        for (var i = 0; i < count; i++)
        {
            spread[i, i] = 1;
        }
    }

    /// <summary>The mean and the variance of a reading before it is taken.</summary>
    /// <param name="ohms">With every nuisance at 0.</param>
    /// <param name="own">The variance that it has of its own.</param>
    public (double Mean, double Variance) Predict(double ohms, double[] slopes, double own)
    {
        var (expected, variance) = (ohms, own);
        for (var i = 0; i < slopes.Length; i++)
        {
            if (slopes[i] == 0)
            {
                continue;
            }

            expected += slopes[i] * mean[i];
            for (var j = 0; j < slopes.Length; j++)
            {
                variance += slopes[i] * spread[i, j] * slopes[j];
            }
        }

        return (expected, variance);
    }

    /// <summary>Takes a reading in.</summary>
    public void Learn(double read, double ohms, double[] slopes, double own)
    {
        var (expected, variance) = Predict(ohms, slopes, own);
        var count = mean.Length;
        var along = new double[count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
            {
                along[i] += spread[i, j] * slopes[j];
            }
        }

        for (var i = 0; i < count; i++)
        {
            mean[i] += along[i] * (read - expected) / variance;
            for (var j = 0; j < count; j++)
            {
                spread[i, j] -= along[i] * along[j] / variance;
            }
        }
    }
}
