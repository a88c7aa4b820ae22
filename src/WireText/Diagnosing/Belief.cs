namespace WireText.Diagnosing;

/// <summary>What is believed of the nuisances under one fault: normal, and with each reading that it explains narrower.</summary>
/// <remarks>Linear and normal, so in closed form: one step of a Kalman filter a reading.</remarks>
internal sealed class Belief(int count)
{
    /// <summary>Null until something is learnt: then every nuisance has mean 0 and deviation 1, and none leans on another.</summary>
    private double[,]? spread;

    private double[] mean = [];

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

            if (spread is null)
            {
                variance += slopes[i] * slopes[i];
                continue;
            }

            expected += slopes[i] * mean[i];
            variance += slopes[i] * slopes[i] * spread[i, i];
            for (var j = 0; j < i; j++)
            {
                variance += 2 * slopes[i] * spread[i, j] * slopes[j];
            }
        }

        return (expected, variance);
    }

    /// <summary>Takes a reading in.</summary>
    public void Learn(double read, double ohms, double[] slopes, double own)
    {
        var (expected, variance) = Predict(ohms, slopes, own);
        var before = spread ??= Start();
        var along = new double[count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
            {
                along[i] += before[i, j] * slopes[j];
            }
        }

        for (var i = 0; i < count; i++)
        {
            mean[i] += along[i] * (read - expected) / variance;
            for (var j = 0; j < count; j++)
            {
                before[i, j] -= along[i] * along[j] / variance;
            }
        }
    }

    private double[,] Start()
    {
        mean = new double[count];
        var start = new double[count, count];
        for (var i = 0; i < count; i++)
        {
            start[i, i] = 1;
        }

        return start;
    }
}
