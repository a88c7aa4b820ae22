namespace WireText.Tests.Electrical.Solving;

/// <summary>What an ohmmeter reads: published workshop figures and the formulas for parallel and series; to 0.005 Ω.</summary>
public class FactReadingTests
{
    private const string Jack = "; jack out; vol.2 ~ out.tip; vol.1 ~ out.sleeve";
    private const string Independent = "; jack out; vol.3 ~ out.tip; vol.1 ~ out.sleeve";

    public static TheoryData<string> Readings => FactTable.Ids("ohmmeter.txt");

    public static TheoryData<string> Mutes => FactTable.Ids("mutes.txt");

    public static TheoryData<string> BleedRatios => FactTable.Ids("treble-bleed-ratios.txt");

    [Theory]
    [MemberData(nameof(Readings))]
    public void Reading_OfEachCircuit_IsThatOfTheTable(string id) =>
        Assert.Equal(FactTable.Row("ohmmeter.txt", id).Number("exact"), OhmsOf(id), 0.0051);

    [Theory]
    [MemberData(nameof(BleedRatios))]
    public void ResistorAcrossTheUpperSection_OfAnUnloadedTrack_ChangesItsLaw(string id)
    {
        // The ratio is the DC gain of a voltage at lug 3: (reading with lug 3 open) divides as low / (low + upper part).
        var row = FactTable.Row("treble-bleed-ratios.txt", id);
        var x = row.Number("x");
        var low = new Bench(
            Bench
                .Of(
                    "pot vol 500k linear; resistor r 150k from vol.3 to vol.2; jack out; vol.2 ~ out.tip; vol.1 ~ out.sleeve"
                )
                .Circuit
        )
            .At(Vol(x))
            .Reading()
            .Ohms;
        var whole = Bench
            .Of(
                "pot vol 500k linear; resistor r 150k from vol.3 to vol.2; jack out; vol.3 ~ out.tip; vol.1 ~ out.sleeve"
            )
            .At(Vol(x))
            .Reading()
            .Ohms;

        Assert.Equal(row.Number("ratio"), low / whole, 0.5e-4);
    }

    [Theory]
    [MemberData(nameof(Mutes))]
    public void ContactAcrossTheJack_AsAResistance_LeavesTheLevelOfTheTable(string id)
    {
        // Even a dirty contact mutes. At 1 Hz a coil of 1 mH is its resistance.
        var row = FactTable.Row("mutes.txt", id);
        var level = Bench
            .Of(
                $"pickup p single-coil dcr={row["ohms"]}R l=1mH c=0.1p; resistor contact {row["contact"]}R from out.tip to out.sleeve;"
                    + "jack out; p.hot ~ out.tip; p.ground ~ out.sleeve"
            )
            .Into(0, double.PositiveInfinity)
            .Decibels(1)[0];

        // Levels below −120 dB are told as −120 dB.
        Assert.Equal(Math.Max(row.Number("level"), -120), level, 0.06);
    }

    private static double OhmsOf(string id) =>
        id switch
        {
            "OM-01" => Conventional("9k", "531k").Reading().Ohms,
            "OM-02" => Enumerable.Range(0, 100_001).Max(i => ClosedForm(9e3, 531e3, i / 100_000.0, "9k", "531k")),
            "OM-03" => PickupOf(parallel: Conventional("9k", "531k").Reading().Ohms, total: 540e3),
            "OM-04" => Conventional("20k", "175k").Reading().Ohms,
            "OM-05" => Conventional("6k", "250k").Reading().Ohms,
            "OM-06" => Exactly("tol=0%", "tol=20%").Reading().Least,
            "OM-07" => Exactly("tol=0%", "tol=20%").Reading().Most,
            "OM-08" => Conventional("7.5k", "500k").Reading().Ohms,
            "OM-09" => Conventional("8k", "500k").Reading().Ohms,
            "OM-10" => Conventional("8k", "500k").At(Vol(0.5)).Reading().Ohms,
            "OM-11" => Conventional("8k", "500k").At(Vol(0.1)).Reading().Ohms,
            "OM-12" => Conventional("8k", "500k").At(Vol(0)).Reading().Ohms,
            "OM-13" => Backwards("8k", "500k").Reading().Ohms,
            "OM-14" => Backwards("8k", "500k").At(Vol(0.5)).Reading().Ohms,
            "OM-15" => Backwards("8k", "500k").At(Vol(0)).Reading().Ohms,
            "OM-16" => Bench
                .Of(
                    $"{Pickup("a", "6k")}; {Pickup("b", "7k")}; jack out; a.hot ~ b.hot ~ out.tip; a.ground ~ b.ground ~ out.sleeve"
                )
                .Reading()
                .Ohms,
            "OM-17" => Parallel("250k", "6k", "7k").Reading().Ohms,
            "OM-18" => Bench
                .Of(
                    $"{Pickup("a", "6k")}; {Pickup("b", "7k")}; pot vol 250k linear; a.hot ~ vol.3; a.ground ~ b.hot; b.ground ~ vol.1{Jack}"
                )
                .Reading()
                .Ohms,
            "OM-19" => Parallel("250k", "6k", "6.2k", "6.5k").Reading().Ohms,
            "OM-20" => TwoCoil("p.n-start ~ vol.3; p.n-finish ~ p.s-finish; p.s-start ~ vol.1").Reading().Ohms,
            "OM-21" => TwoCoil("p.n-start ~ vol.3; p.n-finish ~ p.s-finish; p.n-finish ~ vol.1; p.s-start ~ vol.1")
                .Reading()
                .Ohms,
            "OM-22" => TwoCoil("p.n-start ~ p.s-start ~ vol.3; p.n-finish ~ p.s-finish; p.n-finish ~ vol.1")
                .Reading()
                .Ohms,
            "OM-23" => TwoVolumes("7.5k", "8.5k", isIndependent: false).Reading().Ohms,
            "OM-24" => TwoVolumes("7.5k", "8.5k", isIndependent: false).At("v2=0").Reading().Ohms,
            "OM-25" => TwoVolumes("7.5k", "8.5k", isIndependent: true).At("v2=0").Reading().Ohms,
            "OM-26" => TwoVolumes("8k", "8k", isIndependent: false).At("v1=5 v2=5").Reading().Ohms,
            "OM-27" => Conventional("8k", "500k", "; resistor r 150k from vol.3 to vol.2; cap c 1n from vol.3 to vol.2")
                .At(Vol(0.5))
                .Reading()
                .Ohms,
            "OM-28" => Conventional("8k", "500k", ShortedTone).Reading().Ohms,
            "OM-29" => Conventional("8k", "500k", ShortedTone).At("tone=0").Reading().Ohms,
            "OM-30" => Bench.Of("pot vol 500k linear" + Jack).Reading().Ohms,
            "OM-31" => Bench.Of("pot vol 250k linear" + Jack).Reading().Ohms,
            "OM-32" => AtCelsius(35).Reading().Ohms,
            _ => throw new InvalidOperationException(id),
        };

