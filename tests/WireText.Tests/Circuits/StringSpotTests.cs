using WireText.Circuits;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Circuits;

public class StringSpotTests
{
    [Theory]
    [InlineData("single-coil", new[] { "" })]
    [InlineData("single-coil at=162mm", new[] { "coil 162" })]
    [InlineData("single-coil at=162mm aperture=12mm", new[] { "coil 162 over 12" })]
    [InlineData("humbucker-4 at=45mm", new[] { "pickup 45", "pickup 45" })]
    [InlineData("humbucker-4 at=45mm n.at=54mm", new[] { "coil 54", "pickup 45" })]
    [InlineData("humbucker-4 aperture=12mm s.aperture=10mm", new[] { "over 12", "over 10" })]
    public void Line_OfAPickup_SaysWhereItsCoilsLie(string line, string[] spots) =>
        Assert.Equal(spots, SpotsOf(line).Select(InMillimetres));

    [Fact]
    public void WrongPlace_IsFoundOnce() =>
        Assert.Equal(
            ["bad-value"],
            Compilation
                .Of(new SourceText("spot.wiring", "pickup p humbucker-4 at=45\n"), NoSources.Instance)
                .Findings.Where(finding => finding.Id == "bad-value")
                .Select(finding => finding.Id)
        );

    private static IEnumerable<StringSpot> SpotsOf(string line) =>
        Bench.CompileText($"pickup p {line}\njack out\n").Elements.OfType<Coil>().Select(coil => coil.Spot);

    private static string InMillimetres(StringSpot spot) =>
        string.Join(
            ' ',
            new[] { ("coil", spot.CoilMetres), ("pickup", spot.PickupMetres), ("over", spot.ApertureMetres) }
                .Where(said => said.Item2 is not null)
                .Select(said => $"{said.Item1} {Math.Round(1000 * said.Item2!.Value)}")
        );
}
