using WireText.Circuits;
using WireText.Text;

namespace WireText.Sheets;

/// <summary>What to take care of, where it applies and only there. All of it is common practice of the trade.</summary>
internal static class Cautions
{
    private const string Nitrocellulose = "nitrocellulose";

    public static IEnumerable<string> Of(Circuit circuit)
    {
        if (!circuit.Outputs.IsEmpty)
        {
            yield return "Unplug the instrument from the amplifier before you open it. Never work inside a mains-powered amplifier: "
                + "it can kill with the plug pulled. That is for licensed practice and your local rules.";
        }

        if (circuit.Elements.Any(element => element is Battery))
        {
            yield return "Take the battery out first, and put it in again after the last check.";
        }

        yield return "Protect your eyes: solder spits, and cut leads fly.";
        yield return "Draw the fume off at the joint: the smoke of rosin harms the lungs.";
        yield return "Many solders hold lead: no food at the bench, and wash your hands after work.";
        if (circuit.Finish is { Length: > 0 } finish)
        {
            yield return Naming.Alike(finish, Nitrocellulose)
                ? "The finish is nitrocellulose: flux and solder mark it at once, and many plastics, tapes and foams do in time. "
                    + "Mask it with a clean towel of cotton, all round the cavity, and lay no tape and no tool on it."
                : $"Mask the finish ({finish}) around the cavity against spatter.";
        }

        if (
            circuit.Parts.Where(part => part.IsHeatSensitive).Select(part => part.Name).ToList() is { Count: > 0 } parts
        )
        {
            yield return $"Heat harms {string.Join(", ", parts)}: tin the lead and the lug first, clip a heat sink on the lead "
                + "between joint and body, and solder briefly. Let a joint cool before you make the other.";
        }
    }
}
