using WireText.Electrical.Forms;
using WireText.Electrical.Sound;
using WireText.Testing;

namespace WireText.Tests.Electrical.Sound;

/// <summary>Two coils in every combination of winding, magnet and leads, and how much hum is left in closed form.</summary>
public class PhaseAndHumTests
{
    public static TheoryData<string, bool> PhaseRows =>
        Rows.Of(
            from row in FactTable.Read("phase.txt")
            from isSeries in new[] { true, false }
            select (row.Id, isSeries)
        );

    public static TheoryData<string> HumRows => FactTable.Ids("hum.txt");

    [Theory]
    [MemberData(nameof(PhaseRows))]
    public void TwoCoils_OfEachCombination_AreInPhaseAndHumAsTheTruthTableSays(string id, bool isSeries)
    {
        var row = FactTable.Row("phase.txt", id);
        var (first, second) = (Signs(row["first"]), Signs(row["second"]));
        var bench = TwoCoils(first, second, isSeries);

        var isOut = bench.Form().Coils.Any(coil => coil.Phase == PhaseRelation.OutOfPhase);
        Assert.Equal(row["phase"] == "out", isOut);
        Assert.Equal(row["phase"] == "out", bench.Form().Coils.Any(coil => coil.Sign < 0));
        Assert.Equal(row["hum"] == "cancels" ? HumWord.Cancelled : HumWord.Full, bench.Sound().Hum!.Word);
    }

    [Theory]
    [MemberData(nameof(HumRows))]
    public void Hum_OfCoilsTogether_IsThatOfTheClosedForm(string id)
    {
        var expected = FactTable.Row("hum.txt", id).Number("hum");

        Assert.Equal(expected, Decibels.ToRatio(HumOf(id)), Math.Max(expected * 1e-3, 2e-6));
    }

    /// <summary>Over the hum of one coil, in dB. Turns weigh against their mean, so rows that name a first coil of 1 are scaled.</summary>
    private static double HumOf(string id)
    {
        const string Plus = "wind=cw";
        const string Minus = "wind=ccw";
        return id switch
        {
            "HM-01" => InSeries(Plus, Minus).Decibels,
            "HM-02" => InSeries(Plus + " turns=8000", Minus + " turns=7600").Decibels + MeanOverFirst(0.95),
            "HM-03" => InSeries(Plus + " turns=8000", Minus + " turns=7200").Decibels + MeanOverFirst(0.90),
            "HM-04" => InSeries(Plus, Plus).Decibels,
            "HM-05" => InParallel(Plus, Plus).Decibels,
            "HM-06" => InParallel(Plus, Minus + " dcr=7k l=3H").Decibels,
            "HM-07" => InParallel(Plus + " turns=8000", Minus + " dcr=7k l=3H turns=8800").Decibels
                + MeanOverFirst(1.10),
            "HM-08" => InSeries(Plus, Minus, Plus).Decibels,
            "HM-09" => InParallel(Plus, Minus, Plus).Decibels,
            _ => throw new InvalidOperationException(id),
        };
    }

    private static double MeanOverFirst(double second) => 20 * Math.Log10((1 + second) / 2);

    private static Hum InSeries(params string[] coils)
    {
        var text = Coils(coils);
        for (var i = 0; i < coils.Length; i++)
        {
            text += $"; p{i}.ground ~ {(i + 1 < coils.Length ? $"p{i + 1}.hot" : "out.sleeve")}";
        }

        return HumAt(text + "; p0.hot ~ out.tip");
    }

    private static Hum InParallel(params string[] coils) =>
        HumAt(Coils(coils) + string.Concat(coils.Select((_, i) => $"; p{i}.hot ~ out.tip; p{i}.ground ~ out.sleeve")));

    private static string Coils(string[] coils) =>
        "jack out"
        + string.Concat(
            coils.Select(
                (coil, i) =>
                    $"; pickup p{i} single-coil {(coil.Contains("dcr", StringComparison.Ordinal) ? "" : "dcr=6k l=2.5H")} c=0.1p magnet=north {coil}"
            )
        );

    /// <summary>Without load, and with windings of next to no capacitance.</summary>
    private static Hum HumAt(string text) => Bench.Of(text).Into(0, double.PositiveInfinity).Sound().Hum!;

    private static (int Winding, int Magnet, int Leads) Signs(string cell)
    {
        var signs = cell.Split(',').Select(sign => sign.StartsWith('-') ? -1 : 1).ToList();
        return (signs[0], signs[1], signs[2]);
    }

    private static Bench TwoCoils((int W, int M, int C) first, (int W, int M, int C) second, bool isSeries)
    {
        var (hot, ground) = Ends("a", first.C);
        var (hot2, ground2) = Ends("b", second.C);
        var join = isSeries
            ? $"{hot} ~ out.tip; {ground} ~ {hot2}; {ground2} ~ out.sleeve"
            : $"{hot} ~ {hot2} ~ out.tip; {ground} ~ {ground2} ~ out.sleeve";
        return Bench.Of($"{Pickup("a", first)}; {Pickup("b", second)}; jack out; {join}");
    }

    private static string Pickup(string name, (int W, int M, int C) signs) =>
        $"pickup {name} single-coil dcr=6k l=2.5H c=100p wind={(signs.W > 0 ? "cw" : "ccw")} magnet={(signs.M > 0 ? "north" : "south")}";

    private static (string Hot, string Ground) Ends(string name, int leads) =>
        leads > 0 ? ($"{name}.hot", $"{name}.ground") : ($"{name}.ground", $"{name}.hot");
}
