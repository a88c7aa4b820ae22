using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Electrical.Traces;

/// <summary>
/// Reads what is to be followed: a lug such as <c>vol.3</c>, or a state such as <c>sel=neck,vol=7</c>, to the first jack or to the
/// one that is named before it: <c>second: rest</c>.
/// </summary>
public static class TraceReader
{
    /// <param name="study">What is known of the circuit; null when it has no output jack.</param>
    public static Read<Trace> Read(Circuit circuit, Study? study, string text)
    {
        if (text.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon)
        {
            return ReadAtJack(circuit, study, text[..colon].Trim(), text[(colon + 1)..].Trim());
        }

        if (!text.Contains('=', StringComparison.Ordinal) && text != StateText.RestWord)
        {
            return ReadLug(circuit, text.Trim());
        }

        if (study is null)
        {
            return Bad("the circuit has no output jack to follow a state to");
        }

        var state = StateReader.Read(circuit, text);
        return state.Value is { } read
            ? new Read<Trace>(Trace.OfState(circuit, study.Network, read), null)
            : Bad(state.Problem ?? "");
    }

    private static Read<Trace> ReadAtJack(Circuit circuit, Study? study, string name, string text)
    {
        var jacks = circuit.UsedJacks();
        return jacks.FirstOrDefault(jack => Naming.Alike(circuit.Parts[jack.Part].Name, name)) is { } named
            ? Read(circuit.SeenFrom(named), study?.At(named.Part), text)
            : Bad(
                $"'{name}' is no jack in use; there is {string.Join(" and ", jacks.Select(jack => circuit.Parts[jack.Part].Name))}"
            );
    }

    private static Read<Trace> ReadLug(Circuit circuit, string name)
    {
        if (circuit.FindLug(name) is { } lug)
        {
            return new Read<Trace>(Trace.OfNet(circuit, lug), null);
        }

        var near = DidYouMean.Nearest(name, circuit.Lugs.Select(lug => lug.Name));
        return Bad(
            near is null
                ? $"'{name}' is no lug; write a lug such as {circuit.Lugs.FirstOrDefault()?.Name ?? "vol.3"}, or CONTROL=POSITION"
                : $"'{name}' is no lug; did you mean '{near}'?"
        );
    }

    private static Read<Trace> Bad(string problem) => new(null, problem);
}
