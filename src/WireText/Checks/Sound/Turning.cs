using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Electrical.Studies;

namespace WireText.Checks.Sound;

/// <summary>What a position of a control does to the phase of the coils that are heard, the other controls left as they stand.</summary>
internal enum Turning
{
    /// <summary>No other position lets two coils be heard of which it could turn one.</summary>
    NoPair,

    /// <summary>Two coils are heard elsewhere, and none is turned against another.</summary>
    Nothing,

    /// <summary>A coil is turned against another that is heard with it in both positions.</summary>
    Coils,
}

/// <summary>Tells what a position turns round.</summary>
internal static class TurnedCoils
{
    public static Turning At(Study study, Control control, int position, State state)
    {
        if (SignsAt(study, state.At(control.Index, position)) is not { } own)
        {
            return Turning.NoPair;
        }

        var others = Enumerable
            .Range(0, control.Positions.Length)
            .Where(other => other != position)
            .Select(other => SignsAt(study, state.At(control.Index, other)))
            .OfType<Dictionary<int, int>>()
            .Where(signs => signs.Count > 1)
            .ToList();
        return others.Count == 0 ? Turning.NoPair
            : others.Exists(other => IsTurned(own, other)) ? Turning.Coils
            : Turning.Nothing;
    }

    /// <summary>True when two coils that both positions have are alike in sign in one and not in the other.</summary>
    private static bool IsTurned(Dictionary<int, int> own, Dictionary<int, int> other) =>
        own.Keys.Where(other.ContainsKey).Select(coil => own[coil] * other[coil]).Distinct().Count(sign => sign != 0)
        > 1;

    /// <summary>The sign of each coil that is heard, by its element; null where nothing is, and of a bridge, which is told by strengths.</summary>
    private static Dictionary<int, int>? SignsAt(Study study, State state) =>
        study.Analyse(state).Form is { Kind: FormKind.SeriesParallel, Root: { } root }
            ? root.Coils.ToDictionary(coil => coil.Coil.Index, coil => coil.Sign)
            : null;
}
