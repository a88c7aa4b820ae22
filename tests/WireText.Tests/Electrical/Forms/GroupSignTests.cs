using System.Numerics;
using WireText.Electrical.Forms;
using WireText.Testing;
using WireText.Tests.Output;

namespace WireText.Tests.Electrical.Forms;

/// <summary>Groups that are turned round inside others: what is heard says so, coil by coil, as ngspice has it.</summary>
public class GroupSignTests
{
    private const string Singles =
        "pickup c single-coil dcr=6k l=2.2H c=100p wind=cw magnet=north; pickup d single-coil dcr=6k l=2.2H c=100p wind=cw magnet=north; ";

    /// <summary>One pickup with its coils in parallel, a group from <c>x</c> to <c>y</c>.</summary>
    private const string CoilsOfOne =
        "pickup neck humbucker-4 dcr=12k l=4.4H c=50p; neck.n-start ~ neck.s-finish ~ x; neck.n-finish ~ neck.s-start ~ y; neck.shield ~ out.sleeve; ";

    private const string TwoPickups =
        "pickup a single-coil dcr=6k l=2.2H c=100p wind=cw magnet=north; pickup b single-coil dcr=6k l=2.2H c=100p wind=cw magnet=north; "
        + "a.hot ~ b.hot ~ x; a.ground ~ b.ground ~ y; ";

    private const string Turn =
        "switch ph dpdt; x ~ ph.A0; y ~ ph.B0; ph.A1 ~ ph.B2 ~ out.tip; ph.A2 ~ ph.B1; splice x; splice y; jack out; ";

    private const string ThenBothInSeries = "ph.B1 ~ c.hot; c.ground ~ d.hot; d.ground ~ out.sleeve";

    private const string ThenOneAndOneBeside =
        "ph.B1 ~ c.hot; c.ground ~ out.sleeve; d.hot ~ out.tip; d.ground ~ out.sleeve";

    public static TheoryData<string, string, string> Circuits =>
        new()
        {
            {
                Singles + CoilsOfOne + Turn + ThenBothInSeries,
                "c series d series (neck, coils parallel)",
                "c series d series (reversed neck, coils parallel)"
            },
            {
                Singles + TwoPickups + Turn + ThenBothInSeries,
                "c series d series (a parallel b)",
                "c series d series (reversed a parallel reversed b)"
            },
            {
                Singles + CoilsOfOne + Turn + ThenOneAndOneBeside,
                "(c series (neck, coils parallel)) parallel d",
                "(c series (reversed neck, coils parallel)) parallel d"
            },
        };

    [SkippableTheory]
    [MemberData(nameof(Circuits))]
    public void Heard_OfAGroupTurnedRound_IsAsNgspiceHasIt(string text, string straight, string turned)
    {
        Ngspice.SkipWhereAbsent();

        foreach (var (position, expected) in Every.Of([("ph=1", straight), ("ph=2", turned)]))
        {
            var bench = Bench.Of(text).At(position);
            var form = bench.Form();
            var deck = SpiceComparison.DeckOf(bench.Network, bench.State);
            var volts = Ngspice.Run([deck])[0].Select(response => response[0].Volts).ToList();

            Assert.Equal(expected, FormText.ForPeople(bench.Circuit, form));
            // The sources of the deck are the coils in order of declaration, each with the sign of its string.
            Assert.Equal(
                volts.Select(one => SignAgainst(volts[0], one)),
                form.Coils.Select(coil => coil.Sign * form.Coils[0].Sign)
            );
        }
    }

    /// <summary>At 20 Hz, far below every resonance, a coil is in phase or out of it.</summary>
    private static int SignAgainst(Complex first, Complex volts) => Math.Sign((volts * Complex.Conjugate(first)).Real);
}
