using WireText.Syntax;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Starting;

/// <summary>What a new wiring is begun with.</summary>
/// <param name="Selector">Of those that go with the pickups.</param>
/// <param name="Controls">Of those that go with both.</param>
public sealed record Starter(
    StarterPickups Pickups,
    StarterSelector Selector,
    StarterControls Controls,
    StarterJack Jack
)
{
    /// <summary>Everything that may be begun with.</summary>
    public static IEnumerable<Starter> All =>
        from pickups in StarterPickups.All
        from selector in StarterSelector.For(pickups)
        from controls in StarterControls.For(pickups, selector)
        from jack in StarterJack.All
        select new Starter(pickups, selector, controls, jack);

    /// <summary>The text to begin with: commented, in even columns, nothing found in it, and what it claims is so.</summary>
    public string Write() => Formatter.Format(WiringParser.Parse(new SourceText("", new StarterText(this).Write())));
}
