using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>How likely it is to find what was found, under each explanation.</summary>
internal sealed class Odds(Instrument instrument, Meter meter, Ear ear)
{
    private readonly double coilSets = Math.Pow(2, instrument.Right.Elements.OfType<Coil>().Count());

    /// <summary>Takes one fact in: the share of the explanation falls with how unlikely the fact is under it.</summary>
    /// <returns>True where the fact speaks against it: a slip explains it better.</returns>
    public bool Take(Suspect suspect, FoundPlace place, FoundFact fact)
    {
        if (fact is FoundReading reading)
        {
            return Take(suspect, place, reading);
        }

        var (odds, background) = OfWord(suspect, place, fact);
        suspect.LogShare += Math.Log(suspect.IsOutside ? (odds + background) / 2 : odds);
        return odds < background;
    }

    /// <summary>How likely a reading is under an explanation, as a density in ln R where it is a value, and of a slip.</summary>
    private static (double Model, double Slip) OfReading(Suspect suspect, Foretold foretold, FoundReading read)
    {
        if (double.IsInfinity(read.Ohms) || read.Ohms > BenchOdds.OpenOhms)
        {
            return (foretold.Kind == ShownKind.Open ? 1 : 0, BenchOdds.SlipOpen);
        }

        if (read.Ohms <= BenchOdds.ZeroOhms)
        {
            return (
                foretold.Kind switch
                {
                    ShownKind.Joined => 1,
                    ShownKind.NearZero => 0.5,
                    ShownKind.Value when foretold.Ohms <= BenchOdds.ZeroOhms => 1,
                    _ => 0,
                },
                BenchOdds.SlipZero
            );
        }

        switch (foretold.Kind)
        {
            case ShownKind.NearZero:
                var isEnd = read.Ohms <= BenchOdds.TrackEndOhms;
                return (isEnd ? 0.5 * read.Ohms / BenchOdds.TrackEndOhms : 0, BenchOdds.SlipDensity);
            case ShownKind.Value:
                var own = Nuisances.OwnVariance(foretold.Ohms, read.Step);
                var (mean, variance) = suspect.Belief.Predict(foretold.Ohms, foretold.Slopes, own);
                return (read.Ohms * Density(read.Ohms, mean, variance), BenchOdds.SlipDensity);
            default:
                return (0, BenchOdds.SlipDensity);
        }
    }

    /// <summary>How likely all that an ear tells is where it should tell something else.</summary>
    public double OfHeard(HeardAtPlug heard, HeardAtPlug should)
    {
        var odds = OfSounding(should, heard.Kind, heard.Coils);
        if (heard.Kind != HeardKind.Sound || should.Kind != HeardKind.Sound)
        {
            return odds * OfSign(should.Buzzes == heard.Buzzes, BenchOdds.BuzzWrong);
        }

        return odds
            * OfSign(heard.Thin == should.Thin, BenchOdds.ThinWrong)
            * OfSign(heard.Hums == should.Hums, BenchOdds.HumWrong)
            * (heard.Shade == should.Shade ? 1 - BenchOdds.DarkWrong : BenchOdds.DarkWrong / 2)
            * OfSign(heard.Weak == should.Weak, BenchOdds.WeakWrong)
            * OfSign(heard.Buzzes == should.Buzzes, BenchOdds.BuzzWrong);
    }

    /// <summary>What a label such as that of a lead or a capacitor alone should be; null where the place has none.</summary>
    public FoundSign? LabelOf(Suspect suspect, FoundPlace place) =>
        place switch
        {
            FoundAtLead => Has(suspect, FaultKind.LeadOpen, null) ? FoundSign.Open
            : Has(suspect, FaultKind.LeadShorted, null) ? FoundSign.Shorted
            : FoundSign.Good,
            FoundAlone alone when instrument.Right.Elements[alone.Element] is Capacitor => Has(
                suspect,
                FaultKind.CapacitorOpen,
                alone.Element
            )
                ? FoundSign.Open
            : Has(suspect, FaultKind.CapacitorShorted, alone.Element) ? FoundSign.Shorted
            : Has(suspect, FaultKind.CapacitorLeaky, alone.Element) ? FoundSign.Leaky
            : FoundSign.Good,
            FoundAtCell cell => Has(suspect, FaultKind.BatteryFlat, cell.Element) ? FoundSign.Weak : FoundSign.Good,
            _ => null,
        };

    public HeardAtPlug HeardBy(Suspect suspect, FoundAtPlug plug) =>
        suspect.HeardAt(meter.IndexOf(plug), plug.State, ear);

    private static double Density(double value, double mean, double variance) =>
        Math.Exp(-(value - mean) * (value - mean) / (2 * variance)) / Math.Sqrt(2 * Math.PI * variance);

