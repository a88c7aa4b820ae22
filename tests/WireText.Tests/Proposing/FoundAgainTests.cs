using WireText.Output;
using WireText.Proposing;
using WireText.Testing;
using WireText.Tests.Electrical;
using WireText.Text;

namespace WireText.Tests.Proposing;

/// <summary>
/// Circuits with one control's wires taken out, claimed to do all that they do, dials and figures with it: an answer comes back, with
/// no more joints than the hand's.
/// </summary>
public class FoundAgainTests
{
    /// <summary>The controls of those of the thirty-five circuits in which nothing is odd by intent.</summary>
    public static TheoryData<int, string> Controls =>
        Rows.Of(
            Enumerable
                .Range(1, RightVerdicts.Count)
                .Select(number => (Number: number, Whole: Read(TextOf(number))))
                .Where(one => one.Whole.Findings.All(finding => finding.Severity < Severity.Warning))
                .SelectMany(one =>
                    one.Whole.Circuit!.Controls.Where(control => !control.IsPlug)
                        .Select(control => (one.Number, control.Name))
                )
        );

    [Fact]
    public void Controls_AreNotFewer() => Assert.Equal(4, Controls.Count);

    [Theory]
    [MemberData(nameof(Controls))]
    public void RightCircuit_WithAControlTakenOut_IsFoundAgain(int number, string control)
    {
        var whole = TextOf(number);
        var text = $"{whole}\n{ExpectLines.Write(Read(whole).Study!)}";
        var open = Read(OpenedWiring.Of(text, control, withEnds: true));
        var byHand = Read(whole).Circuit!.Wires.Length - open.Circuit!.Wires.Length;

        var proposal = Proposer.Of(open, new ProposalRequest());

        Assert.Equal((ProposalOutcome.Found, ""), (proposal.Outcome, proposal.Why ?? ""));
        Assert.InRange(proposal.Joints, 1, byHand);
    }

    /// <summary>With bare metal grounded.</summary>
    private static string TextOf(int number)
    {
        var text = RightVerdicts.TextWith(number, "").TrimEnd('\n');
        var circuit = Read(text).Circuit!;
        var loose = circuit.Lugs.Where(lug =>
            lug is { IsMetal: true, IsInner: false } && !circuit.Wires.Any(wire => wire.Touches(lug.Index))
        );
        var ground = circuit.FindLug("vol.case")?.Name ?? "out.sleeve";
        return $"{text}\n{string.Concat(loose.Select(lug => $"wire {lug.Name} to {ground} black\n"))}".TrimEnd('\n');
    }

    private static Compilation Read(string text) =>
        Compilation.Of(new SourceText("text.wiring", text), NoSources.Instance);
}
