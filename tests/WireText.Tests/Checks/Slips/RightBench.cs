using WireText.Circuits;
using WireText.Tests.Judging;
using WireText.Text;

namespace WireText.Tests.Checks.Slips;

/// <summary>A right circuit that others are held against: what they do in every position, and what the positions are called.</summary>
internal sealed class RightBench(string text)
{
    private readonly Circuit right = Read(text)!;
    private readonly Judge judge = new(Read(text)!);

    public bool IsRight(string other) =>
        Read(other) is { } circuit
        && circuit.Parts.Length == right.Parts.Length
        && NamesOf(circuit).SequenceEqual(NamesOf(right))
        && judge.Compare(circuit) != Verdict.Different;

    private static IEnumerable<string> NamesOf(Circuit circuit) =>
        circuit.Controls.SelectMany(control => control.Positions.Select(position => position.Name));

    private static Circuit? Read(string text) =>
        Compilation.Of(new SourceText("bench.wiring", text), NoSources.Instance).Circuit;
}
