using WireText.Circuits;

namespace WireText.Output;

/// <summary><c>expect</c> lines in the order in which their states were first added; a state that is added again adds its claims.</summary>
internal sealed class ExpectLineList(Circuit circuit)
{
    private readonly string jack = circuit.JackToName() is { } name ? $"{name}: " : "";
    private readonly List<(string State, List<string> Claims)> lines = [];

    /// <summary>Those of which nothing can be claimed are left out.</summary>
    public void Add(IEnumerable<ToldState> told)
    {
        foreach (var one in told.Where(one => !one.Claims.IsEmpty))
        {
            var said = string.Join(' ', SettingsOf(one).DefaultIfEmpty(StateText.RestWord));
            var known = lines.Find(line => line.State == said).Claims;
            if (known is null)
            {
                lines.Add((said, known = []));
            }

            known.AddRange(one.Claims.Except(known));
        }
    }

    public override string ToString() =>
        string.Concat(lines.Select(line => $"expect  {jack}{line.State}:  {string.Join(", ", line.Claims)}\n"));

    /// <summary>What a line names: controls that matter, plugs and dials that are not at rest.</summary>
    private IEnumerable<string> SettingsOf(ToldState told)
    {
        var state = told.State;
        var named = circuit.Controls.Where(control =>
            control.IsPlug ? state[control.Index] != control.Rest : state[control.Index] is not null
        );
        var isOpen = circuit.Controls.Any(control => !control.IsPlug && state[control.Index] is null);
        return
        [
            .. named.Select(control => $"{control.Name}={StateText.PositionOf(control, state)}"),
            .. told.MeansAll && isOpen ? [$"{StateText.OthersWord}={StateText.AnyWord}"] : Array.Empty<string>(),
            .. circuit
                .Dials.Where(dial => state.Travels[dial.Index] != dial.Rest)
                .Select(dial => StateText.Of(dial, state.Travels[dial.Index])),
        ];
    }
}
