namespace WireText.Tests.Electrical;

/// <summary>Right circuits with two output jacks, in the short form of <see cref="Bench"/>.</summary>
internal static class TwoJackCircuits
{
    /// <summary>Each pickup with a volume to a jack of its own.</summary>
    public const string Apart =
        "pickup neck single-coil dcr=6.1k l=2.15H c=115p wind=ccw magnet=south; "
        + "pickup bridge single-coil dcr=7.3k l=2.8H c=120p wind=cw magnet=north; "
        + "pot vol-neck 250k audio; pot vol-bridge 250k audio; jack main mono; jack second mono; metal saddle; "
        + "neck.hot ~ vol-neck.3; vol-neck.2 ~ main.tip; neck.ground ~ vol-neck.case; vol-neck.1 ~ vol-neck.case; "
        + "bridge.hot ~ vol-bridge.3; vol-bridge.2 ~ second.tip; bridge.ground ~ vol-bridge.case; "
        + "vol-bridge.1 ~ vol-bridge.case; vol-bridge.case ~ vol-neck.case; vol-neck.case ~ main.sleeve; "
        + "vol-bridge.case ~ second.sleeve; saddle ~ vol-neck.case";

    /// <summary>A selector and a volume for the first jack, and the bridge pickup alone, before them, at the second.</summary>
    public const string Direct =
        "pickup neck single-coil dcr=6.1k l=2.15H c=115p wind=ccw magnet=south; "
        + "pickup bridge single-coil dcr=7.3k l=2.8H c=120p wind=cw magnet=north; "
        + "switch sel spdt; positions sel neck bridge; pot vol 250k audio; jack main mono; jack second mono; "
        + "neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A0 ~ vol.3; vol.2 ~ main.tip; sel.A2 ~ second.tip; "
        + "neck.ground ~ vol.case; bridge.ground ~ vol.case; vol.1 ~ vol.case; vol.case ~ main.sleeve; "
        + "vol.case ~ second.sleeve";
}
