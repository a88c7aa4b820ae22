using System.Globalization;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Building;

/// <summary>Finds cases that carry so many joints that a ground bus would be less work.</summary>
public sealed class CaseJoints : ICheck
{
    /// <summary>Joints on one case before a bus is the better way. Chosen; common practice has no figure.</summary>
    private const int MostOnACase = 8;

    public CheckDescription Description { get; } =
        new(
            Id: "case-joints",
            Title: "a case carries many joints",
            Severity: Severity.Note,
            Group: FindingGroup.Building,
            Why: """
            A pot's case draws the heat off the iron, and each joint on it warms the track inside. A ground bus, a bare wire
            or a tag strip with one wire to the case, takes the same joints in seconds.
            """,
            Bad: """
            pickup neck   single-coil-cover
            pickup middle single-coil-cover
            pickup bridge single-coil-cover
            pot    vol    250k audio
            jack   out    mono
            metal  saddle
            wire   neck.hot to vol.3 white
            wire   middle.hot to vol.3 yellow
            wire   bridge.hot to vol.3 red
            wire   vol.2 to out.tip white
            wire   neck.ground to [|vol.case|] black
            wire   middle.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   neck.cover to vol.case bare
            wire   middle.cover to vol.case bare
            wire   bridge.cover to vol.case bare
            wire   vol.1 to vol.case bare
            wire   saddle to vol.case black
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil-cover
            pickup middle single-coil-cover
            pickup bridge single-coil-cover
            pot    vol    250k audio
            jack   out    mono
            metal  saddle
            metal  bus
            wire   neck.hot to vol.3 white
            wire   middle.hot to vol.3 yellow
            wire   bridge.hot to vol.3 red
            wire   vol.2 to out.tip white
            wire   neck.ground to bus black
            wire   middle.ground to bus black
            wire   bridge.ground to bus black
            wire   neck.cover to bus bare
            wire   middle.cover to bus bare
            wire   bridge.cover to bus bare
            wire   vol.1 to vol.case bare
            wire   saddle to bus black
            wire   vol.case to bus to out.sleeve black
            """,
            Mend: "Bring the grounds together on a bus, and that to the case with one wire."
        );

    public IEnumerable<Finding> Find(CheckContext context) =>
        from lug in context.Circuit.Lugs
        where IsCase(context.Circuit, lug)
        let count = Conductors.At(context, lug.Index).Count
        where count > MostOnACase
        select Description.At(
            Places.Of(context, lug.Index),
            string.Create(CultureInfo.InvariantCulture, $"'{lug.Name}' carries {count} joints"),
            $"bring grounds together on a bus: metal bus; {WireLines.Line(lug.Name, "bus", WireLines.GroundColour)}",
            context.Subject(lug.Index)
        );

    /// <summary>True for the metal of a part that has other lugs; a plate or a bus of its own is made for joints.</summary>
    private static bool IsCase(Circuit circuit, Lug lug) =>
        Conductors.TakesManyJoints(lug) && circuit.PartOf(lug).Lugs.Length > 1;
}