    private const string ShortedTone = "; pot tone 500k linear; tone.2 ~ vol.3; tone.1 ~ vol.1";

    private static string Vol(double x) => FormattableString.Invariant($"vol={10 * x}");

    private static string Pickup(string name, string dcr) => $"pickup {name} single-coil dcr={dcr} l=3H c=100p eddy=1M";

    private static Bench Conventional(string coil, string pot, string more = "") =>
        Bench.Of($"{Pickup("p", coil)}; pot vol {pot} linear; p.hot ~ vol.3; p.ground ~ vol.1{Jack}{more}");

    private static Bench Backwards(string coil, string pot) =>
        Bench.Of($"{Pickup("p", coil)}; pot vol {pot} linear; p.hot ~ vol.2; p.ground ~ vol.1{Independent}");

    private static Bench Exactly(string coil, string pot) =>
        Bench.Of($"{Pickup("p", "6k")} {coil}; pot vol 250k linear {pot}; p.hot ~ vol.3; p.ground ~ vol.1{Jack}");

    private static Bench Parallel(string pot, params string[] coils) =>
        Bench.Of(
            string.Join(
                "; ",
                coils.Select((ohms, i) => $"{Pickup($"p{i}", ohms)}; p{i}.hot ~ vol.3; p{i}.ground ~ vol.1")
            ) + $"; pot vol {pot} linear{Jack}"
        );

    private static Bench TwoCoil(string wiring) =>
        Bench.Of($"pickup p humbucker-4 dcr=8k l=6H c=100p; pot vol 500k linear; {wiring}{Jack}");

    private static Bench TwoVolumes(string first, string second, bool isIndependent)
    {
        var (hot, output) = isIndependent ? (2, 3) : (3, 2);
        return Bench.Of(
            $"{Pickup("a", first)}; {Pickup("b", second)}; pot v1 500k linear; pot v2 500k linear; jack out;"
                + $"a.hot ~ v1.{hot}; b.hot ~ v2.{hot}; v1.{output} ~ v2.{output} ~ out.tip;"
                + "a.ground ~ b.ground ~ v1.1 ~ v2.1 ~ out.sleeve"
        );
    }

    private static Bench AtCelsius(double celsius)
    {
        var circuit = Conventional("8k", "500k").Circuit;
        return new Bench(
            circuit with
            {
                Surroundings = circuit.Surroundings with { CoolestCelsius = celsius, WarmestCelsius = celsius },
            }
        );
    }

    /// <summary>The reading at one setting, computed by us at a few and by R = x·Rv ∥ ((1 − x)·Rv + Rp) at the others.</summary>
    private static double ClosedForm(double coil, double pot, double x, string coilText, string potText)
    {
        var (low, high) = (x * pot, ((1 - x) * pot) + coil);
        var formula = low * high / (low + high);
        if (x is 0.1 or 0.5 or 0.9)
        {
            Assert.Equal(formula, Conventional(coilText, potText).At(Vol(x)).Reading().Ohms, formula * 1e-12);
        }

        return formula;
    }

    /// <summary>Rp from the parallel reading and the sum of both.</summary>
    private static double PickupOf(double parallel, double total) =>
        (total - Math.Sqrt((total * total) - (4 * parallel * total))) / 2;
}
