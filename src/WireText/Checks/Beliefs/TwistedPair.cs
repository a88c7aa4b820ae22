using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Beliefs;

/// <summary>Remarks on a signal wire that is twisted with ground.</summary>
public sealed class TwistedPair : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "twisted-pair",
            Title: "a signal wire is twisted with ground",
            Severity: Severity.Note,
            Group: FindingGroup.Beliefs,
            Why: """
            Twisting helps where both conductors see the same impedance to ground, as in a balanced line: what couples into
            one then couples into the other and is subtracted. In a guitar one of the two is ground itself. What an electric
            field couples into the hot wire stays there, twisted or not: a grounded screen keeps it out. What a magnetic field
            induces in a loop as small as that of two wires side by side is nanovolts to begin with.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            [|cable  vol.2 to out.tip white and vol.case to out.sleeve black twisted|]
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Nothing is to be done. Where a run hums when a hand comes near, take a cable with a grounded braid."
        )
        {
            OnlyWhenAsked = true,
        };

    public IEnumerable<Finding> Find(CheckContext context) =>
        from cable in context.Circuit.Cables
        where cable.IsTwisted && IsUnbalanced(context, cable)
        select Description.At(
            cable.DeclaredAt,
            "no benefit is expected of twisting a signal wire with ground: the two are not balanced",
            "leave it, or take a cable with a grounded braid if the run hums",
            [.. LugsOf(context.Circuit, cable).Select(context.Subject)]
        );

    /// <summary>True when some core is on the sleeve's net and some other is not.</summary>
    private static bool IsUnbalanced(CheckContext context, Cable cable) =>
        context.Study?.Network is { } network
        && LugsOf(context.Circuit, cable)
            .Select(lug => context.Circuit.Nets.OneNet[lug] == network.Sleeve)
            .Distinct()
            .Count() == 2;

    private static IEnumerable<int> LugsOf(Circuit circuit, Cable cable) =>
        cable
            .Cores.Select(core => circuit.Wires[core])
            .SelectMany(core => new[] { core.From, core.To })
            .Where(lug => lug >= 0)
            .Distinct();
}