    private bool Take(Suspect suspect, FoundPlace place, FoundReading read)
    {
        if (meter.Foretell(suspect, place) is not { } foretold)
        {
            return false;
        }

        var (model, slip) = OfReading(suspect, foretold, read);
        var odds = ((1 - BenchOdds.Slip) * model) + (BenchOdds.Slip * slip);
        suspect.LogShare += Math.Log(suspect.IsOutside ? (odds + slip) / 2 : odds);
        var isSlip = (1 - BenchOdds.Slip) * model < BenchOdds.Slip * slip;
        if (!isSlip && foretold.Kind == ShownKind.Value && read.Ohms > BenchOdds.ZeroOhms)
        {
            suspect.Belief.Learn(
                read.Ohms,
                foretold.Ohms,
                foretold.Slopes,
                Nuisances.OwnVariance(foretold.Ohms, read.Step)
            );
        }

        return isSlip;
    }

    private (double Odds, double Background) OfWord(Suspect suspect, FoundPlace place, FoundFact fact)
    {
        if (LabelOf(suspect, place) is { } label)
        {
            return (
                OfSign(label == SignOf(place, fact), BenchOdds.LabelWrong) / (label == SignOf(place, fact) ? 1 : 2),
                1.0 / 3
            );
        }

        var heard = HeardBy(suspect, (FoundAtPlug)place);
        return fact switch
        {
            _ when heard.Kind == HeardKind.Unknown => (0.5, 0.5),
            FoundCoils coils => (OfSounding(heard, HeardKind.Sound, coils.Coils), 1 / (coilSets + 1)),
            FoundWord { Sign: FoundSign.Silence } => (OfSounding(heard, HeardKind.Silence, []), 1 / (coilSets + 1)),
            FoundWord { Sign: FoundSign.Dead } => (OfSounding(heard, HeardKind.Dead, []), 1 / (coilSets + 1)),
            FoundWord { Sign: FoundSign.Buzzes } => (OfSign(heard.Buzzes, BenchOdds.BuzzWrong), 0.5),
            // Of what does not sound nothing else can be told.
            FoundWord when heard.Kind != HeardKind.Sound => (BenchOdds.SilenceWrong, 0.5),
            FoundWord { Sign: FoundSign.Thin } => (OfSign(heard.Thin, BenchOdds.ThinWrong), 0.5),
            FoundWord { Sign: FoundSign.Full } => (OfSign(!heard.Thin, BenchOdds.ThinWrong), 0.5),
            FoundWord { Sign: FoundSign.Hums } => (OfSign(heard.Hums, BenchOdds.HumWrong), 0.5),
            FoundWord { Sign: FoundSign.Quiet } => (OfSign(!heard.Hums, BenchOdds.HumWrong), 0.5),
            FoundWord { Sign: FoundSign.Weak } => (OfSign(heard.Weak, BenchOdds.WeakWrong), 0.5),
            FoundWord { Sign: FoundSign.Dark } => (OfShade(heard, Shade.Dark), 1.0 / 3),
            FoundWord { Sign: FoundSign.Bright } => (OfShade(heard, Shade.Bright), 1.0 / 3),
            _ => (0.5, 0.5),
        };
    }

    private FoundSign SignOf(FoundPlace place, FoundFact fact) =>
        (place, fact) switch
        {
            (FoundAtCell cell, FoundVolts volts) => volts.Volts
            < BenchOdds.FlatFraction * ((Battery)instrument.Right.Elements[cell.Element]).Volts
                ? FoundSign.Weak
                : FoundSign.Good,
            (_, FoundWord word) => word.Sign,
            _ => FoundSign.Good,
        };

    private static bool Has(Suspect suspect, FaultKind kind, int? element) =>
        suspect.Faults.Any(one => one.Fault.Kind == kind && (element is null || one.Fault.Element == element));

    private static double OfSign(bool isRight, double wrong) => isRight ? 1 - wrong : wrong;

    private static double OfShade(HeardAtPlug heard, Shade shade) =>
        heard.Shade == shade ? 1 - BenchOdds.DarkWrong : BenchOdds.DarkWrong / 2;

    /// <summary>Which coils sound, or which way none does: one outcome of many.</summary>
    private double OfSounding(HeardAtPlug should, HeardKind kind, ImmutableArray<int> coils)
    {
        if (should.Kind == HeardKind.Sound)
        {
            var isRight = kind == HeardKind.Sound && should.Coils.AsSpan().SequenceEqual(coils.AsSpan());
            return isRight ? 1 - BenchOdds.CoilsWrong : BenchOdds.CoilsWrong / coilSets;
        }

        // Silence and hum alone are taken for each other more often than for a sound.
        return kind == should.Kind ? 1 - BenchOdds.SilenceWrong
            : kind == HeardKind.Sound ? BenchOdds.SilenceWrong / 5 / coilSets
            : BenchOdds.SilenceWrong * 4 / 5;
    }
}
