using System.Collections.Immutable;

namespace WireText.Tests.Electrical;

/// <summary>Right circuits with two output jacks, in the short form of <see cref="Bench"/>.</summary>
internal static class TwoJackCircuits
{
    private const string TwoPickups =
        "pickup neck single-coil dcr=6.1k l=2.15H c=115p wind=ccw magnet=south; "
        + "pickup bridge single-coil dcr=7.3k l=2.8H c=120p wind=cw magnet=north; ";

    /// <summary>Each pickup with a volume to a jack of its own.</summary>
    public const string Apart =
        TwoPickups
        + "pot vol-neck 250k audio; pot vol-bridge 250k audio; jack main mono; jack second mono; metal saddle; "
        + "neck.hot ~ vol-neck.3; vol-neck.2 ~ main.tip; neck.ground ~ vol-neck.case; vol-neck.1 ~ vol-neck.case; "
        + "bridge.hot ~ vol-bridge.3; vol-bridge.2 ~ second.tip; bridge.ground ~ vol-bridge.case; "
        + "vol-bridge.1 ~ vol-bridge.case; vol-bridge.case ~ vol-neck.case; vol-neck.case ~ main.sleeve; "
        + "vol-bridge.case ~ second.sleeve; saddle ~ vol-neck.case";

    /// <summary>A selector and a volume for the first jack, and the bridge pickup alone, before them, at the second.</summary>
    public const string Direct =
        TwoPickups
        + "switch sel spdt; positions sel neck bridge; pot vol 250k audio; jack main mono; jack second mono; "
        + "neck.hot ~ sel.A1; bridge.hot ~ sel.A2; sel.A0 ~ vol.3; vol.2 ~ main.tip; sel.A2 ~ second.tip; "
        + "neck.ground ~ vol.case; bridge.ground ~ vol.case; vol.1 ~ vol.case; vol.case ~ main.sleeve; "
        + "vol.case ~ second.sleeve";

    /// <summary>As <see cref="Apart"/>, with a switch that shorts both jacks.</summary>
    public const string MutedTogether =
        Apart
        + "; switch hush dpdt; positions hush up down; hush.A0 ~ main.tip; hush.A2 ~ main.sleeve; "
        + "hush.B0 ~ second.tip; hush.B2 ~ second.sleeve";

    /// <summary>The two coils of one pickup, each to a jack.</summary>
    public const string CoilByCoil =
        "pickup hb humbucker-4 dcr=8k; jack main mono; jack second mono; metal plate; "
        + "hb.n-start ~ main.tip; hb.n-finish ~ plate; hb.s-finish ~ second.tip; hb.s-start ~ plate; hb.shield ~ plate; "
        + "plate ~ main.sleeve; plate ~ second.sleeve";

    /// <summary>One pickup at both jacks, a volume for each.</summary>
    public const string Shared =
        "pickup neck single-coil; pot stage 500k audio; pot tuner 500k audio; jack main mono; jack second mono; "
        + "neck.hot ~ stage.3; stage.3 ~ tuner.3; stage.2 ~ main.tip; tuner.2 ~ second.tip; neck.ground ~ stage.case; "
        + "stage.1 ~ stage.case; tuner.1 ~ tuner.case; tuner.case ~ stage.case; stage.case ~ main.sleeve; "
        + "tuner.case ~ second.sleeve";

    /// <summary>As <see cref="Apart"/>, with a switch that joins the two signals.</summary>
    public const string StereoOrMono =
        Apart + "; switch join spdt; positions join stereo mono; join.A0 ~ vol-neck.3; join.A2 ~ vol-bridge.3";

    /// <summary>A pickup that goes to one jack or the other, and a claim for what each is left on.</summary>
    public const string Routed =
        "pickup neck single-coil; switch way spdt; positions way left right; jack main mono; jack second mono; "
        + "pot vol 250k audio; neck.hot ~ vol.3; vol.2 ~ way.A0; way.A1 ~ main.tip; way.A2 ~ second.tip; "
        + "vol.1 ~ vol.case; neck.ground ~ vol.case; vol.case ~ main.sleeve; vol.case ~ second.sleeve; "
        + "expect main: way=left: neck; expect main: way=right: open; expect second: way=right: neck; "
        + "expect second: way=left: open";

    public static ImmutableArray<string> All { get; } =
    [Apart, Direct, MutedTogether, CoilByCoil, Shared, StereoOrMono, Routed];
}
