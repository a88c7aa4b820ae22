using WireText.Circuits;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Checks.Values;

/// <summary>Finds capacitors whose value is a thousand times what is used in their place.</summary>
public sealed class CapacitorMagnitude : IJackCheck
{
    /// <summary>From one prefix to the next.</summary>
    private const double PrefixStep = 1e3;

    public CheckDescription Description { get; } =
        new(
            Id: "capacitor-magnitude",
            Title: "a capacitor's prefix is unlikely",
            Severity: Severity.Warning,
            Group: FindingGroup.Values,
            Why: """
            The value is far outside what is used in that place, and one prefix up or down it is an everyday one: p, n and u
            are easily taken for each other. Which of the usual values is right is a matter of taste and not looked at.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    [|dark|] 22u from tone.1 to tone.case
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to tone.case to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            pot    tone 250k audio
            cap    dark 22n from tone.1 to tone.case
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   vol.3 to tone.2 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to tone.case to out.sleeve black
            """,
            Mend: "Read the marking once more: 223 is 22 nF. Where the value is meant, allow it."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study is not { Network: var network, Outcomes.Situations: var situations })
        {
            return [];
        }

        var capacitors = context
            .Circuit.Elements.OfType<Capacitor>()
            .Where(one => IsByItself(context.Circuit, one))
            .ToList();
        var live =
            capacitors.Count == 0
                ? []
                : situations
                    .SelectMany(situation => situation.Live)
                    .Select(branch => network.Branches[branch].Element)
                    .ToHashSet();
        return from capacitor in capacitors
            where live.Contains(capacitor.Index)
            let place = CapacitorPlace.Of(network, capacitor)
            let meant = Likelier(place, capacitor.Farads)
            where meant is not null
            select Report(context.Circuit, capacitor, place, meant.Value);
    }

    /// <summary>True for a capacitor that is a part of its own; those inside a part are its maker's.</summary>
    private static bool IsByItself(Circuit circuit, Capacitor capacitor) =>
        circuit.Parts[capacitor.Part].Elements.Length == 1;

    /// <summary>The value one prefix up or down, where that makes sense and the value itself does not.</summary>
    private static double? Likelier(CapacitorPlace place, double farads) =>
        place.Holds(farads) ? null
        : place.Holds(farads / PrefixStep) ? farads / PrefixStep
        : place.Holds(farads * PrefixStep) ? farads * PrefixStep
        : null;

    private Finding Report(Circuit circuit, Capacitor capacitor, CapacitorPlace place, double meant)
    {
        var part = circuit.Parts[capacitor.Part];
        var (value, likelier) = (Label(capacitor.Farads), Label(meant));
        return Description.At(
            part.NameAt,
            $"'{part.Name}' has {value} as {place.Role}: {likelier}?",
            $"read its marking once more; if it says so, write {likelier}, or write: allow capacitor-magnitude at {part.Name} \"why\"",
            Subject.Part(part.Name)
        ) with
        {
            Suggestions = [OtherValue.Of(part, capacitor.Farads, ValueUse.Capacitor, likelier)],
        };

        static string Label(double farads) => ValueText.Label(farads, Unit.Farad);
    }
}
