using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Mods;

/// <summary>Whether a line speaks of a part.</summary>
internal static class Mentions
{
    /// <summary>True for a state of one of its controls, and for a claim about one of its coils or through it.</summary>
    public static bool Part(ExpectSyntax expect, string name) =>
        expect.State.Any(pair => Part(pair, name))
        || (expect.Jack is { } jack && jack.Is(name))
        || expect.Claims.OfType<CoilsClaimSyntax>().Any(claim => Part(claim.Coils, name));

    /// <summary>True where something was found at one of its lugs or controls, or of one of its coils.</summary>
    public static bool Part(FoundSyntax found, string name) =>
        FoundNames.In(found).Any(lug => Naming.Alike(lug.Name.Text, name))
        || FoundNames.StateOf(found.At).Any(pair => Part(pair, name))
        || (found.At is FoundAtPlugSyntax { Jack: { } jack } && jack.Is(name));

    /// <summary>True for <c>vol.pull=cut</c> of <c>vol</c>.</summary>
    public static bool Part(PairSyntax pair, string name) => Naming.Alike(pair.Key.Text.Split('.')[0], name);

    private static bool Part(CoilsSyntax coils, string name) =>
        coils switch
        {
            JoinedCoilsSyntax joined => joined.Coils.Any(one => Part(one, name)),
            CoilSyntax coil => (coil.Coil is { } own && Naming.Alike(own.Name.Text, name))
                || (coil.Through is { } through && through.Is(name))
                || (coil.Group is { } group && Part(group, name)),
            _ => false,
        };
}
