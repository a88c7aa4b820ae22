using System.Collections.Immutable;
using WireText.Geometry;

namespace WireText.Drawing.Faces;

/// <summary>The board that a row of lugs is riveted to where it sticks out of a round body, as on a pot.</summary>
internal static class Wafers
{
    /// <summary>How far the board reaches past its outer lugs on each side, in millimetres. Chosen by eye.</summary>
    private const double Overhang = 1.6;

    /// <summary>From the board's edge to the middle of its lugs: far enough for a wire to reach a lug from the side.</summary>
    private const double LugReach = 2.4;

    public static IEnumerable<Box> Under(FaceBody body, ImmutableArray<FaceLug> lugs)
    {
        if (body is not FaceBody.Round)
        {
            yield break;
        }

        foreach (var side in new[] { Side.North, Side.South })
        {
            var row = lugs.Where(lug => lug.Look == LugLook.Tab && lug.Outward == side).ToImmutableArray();
            if (row.Length < 2)
            {
                continue;
            }

            var (left, right) = (row.Min(lug => lug.At.X) - Overhang, row.Max(lug => lug.At.X) + Overhang);
            var far = row.Min(lug => Math.Abs(lug.At.Y)) - LugReach;
            var near = body.Half.Height - 4;
            if (far > near)
            {
                yield return new Box(left, side == Side.South ? near : -far, right - left, far - near);
            }
        }
    }
}
