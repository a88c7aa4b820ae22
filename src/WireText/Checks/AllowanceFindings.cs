using WireText.Text;

namespace WireText.Checks;

/// <summary>What can be wrong with a line that allows a finding.</summary>
internal static class AllowanceFindings
{
    public static FindingDescription UnknownCheck { get; } =
        new(
            Id: "unknown-check",
            Title: "an allowance names a check that does not exist",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A line that allows a finding names it as it stands in brackets behind the message. With a slip in the
            name nothing would be allowed.
            """,
            Bad: """
            jack out mono
            allow [|unconected-lug|] at out.tip "not used"
            """,
            Good: """
            jack out mono
            allow unconnected-lug at out.tip "wired on the bench"
            """,
            Mend: "Write the name as it stands behind the finding."
        );

    public static FindingDescription AllowUnused { get; } =
        new(
            Id: "allow-unused",
            Title: "an allowance allows nothing that is found",
            Severity: Severity.Warning,
            Group: FindingGroup.Text,
            Why: """
            A finding was allowed once, and the circuit has changed since. The line that is left would hide the same
            finding when it comes back, where nobody has looked. It is not said where its check could not look at
            every position.
            """,
            Bad: """
            pickup neck single-coil
            jack out mono
            metal saddle
            wire neck.hot to out.tip white
            wire neck.ground to out.sleeve black
            wire saddle to out.sleeve black
            allow [|floating-ground|] at saddle "nylon"
            """,
            Good: """
            pickup neck single-coil
            jack out mono
            metal saddle
            wire neck.hot to out.tip white
            wire neck.ground to out.sleeve black
            allow floating-ground at saddle "nylon"
            """,
            Mend: "Take the line out, or name the finding and the place that are meant."
        );
}
