using WireText.Testing;

namespace WireText.Tests.Checks;

/// <summary>Advice about one wire, where it is another one that went astray.</summary>
public class AstrayAdviceTests
{
    /// <summary>The wiper is on ground with the pickup's lead: a capacitor belongs in the wire that brings the ground, never in the lead.</summary>
    [Fact]
    public void Capacitor_ForAWiperOnGround_IsPutInTheWireFromGround()
    {
        var text = WithoutClaims(
            "5-bass-two-volumes.wiring",
            ("wire vol-n.1 to vol-n.case", "wire vol-n.2 to vol-n.case")
        );

        var found = Assert.Single(Found.OfLines("tone-without-capacitor", text));

        Assert.Equal("put a capacitor in its way: cap dark 22n from vol-n.2 to vol-n.case", found.Help);
    }

    /// <summary>Two wire ends exchanged: the cases are on the tip, the sleeve on a volume. Upside down it sounds, so moving one wire silences it.</summary>
    [Fact]
    public void Sleeve_ThatIsExchangedWithAVolume_IsNotMovedAlone()
    {
        var text = WithoutClaims(
            "8-twin-coil-cut.wiring",
            ("wire vol-b.3 to tog.B1", "wire vol-b.case to tog.B1"),
            ("wire vol-b.case to out.sleeve", "wire vol-b.3 to out.sleeve")
        );

        var found = Assert.Single(Found.OfLines("sleeve-on-hot", text));

        Assert.Equal("look which wires are astray: the sleeve belongs on 'tog.case', and no hot lug does", found.Help);
    }

    private static string WithoutClaims(string example, params (string Right, string Wrong)[] slips)
    {
        var lines = File.ReadAllLines(Repository.PathOf("examples", example))
            .Where(line => !line.StartsWith("expect", StringComparison.Ordinal))
            .Select(line => line.StartsWith("wire", StringComparison.Ordinal) ? Single(line) : line);
        var text = string.Join('\n', lines);
        foreach (var (right, wrong) in slips)
        {
            Assert.Contains(right, text, StringComparison.Ordinal);
            text = text.Replace(right, wrong, StringComparison.Ordinal);
        }

        return text;
    }

    private static string Single(string line) =>
        string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
