using WireText.Circuits;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>What a measurement would show under one explanation.</summary>
/// <param name="Read">Where a meter stands there.</param>
/// <param name="Mean">Of a value, with all that is known by now.</param>
/// <param name="Deviation">Of a value.</param>
/// <param name="Heard">Where somebody listens.</param>
/// <param name="Label">Where it has one of a few words.</param>
internal sealed record Outlook(Foretold? Read, double Mean, double Deviation, HeardAtPlug? Heard, FoundSign? Label)
{
    /// <summary>Bins of values in ln R: steps of 8 %.</summary>
    private static readonly double BinWidth = Math.Log(1.08);

    /// <summary>Two readings are alike when they agree to three figures.</summary>
    private const double AlikeFraction = 5e-4;

    /// <summary>A coarse class of the outcome.</summary>
    public OutcomeBin Bin =>
        Heard is not null ? new OutcomeBin(4, 0, Heard)
        : Label is { } label ? new OutcomeBin(5, (int)label, null)
        : Read is not { Kind: ShownKind.Value } read ? new OutcomeBin((int)(Read?.Kind ?? ShownKind.Open), 0, null)
        : new OutcomeBin(6, (int)Math.Round(Math.Log(Math.Max(read.Ohms, BenchOdds.ZeroOhms)) / BinWidth), null);

    /// <summary>True where no reading tells them apart, whatever was read before.</summary>
    public bool IsLike(Outlook other) =>
        Equals(Heard, other.Heard)
        && Label == other.Label
        && Read?.Kind == other.Read?.Kind
        && (
            Read is not { Kind: ShownKind.Value } one
            || Math.Abs(one.Ohms - other.Read!.Value.Ohms) <= AlikeFraction * one.Ohms + 1e-9
        );

    public static Outlook Of(Suspect suspect, Measurement measurement, Meter meter, Odds odds)
    {
        if (measurement.IsByEar)
        {
            return new Outlook(null, 0, 0, odds.HeardBy(suspect, (FoundAtPlug)measurement.Place), null);
        }

        if (odds.LabelOf(suspect, measurement.Place) is { } label)
        {
            return new Outlook(null, 0, 0, null, label);
        }

        if (meter.Foretell(suspect, measurement.Place) is not { } read)
        {
            return new Outlook(null, 0, 0, null, null);
        }

        if (read.Kind != ShownKind.Value)
        {
            return new Outlook(read, read.Ohms, 0, null, null);
        }

        var (mean, variance) = suspect.Belief.Predict(
            read.Ohms,
            read.Slopes,
            Nuisances.OwnVariance(read.Ohms, read.Ohms / 1000)
        );
        return new Outlook(read, Math.Max(mean, BenchOdds.ZeroOhms), Math.Sqrt(variance), null, null);
    }
}

/// <summary>A coarse class of outcomes: of one class and step.</summary>
internal readonly record struct OutcomeBin(int Class, int Step, HeardAtPlug? Heard);
