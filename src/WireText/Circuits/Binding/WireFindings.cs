using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What can be wrong with a line that joins lugs.</summary>
internal static class WireFindings
{
    public static FindingDescription UnknownColour { get; } =
        new(
            Id: "unknown-colour",
            Title: "no colour is called that",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A wire's colour is its IEC 60757 code, the English name, two with a slash for a stripe, or bare. A colour that
            the standard does not know is named in a line of the file: colour cream CR #efe3c2.
            """,
            Bad: """
            jack out mono
            wire out.tip to out.sleeve [|rde|]
            """,
            Good: """
            jack out mono
            wire out.tip to out.sleeve red
            """,
            Mend: "Write a colour, or name your own."
        );

    public static FindingDescription LeadInARun { get; } =
        new(
            Id: "lead-in-a-run",
            Title: "a lead stands in the middle of a run",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A lead is the part's own wire: it has one free end. A run of wire starts or ends with it and goes on from
            the lug where it is soldered.
            """,
            Bad: """
            jack out mono
            pickup neck single-coil
            wire out.tip to [|neck.hot|] to out.sleeve white
            """,
            Good: """
            jack out mono
            pickup neck single-coil
            wire neck.hot to out.tip white
            """,
            Mend: "Write the lead first or last on the line."
        );

    public static FindingDescription LeadEndsTwice { get; } =
        new(
            Id: "lead-ends-twice",
            Title: "a lead ends in two places",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            A lead is a wire with one free end. What else belongs to its net is joined at the lug where it ends.
            """,
            Bad: """
            jack out mono
            pickup neck single-coil
            wire neck.hot to out.tip white
            wire [|neck.hot|] to out.sleeve white
            """,
            Good: """
            jack out mono
            pickup neck single-coil
            wire neck.hot to out.tip white
            wire neck.ground to out.sleeve black
            """,
            Mend: "Join the other wire at the lug where this lead ends, or splice them."
        );

    public static FindingDescription LeadToLead { get; } =
        new(
            Id: "lead-to-lead",
            Title: "two leads are joined without a splice",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Two leads that meet in the air are soldered together and covered: that joint is a part of its own, a
            splice.
            """,
            Bad: """
            pickup neck single-coil
            pickup bridge single-coil
            wire [|neck.hot to bridge.ground|] white
            """,
            Good: """
            pickup neck single-coil
            pickup bridge single-coil
            splice link neck.hot bridge.ground
            """,
            Mend: "Write a splice with both leads."
        );

    public static FindingDescription NotTwoLeads { get; } =
        new(
            Id: "not-two-leads",
            Title: "a part without two leads hangs from lug to lug",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Only a part with exactly two leads is soldered in by them.
            """,
            Bad: """
            jack out mono
            pot vol 250k audio [|from out.tip to out.sleeve|]
            """,
            Good: """
            jack out mono
            cap dark 22n from out.tip to out.sleeve
            """,
            Mend: "Wire its lugs one by one."
        );
}
