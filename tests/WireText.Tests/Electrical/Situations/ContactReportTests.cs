using CsCheck;
using WireText.Electrical.Situations;
using WireText.Testing;

namespace WireText.Tests.Electrical.Situations;

public class ContactReportTests
{
    [Fact]
    public void Between_NetsOfRandomCircuits_SaysWhatEveryStateSays() =>
        Samples.Each(
            Gen.Select(RandomCircuits.Any, Gen.Int[0, 6], Gen.Int[0, 6]),
            500,
            (made, a, b) =>
            {
                var network = made.ToNetwork();
                var joined = RandomCircuits
                    .StatesOf(network)
                    .Select(state => network.InContact(state))
                    .Select(nodes => nodes[a] == nodes[b])
                    .ToList();
                var expected =
                    a == b ? ContactRelation.OneNet
                    : joined.TrueForAll(yes => yes) ? ContactRelation.Always
                    : joined.Contains(true) ? ContactRelation.Sometimes
                    : ContactRelation.Never;

                Assert.Equal(expected, ContactReport.Between(network, a, b).Relation);
            }
        );

    [Fact]
    public void Between_PolesThatTakeTurns_IsAlways()
    {
        // Each position joins the nets by another pole: no state leaves them apart.
        var network = new NetCircuit(4)
            .Switch(
                [
                    [2, 3],
                    [3, NetCircuit.Sleeve],
                ],
                [
                    [2, NetCircuit.Sleeve],
                ]
            )
            .ToNetwork();

        var report = ContactReport.Between(network, 2, NetCircuit.Sleeve);

        Assert.Equal(ContactRelation.Always, report.Relation);
        Assert.Equal([0], report.Controls.AsEnumerable());
        Assert.Null(report.Apart);
    }
}
