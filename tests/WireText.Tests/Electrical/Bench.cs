using System.Text;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Tests.Electrical;

/// <summary>A circuit on the bench: wiring text with the short way to write a wire, <c>a ~ b ~ c</c>.</summary>
internal sealed class Bench
{
    public Bench(Circuit circuit)
    {
        Circuit = circuit;
        Network = Network.Of(circuit) ?? throw new ArgumentException("the circuit has no jack", nameof(circuit));
        State = State.Rest(circuit);
    }

    public Circuit Circuit { get; }

    public Network Network { get; }

    /// <summary>Everything at rest to begin with.</summary>
    public State State { get; private set; }

    /// <summary>Reads statements parted by line ends or semicolons; each wire of a chain goes to its last lug.</summary>
    public static Bench Of(string text) => new(CompileText(Expand(text)));

    /// <summary>The circuit of a wiring text; only an error of the text's own stops it.</summary>
    public static Circuit CompileText(string text)
    {
        var result = Compilation.Of(new SourceText("bench.wiring", text), NoSources.Instance);
        var unread = result.Tree.Findings.Where(finding => finding.Severity == Severity.Error).ToList();
        Assert.True(unread.Count == 0, string.Join('\n', unread.Select(finding => finding.Message)) + "\n" + text);
        return result.Circuit ?? throw new InvalidOperationException("no circuit");
    }

    public static string Expand(string text)
    {
        var lines = new StringBuilder();
        foreach (var statement in text.Split('\n', ';').Select(line => line.Trim()).Where(line => line.Length > 0))
        {
            if (!statement.Contains('~', StringComparison.Ordinal))
            {
                lines.Append(statement).Append('\n');
                continue;
            }

            var lugs = statement.Split('~', StringSplitOptions.TrimEntries);
            foreach (var lug in lugs[..^1])
            {
                lines.Append("wire ").Append(lug).Append(" to ").Append(lugs[^1]).Append(" black\n");
            }
        }

        return lines.ToString();
    }

    /// <summary>Another cable and input on the jack; infinite ohms for none.</summary>
    public Bench Into(double cableFarads, double inputOhms) =>
        new(
            Circuit with
            {
                Surroundings = Circuit.Surroundings with { CableFarads = cableFarads, InputOhms = inputOhms },
            }
        );

    /// <summary>Sets controls and dials: <c>sel=2 vol=5</c>. Positions by name; dials that are not named rest.</summary>
    public Bench At(string settings)
    {
        var state = State.At(State.Rest(Circuit).Travels);
        foreach (var setting in settings.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var (name, value) = (setting.Split('=')[0], setting.Split('=')[1]);
            if (Circuit.Dials.FirstOrDefault(dial => dial.Name == name) is { } dial)
            {
                state = state.At(dial, double.Parse(value, System.Globalization.CultureInfo.InvariantCulture));
                continue;
            }

            var control = Circuit.Controls.Single(control => control.Name == name);
            var position = control.Positions.Single(position => position.Name == value);
            state = state.At(control.Index, control.Positions.IndexOf(position));
        }

        State = state;
        return this;
    }

    public LiveNetwork Live() => LiveNetwork.Of(Network, State);

    public JackSound Sound() => JackSound.Of(Network, State);

    public HeardForm Form() => FormFinder.Find(Network, State, Sound());

    public Reading Reading() => Ohmmeter.Read(Network, State)!.Value;

    public StringResponse Response() => StringResponse.Of(Circuit, Live())!;

    public double[] Decibels(params double[] hertz) => [.. Response().DecibelsAt(hertz)!.Value];
}
