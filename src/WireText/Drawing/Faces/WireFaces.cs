using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>What layout has to know of a wire.</summary>
public static class WireFaces
{
    public static LayoutWire Of(Circuit circuit, Wire wire) =>
        new(
            wire.Id,
            circuit.NameOf(wire.From),
            circuit.NameOf(wire.To),
            wire.Colour?.Tag ?? "",
            RankOf(circuit, wire),
            TagSize(wire)
        );

    /// <summary>The words on a wire's tag; empty when it wants none.</summary>
    public static string TagOf(Wire wire) =>
        wire.Kind is WireKind.PartLead or WireKind.Braid ? "" : wire.Colour?.Tag ?? "";

    public static WireRank RankOf(Circuit circuit, Wire wire)
    {
        if (wire.Kind == WireKind.Braid || (wire.Colour?.IsBare == true && IsCover(circuit, wire)))
        {
            return WireRank.Screen;
        }

        var net = circuit.Nets.OneNet[wire.From >= 0 ? wire.From : wire.To];
        return circuit.Outputs.Any(jack => circuit.Nets.OneNet[jack.Sleeve] == net) ? WireRank.Ground : WireRank.Signal;
    }

    private static bool IsCover(Circuit circuit, Wire wire) =>
        circuit.Lugs[wire.From] is { IsMetal: true, IsLead: true }
        || circuit.Lugs[wire.To] is { IsMetal: true, IsLead: true };

    /// <summary>What the tag of a wire takes up; null for a wire without one.</summary>
    public static Size? TagSize(Wire wire)
    {
        var tag = TagOf(wire);
        return tag.Length == 0
            ? null
            : new Size(
                DrawnText.Width(tag, TextWeight.Medium, Tokens.TagSize) + (2 * Tokens.TagPadding),
                Tokens.TagHeight
            );
    }
}
