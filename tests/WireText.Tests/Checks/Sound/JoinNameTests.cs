namespace WireText.Tests.Checks.Sound;

/// <summary>Positions called series, parallel or cut. What each word means: common practice.</summary>
public class JoinNameTests
{
    private const string Coils = """
        pickup neck humbucker-4
        switch coils dpdt
        pot vol 500k audio
        jack out
        neck.n-start ~ coils.B2 ~ vol.3; neck.n-finish ~ coils.A0; neck.s-finish ~ coils.B0
        neck.s-start ~ vol.case; neck.shield ~ vol.case; vol.1 ~ vol.case ~ out.sleeve; vol.2 ~ out.tip

        """;

    private const string SeriesParallel = "coils.A1 ~ coils.B1; coils.A2 ~ vol.case";

    [Theory]
    [InlineData("series", "parallel", SeriesParallel, 0)]
    [InlineData("parallel", "series", SeriesParallel, 1)]
    [InlineData("series", "cut", SeriesParallel, 1)] // both coils are heard in parallel
    [InlineData("Series", "cut", "coils.A1 ~ coils.B1", 0)] // the n coil's finish is open, the s coil is left
    [InlineData("series", "parallel", "coils.A1 ~ coils.B1", 1)]
    [InlineData("up", "down", SeriesParallel, 0)]
    public void Check_ByNamesAndWires_IsTold(string first, string second, string wires, int count) =>
        Assert.Equal(count, Found.Of("join-name", $"{Coils}{wires}\npositions coils {first} {second}").Count);

    [Fact]
    public void Check_NamesInTheWrongOrder_SaysWhatIsMissingAndTheOrder()
    {
        var finding = Assert.Single(Found.Of("join-name", $"{Coils}{SeriesParallel}\npositions coils parallel series"));

        Assert.Equal("at coils=parallel nothing is put in parallel: neck is heard", finding.Message);
        Assert.EndsWith("positions coils series parallel", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OfTwoPickups_LooksAtPickups()
    {
        const string Two = """
            pickup neck single-coil; pickup bridge single-coil
            switch join dpdt
            pot vol 500k audio
            jack out
            bridge.hot ~ join.B2 ~ vol.3; bridge.ground ~ join.A0; neck.hot ~ join.B0; join.A1 ~ join.B1; join.A2 ~ vol.case
            neck.ground ~ vol.case; vol.1 ~ vol.case ~ out.sleeve; vol.2 ~ out.tip

            """;

        Assert.Empty(Found.Of("join-name", Two + "positions join series parallel"));
        Assert.Single(Found.Of("join-name", Two + "positions join parallel series"));
    }

    /// <summary>A reversing switch crosses both leads: with one cross wire left out, or both laid straight, nothing is turned.</summary>
    [Theory]
    [InlineData("phase.A1 ~ phase.B2; phase.A2 ~ phase.B1", "normal", "turned", 0)]
    [InlineData("phase.A1 ~ phase.B2; phase.A2 ~ phase.B1", "in", "Out-Of-Phase", 0)]
    [InlineData("phase.A1 ~ phase.A2; phase.B1 ~ phase.B2", "normal", "turned", 1)]
    [InlineData("phase.A1 ~ phase.A2; phase.B1 ~ phase.B2", "up", "down", 0)]
    [InlineData("phase.A2 ~ phase.B1", "normal", "turned", 1)]
    public void Check_APositionCalledTurned_IsHeldToTurnACoil(string wires, string first, string second, int count)
    {
        const string Two = """
            pickup neck single-coil; pickup bridge single-coil
            switch phase dpdt
            pot vol 250k audio
            jack out
            neck.hot ~ vol.3; bridge.hot ~ phase.A0; bridge.ground ~ phase.B0; phase.A1 ~ vol.3; phase.B1 ~ vol.case
            neck.ground ~ vol.case; vol.1 ~ vol.case ~ out.sleeve; vol.2 ~ out.tip

            """;

        Assert.Equal(count, Found.Of("join-name", $"{Two}{wires}\npositions phase {first} {second}").Count);
    }

    /// <summary>With one pickup alone there is nothing that it could be turned against.</summary>
    [Fact]
    public void Check_APositionCalledTurnedOfALonePickup_IsNotTold() =>
        Assert.Empty(
            Found.Of(
                "join-name",
                """
                pickup bridge single-coil
                switch phase dpdt
                pot vol 250k audio
                jack out
                bridge.hot ~ phase.A0; bridge.ground ~ phase.B0; phase.A1 ~ vol.3; phase.B1 ~ vol.case
                phase.A1 ~ phase.A2; phase.B1 ~ phase.B2; vol.1 ~ vol.case ~ out.sleeve; vol.2 ~ out.tip
                positions phase normal turned
                """
            )
        );
}
