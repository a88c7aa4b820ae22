using System.Text.Json;

namespace WireText.Cli.Tests;

/// <summary>Circuits of which there is little to tell: each gets an answer in words, in every form, and no figure that is none.</summary>
public sealed class OddCircuitTests : IDisposable
{
    private const string BareJack = "jack out mono\n";

    private const string NoJack = """
        pickup neck single-coil
        pot    vol  250k
        wire   neck.hot    to vol.3 red
        wire   neck.ground to vol.1 black

        """;

    private const string AllShort = Sample.Right + "wire neck.hot to out.sleeve black\n";

    private const string OneNode = """
        pickup neck single-coil
        pot    vol  250k
        jack   out  mono
        wire   neck.hot to vol.3 to vol.2 to vol.1 to vol.case to out.tip to out.sleeve red
        wire   neck.ground to out.sleeve black

        """;

    private const string NoPickup = """
        pot  vol 250k audio
        jack out mono
        wire vol.2 to vol.3 to out.tip red
        wire vol.1 to vol.case to out.sleeve black

        """;

    private const string CapacitorAlone = """
        jack out mono
        cap  c 10n from out.tip to out.sleeve

        """;

    private const string DummyAlone = """
        pickup dummy single-coil magnet=none
        jack   out mono
        wire   dummy.hot    to out.tip    white
        wire   dummy.ground to out.sleeve black

        """;

    /// <summary>With a gain of 1 and no loss the loop has no one solution; with 10 it would howl.</summary>
    private const string Feedback = """
        define preamp loop
            lugs  in -5,0  out 5,0  common 0,5
            amp   in out common gain=1 in=1M out=1k
        pickup neck single-coil
        preamp amp  loop
        jack   out  mono
        wire   neck.hot to amp.in red
        wire   amp.out  to amp.in to out.tip red
        wire   amp.common to out.sleeve to neck.ground black

        """;

    private const string RoundTwo = """
        define preamp loop
            lugs  in -5,0  out 5,0  common 0,5
            amp   in out common gain=10 in=1M out=1k
        pickup neck single-coil
        preamp a loop
        preamp b loop
        jack   out mono
        wire   a.out to b.in to out.tip red
        wire   b.out to a.in to neck.hot red
        wire   a.common to b.common to out.sleeve to neck.ground black

        """;

    private static readonly string[] Forms =
    [
        "positions",
        "positions --format json",
        "positions --format csv",
        "positions --format markdown",
        "positions --expect",
        "response --format csv",
        "response --format json",
        "export --spice",
    ];

    private readonly TestFolder folder = new();

    public static TheoryData<string, string> Circuits =>
        new()
        {
            { BareJack, "open: the jack floats" },
            { AllShort, "silence: tip and sleeve are joined" },
            { OneNode, "silence: tip and sleeve are joined" },
            { NoPickup, "dead: only 250 kΩ stay on the jack" },
            { CapacitorAlone, "dead: only" },
            { DummyAlone, "silence: 6.05 kΩ hold the jack" },
            { Feedback, "not computed: an amplifier feeds its own input" },
            { RoundTwo, "not computed: an amplifier feeds its own input" },
        };

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Circuits))]
    public void OddCircuit_InEveryForm_IsAnsweredInWords(string wiring, string answer)
    {
        var file = folder.Put("odd.wiring", wiring);
        foreach (var form in Forms)
        {
            var ran = Ran.Of([.. form.Split(' '), file]);

            Assert.InRange(ran.Code, 0, 1);
            Assert.NotEmpty(ran.Output);
            Assert.DoesNotMatch(@"(?i)\bnan\b|∞|\binf(inity)?\b|exception", ran.Output + ran.Error);
        }

        Assert.Contains(answer, Ran.Of("positions", file).Output, StringComparison.Ordinal);
        Assert.Contains(answer, Ran.Of("positions", "--format", "csv", file).Output, StringComparison.Ordinal);
        Assert.Contains(answer, Ran.Of("positions", "--format", "markdown", file).Output, StringComparison.Ordinal);
        Assert.Contains(answer, Ran.Of("response", file).Error, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Circuits))]
    public void OddCircuit_AsJson_HasNullWhereThereIsNoFigure(string wiring, string answer)
    {
        var file = folder.Put("odd.wiring", wiring);
        using var positions = JsonDocument.Parse(Ran.Of("positions", "--format", "json", file).Output);
        using var response = JsonDocument.Parse(Ran.Of("response", "--format", "json", file).Output);

        var row = Assert.Single(positions.RootElement.GetProperty("rows").EnumerateArray());
        var curve = Assert.Single(response.RootElement.GetProperty("curves").EnumerateArray());

        Assert.StartsWith(answer, row.GetProperty("heard").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, row.GetProperty("levelDecibels").ValueKind);
        Assert.Equal(JsonValueKind.Null, row.GetProperty("peakHertz").ValueKind);
        Assert.StartsWith(answer, curve.GetProperty("heard").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, curve.GetProperty("decibels").ValueKind);
    }

    [Fact]
    public void NoJack_InEveryForm_IsSaidAndNothingIsWritten()
    {
        var file = folder.Put("odd.wiring", NoJack);
        foreach (var form in Forms)
        {
            var ran = Ran.Of([.. form.Split(' '), file]);

            Assert.Equal((2, ""), (ran.Code, ran.Output));
            Assert.Contains("no output jack to listen at", ran.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ExpectLines_OfFeedback_ClaimNothingThatIsNotComputed()
    {
        var lines = Ran.Of("positions", "--expect", folder.Put("odd.wiring", Feedback)).Output;

        var ran = Ran.Of(new TestHost(Feedback + lines), "check", "-");

        Assert.Equal(0, ran.Code);
    }
}
