using WireText.Text;

namespace WireText.Tests.Checks.Values;

/// <summary>A choice of five capacitors on a rotary whose first throw is empty. What is right and what is a slip: common practice.</summary>
public class CapacitorOutOfRowTests
{
    private const string Rest = """
        pickup neck single-coil
        pot vol 250k audio
        switch voice rotary-1x6
        jack out mono
        wire neck.hot to vol.3 to voice.A0 white
        wire vol.1 to vol.case bare
        wire neck.ground to vol.case black
        wire vol.2 to out.tip white
        wire vol.case to out.sleeve black

        """;

    private static readonly string[] Right =
    [
        "cap c1 1n from voice.A2 to vol.case",
        "cap c2 2.2n from voice.A3 to vol.case",
        "cap c3 4.7n from voice.A4 to vol.case",
        "cap c4 10n from voice.A5 to vol.case",
        "cap c5 22n from voice.A6 to vol.case",
    ];

    [Fact]
    public void Check_ARowInOrder_FindsNothing()
    {
        Assert.Empty(Found(Right));
        Assert.Empty(
            Found([.. Right.Select((line, i) => line.Replace($"A{i + 2}", $"A{6 - i}", StringComparison.Ordinal))])
        );
        Assert.Empty(Found(Right[..2]));
    }

    [Theory]
    [InlineData(2, "A4", "A5", "'voice.A5' has 2 capacitors, and 'voice.A4' has none")]
    [InlineData(0, "A2", "A3", "'voice.A3' has 2 capacitors, and 'voice.A2' has none")]
    [InlineData(2, "A4", "A0", "'c3' lies on the common of 'voice', and 'voice.A4' has none")]
    [InlineData(2, "vol.case", "vol.2", "'c3' ends at 'vol.2', the others of 'voice' at 'vol.case'")]
    [InlineData(4, "vol.case", "vol.3", "'c5' ends at 'vol.3', the others of 'voice' at 'vol.case'")]
    public void Check_AnEndMoved_NamesTheCapacitor(int line, string from, string to, string message)
    {
        var lines = Right.ToArray();
        lines[line] = lines[line].Replace(from, to, StringComparison.Ordinal);

        Assert.Equal(message, Assert.Single(Found(lines)).Message);
    }

    [Theory]
    [InlineData(0, 3)]
    [InlineData(1, 2)]
    public void Check_TwoExchanged_NamesBoth(int first, int second)
    {
        var lines = Right.ToArray();
        var (a, b) = ($"A{first + 2}", $"A{second + 2}");
        lines[first] = lines[first].Replace(a, b, StringComparison.Ordinal);
        lines[second] = lines[second].Replace(b, a, StringComparison.Ordinal);

        var finding = Assert.Single(Found(lines));

        Assert.Contains($"'c{first + 1}'", finding.Message, StringComparison.Ordinal);
        Assert.Contains($"'c{second + 1}'", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith(
            $"exchange their leads: 'voice.{a}' with 'voice.{b}'",
            finding.Help,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Check_TheOutermostExchanged_NamesBothWaysToMendIt()
    {
        // 22, 2.2, 4.7, 10, 1: up when the ends are exchanged, down when their neighbours are.
        var lines = Right.ToArray();
        lines[0] = lines[0].Replace("A2", "A6", StringComparison.Ordinal);
        lines[4] = lines[4].Replace("A6", "A2", StringComparison.Ordinal);

        Assert.StartsWith(
            "exchange their leads: 'voice.A2' with 'voice.A6' or 'voice.A3' with 'voice.A5'",
            Assert.Single(Found(lines)).Help,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Check_AnOrderThatNoOneExchangeMakes_IsTakenForMeant() =>
        Assert.Empty(
            Found([
                "cap c1 4.7n from voice.A2 to vol.case",
                "cap c2 22n from voice.A3 to vol.case",
                "cap c3 1n from voice.A4 to vol.case",
                "cap c4 47n from voice.A5 to vol.case",
                "cap c5 2.2n from voice.A6 to vol.case",
            ])
        );

    private static IReadOnlyList<Finding> Found(string[] capacitors) =>
        Checks.Found.Of("capacitor-out-of-row", Rest + string.Join('\n', capacitors));
}
