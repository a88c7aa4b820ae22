using WireText.Circuits;
using WireText.Electrical.BenchPlans;

namespace WireText.Tests.Electrical.BenchPlans;

/// <summary>What sounds when it is tapped and which way a needle kicks, by hand.</summary>
public class TapCheckTests
{
    private const string Sleeve = "jack out mono; ";

    /// <summary>Exchanged leads, another winding and another magnet each turn a coil round; two of them turn it back.</summary>
    [Theory]
    [InlineData("wind=cw magnet=north", "b.hot ~ out.tip; b.ground ~ out.sleeve", Swing.Alike)]
    [InlineData("wind=ccw magnet=south", "b.hot ~ out.tip; b.ground ~ out.sleeve", Swing.Alike)]
    [InlineData("wind=ccw magnet=north", "b.hot ~ out.tip; b.ground ~ out.sleeve", Swing.Against)]
    [InlineData("wind=cw magnet=south", "b.hot ~ out.tip; b.ground ~ out.sleeve", Swing.Against)]
    [InlineData("wind=cw magnet=north", "b.ground ~ out.tip; b.hot ~ out.sleeve", Swing.Against)]
    [InlineData("wind=cw magnet=south", "b.ground ~ out.tip; b.hot ~ out.sleeve", Swing.Alike)]
    public void SecondPickup_KicksByItsWindingMagnetAndLeads(string values, string wires, Swing expected)
    {
        var tap = Assert.Single(
            BenchReadingTests
                .PlanOf(
                    $"pickup a single-coil dcr=6k wind=cw magnet=north; pickup b single-coil dcr=6k {values}; {Sleeve}"
                        + $"a.hot ~ out.tip; a.ground ~ out.sleeve; {wires}"
                )
                .Taps
        );

        Assert.Equal([("a", Swing.Alike, false), ("b", expected, false)], Said(tap));
    }

    [Fact]
    public void WindingThatNobodyGave_IsAssumed()
    {
        var tap = Assert.Single(
            BenchReadingTests
                .PlanOf($"pickup a single-coil dcr=6k; {Sleeve}a.hot ~ out.tip; a.ground ~ out.sleeve")
                .Taps
        );

        Assert.Equal([("a", Swing.Alike, true)], Said(tap));
    }

    [Fact]
    public void Selector_LetsEachPickupSoundInItsPosition()
    {
        var plan = BenchReadingTests.PlanOfExample("2-two-pickups-mute.wiring");
        var (sel, mute) = (plan.Circuit.FindControl("sel")!, plan.Circuit.FindControl("mute")!);

        Assert.Equal(
            ["down: ", "up bridge: bridge", "up both: neck bridge", "up neck: neck"],
            plan.Taps.Select(tap =>
            {
                var where =
                    StateText.PositionOf(mute, tap.State) == "down"
                        ? "down"
                        : $"up {StateText.PositionOf(sel, tap.State)}";
                return $"{where}: {string.Join(' ', tap.Sounding.Select(tapped => tapped.Coil.Name))}";
            })
        );
    }

    [Fact]
    public void CoilBehindASmallCapacitor_KicksNeitherWayForCertain()
    {
        var tap = Assert.Single(
            BenchReadingTests
                .PlanOf(
                    "pickup a single-coil dcr=6k wind=cw magnet=north; pickup b single-coil dcr=6k wind=cw magnet=north; "
                        + $"cap c 10n from b.hot to out.tip; {Sleeve}a.hot ~ out.tip; a.ground ~ out.sleeve; b.ground ~ out.sleeve"
                )
                .Taps
        );

        // 10 nF has 193 kΩ at 82 Hz, against a coil of 6 kΩ: what it lets through leads by nearly a quarter turn.
        Assert.Contains(("b", Swing.Unclear, false), Said(tap));
    }

    private static IEnumerable<(string, Swing, bool)> Said(TapCheck tap) =>
        tap.Sounding.Select(tapped => (tapped.Coil.Name, tapped.Swing, tapped.IsAssumed));
}
